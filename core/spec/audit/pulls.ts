import type { Torque } from '../../quantity/index.ts'
import type { FastenerGroup, Pass, Procedure } from '../fastening.ts'
import type { EngineSpec } from '../schema.ts'
import { screwOf, type Screw } from './screws.ts'

type TorquePass = Extract<Pass, { kind: 'torque' | 'recheck' }>

/** One torque that a pass asks of the fasteners of one group. */
export interface Pull {
  readonly procedure: string
  /** Counted from 1. */
  readonly pass: number
  /** Of the target in the spec. */
  readonly path: string
  readonly group: FastenerGroup
  readonly screw: Screw
  readonly target: Torque
  readonly least: Torque | undefined
  readonly most: Torque | undefined
  /** Whether nothing tightens these fasteners further. */
  readonly last: boolean
}

/** Every torque of a spec, of groups that can be reckoned with; the others are told of by `auditScrews`. */
export function pullsOf(spec: EngineSpec): readonly Pull[] {
  const groups = new Map(spec.fasteners.map(({ id, group }) => [id, group]))
  return spec.procedures.flatMap((procedure, i) =>
    procedure.passes.flatMap((pass, k) => {
      if (pass.kind !== 'torque' && pass.kind !== 'recheck') return []
      const byGroup = Map.groupBy(fastenersOf(procedure, pass), (id) => groups.get(id))
      return spec.fastenerGroups.flatMap((group) => {
        const screw = screwOf(group)
        const members = byGroup.get(group.id)
        if (!screw.ok || members === undefined) return []
        return [...Map.groupBy(members, (id) => ownValue(pass, id))].map(([own, ids]) => ({
          procedure: procedure.name,
          pass: k + 1,
          path: `procedures[${i}].passes[${k}].${own < 0 ? '' : `others[${own}].`}target`,
          group,
          screw: screw.value,
          ...limitsOf(pass.others[own] ?? pass),
          last: ids.some((id) => !tightenedAfter(procedure, k, id)),
        }))
      })
    }),
  )
}

/** The fasteners of a pass in their order; none for an action. */
export function fastenersOf(procedure: Procedure, pass: Pass): readonly string[] {
  if (pass.kind === 'action') return []
  return procedure.orders.find(({ id }) => id === pass.order)?.sequence ?? []
}

/** The torque that a pass asks of one fastener: its own, where the pass has one for it. */
export function torqueFor(pass: TorquePass, fastener: string): Torque {
  return (pass.others[ownValue(pass, fastener)] ?? pass).target
}

/** Which of the values of their own is this fastener's; −1 for none. */
function ownValue(pass: TorquePass, fastener: string): number {
  return pass.others.findIndex(({ fasteners }) => fasteners.includes(fastener))
}

function limitsOf({ target, least, most }: Omit<TorquePass['others'][number], 'fasteners'>) {
  return { target, least, most }
}

function tightenedAfter(procedure: Procedure, index: number, fastener: string): boolean {
  return procedure.passes
    .slice(index + 1)
    .some(
      (pass) =>
        (pass.kind === 'torque' || pass.kind === 'angle') && fastenersOf(procedure, pass).includes(fastener),
    )
}
