import { fastenedJoint, type FastenedJoint } from '../../joint/index.ts'
import type { Angle, Torque } from '../../quantity/index.ts'
import {
  fastenersOf,
  writtenAt,
  type EngineSpec,
  type FastenerGroup,
  type Pass,
  type Procedure,
} from '../../engine/index.ts'

type TorquePass = Extract<Pass, { kind: 'torque' | 'recheck' }>

/** One torque that a pass asks of the fasteners of one group. */
export interface Pull {
  readonly procedure: string
  /** Counted from 1. */
  readonly pass: number
  /** Of the target in the spec. */
  readonly path: string
  readonly group: FastenerGroup
  readonly screw: FastenedJoint
  readonly target: Torque
  readonly least: Torque | undefined
  readonly most: Torque | undefined
  /** Whether nothing tightens these fasteners further. */
  readonly last: boolean
}

/** Every torque of a spec, of groups that can be calculated; the others are reported by `auditScrews`. */
export function pullsOf(spec: EngineSpec): readonly Pull[] {
  const groupOf = new Map(spec.fasteners.map(({ id, group }) => [id, group]))
  const screws = spec.fastenerGroups.flatMap((group) => {
    const screw = fastenedJoint(group)
    return screw.ok ? [{ group, screw: screw.value }] : []
  })
  return spec.procedures.flatMap((procedure, i) => {
    const lastPass = lastTightening(procedure)
    return procedure.passes.flatMap((pass, k) => {
      if (pass.kind !== 'torque' && pass.kind !== 'recheck') return []
      const byGroup = Map.groupBy(fastenersOf(procedure, pass), (id) => groupOf.get(id))
      const own = ownValues(pass)
      return screws.flatMap(({ group, screw }) =>
        [...Map.groupBy(byGroup.get(group.id) ?? [], (id) => own.get(id))].map(([value, ids]) => ({
          procedure: procedure.name,
          pass: k + 1,
          path: `procedures[${i}].passes[${writtenAt(procedure.passes, k)}].${value === undefined ? '' : `others[${value}].`}target`,
          group,
          screw,
          ...limitsOf(value === undefined ? pass : (pass.others[value] ?? pass)),
          last: ids.some((id) => (lastPass.get(id) ?? 0) <= k),
        })),
      )
    })
  })
}

/** The angle that a pass asks of a fastener: its own, where the pass has one for it. */
export function angleOf({ target, others = [] }: Extract<Pass, { kind: 'angle' }>, fastener: string): Angle {
  return others.find(({ fasteners }) => fasteners.includes(fastener))?.target ?? target
}

/** The torque that a pass asks of each fastener: its own, where the pass has one for it. */
export function torquesOf(pass: TorquePass): (fastener: string) => Torque {
  const own = ownValues(pass)
  return (fastener) => (pass.others[own.get(fastener) ?? -1] ?? pass).target
}

/** By fastener, which of the values for some is its own; the first, should there be two. */
function ownValues({ others }: TorquePass): ReadonlyMap<string, number> {
  return new Map(
    others.flatMap(({ fasteners }, index) => fasteners.map((id) => [id, index] as const)).reverse(),
  )
}

function limitsOf({ target, least, most }: Omit<TorquePass['others'][number], 'fasteners'>) {
  return { target, least, most }
}

/** By fastener, the last pass that tightens it, counted from 0. */
function lastTightening(procedure: Procedure): ReadonlyMap<string, number> {
  const last = new Map<string, number>()
  procedure.passes.forEach((pass, index) => {
    if (pass.kind === 'torque' || pass.kind === 'angle' || pass.kind === 'tighten-to-stretch')
      for (const id of fastenersOf(procedure, pass)) last.set(id, index)
  })
  return last
}
