import type { EngineSpec, Part } from '../../engine/index.ts'
import type { BuildState } from '../events/state.ts'
import { partUses } from './part-uses.ts'

/** One line of what has to be got beside shells. */
export interface WantedPart {
  readonly kind: 'part' | 'fasteners'
  readonly name: string
  /** Where it goes; the joint face of fasteners. */
  readonly place: string
  readonly count: number
  readonly reuse: Part['reuse']
  /** The steps, or the procedures, that it is for. */
  readonly steps: readonly string[]
}

/** What is not fitted yet: of the parts list, and the fasteners that are new each time and not declared so yet. */
export function partsWanted(spec: EngineSpec, state: BuildState): readonly WantedPart[] {
  const uses = partUses(spec, state).filter(({ left }) => left > 0)
  const parts = spec.parts.flatMap((part): readonly WantedPart[] => {
    const own = uses.filter((use) => use.part === part)
    if (own.length === 0) return []
    const { name, place, reuse } = part
    const count = own.reduce((sum, { left }) => sum + left, 0)
    return [{ kind: 'part', name, place, count, reuse, steps: own.map(({ step }) => step.name) }]
  })
  return [...parts, ...fastenersWanted(spec, state)]
}

function fastenersWanted(spec: EngineSpec, { runs }: BuildState): readonly WantedPart[] {
  const declared = new Set(Object.values(runs).flatMap(({ declaredNew }) => declaredNew))
  return spec.fastenerGroups.flatMap(({ id, name, reuse }): readonly WantedPart[] => {
    const own = spec.fasteners.filter(({ group }) => group === id)
    if (reuse !== 'new-each-time' || own.length === 0 || declared.has(id)) return []
    const ids = new Set(own.map((fastener) => fastener.id))
    const faces = new Set(own.map(({ face }) => face))
    const places = spec.case.faces.filter((face) => faces.has(face.id)).map((face) => face.name)
    const steps = spec.procedures
      .filter(({ orders }) => orders.some(({ sequence }) => sequence.some((each) => ids.has(each))))
      .map((procedure) => procedure.name)
    return [{ kind: 'fasteners', name, place: places.join(', '), count: own.length, reuse, steps }]
  })
}
