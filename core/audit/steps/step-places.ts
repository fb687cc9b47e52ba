import { isPlacedStep, type EngineSpec } from '../../engine/index.ts'
import { fault, type Finding } from '../finding.ts'

/** Work that is done place by place: each place has an id and a name of its own in its step. */
export function auditPlaced({ steps }: EngineSpec): readonly Finding[] {
  return steps.flatMap((step, at) =>
    isPlacedStep(step)
      ? step.places.flatMap(({ id, at: name }, index) => {
          const before = step.places.slice(0, index)
          const isTwice = before.some((each) => each.id === id || each.at === name)
          return isTwice
            ? [fault('place-twice', { step: step.name, place: name }, `steps[${at}].places[${index}]`)]
            : []
        })
      : [],
  )
}
