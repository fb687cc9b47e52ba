import type { PlacedWork, PlacedStep } from '../../engine/index.ts'
import { placedKey, type PlaceDone } from '../events/placed-record.ts'
import type { BuildState } from '../events/state.ts'

/** One place of a step that is done place by place. */
export interface PlaceRound {
  readonly place: PlacedWork
  /** 1, or 2 where marks are looked at again after turns of the crank. */
  readonly round: 1 | 2
  readonly done: PlaceDone | null
}

/** Every place of the step in the order of the spec; marks that are looked at again come once more after all of them. */
export function placeRounds({ placed }: Pick<BuildState, 'placed'>, step: PlacedStep): readonly PlaceRound[] {
  return roundsOf(step).flatMap((round) =>
    step.places.map((place) => {
      const done = placed[placedKey({ step: step.id, place: place.id, round })] ?? null
      return { place, round, done }
    }),
  )
}

export function isAllDone({ placed }: Pick<BuildState, 'placed'>, step: PlacedStep): boolean {
  return keysOf(step).every((key) => placed[key] !== undefined)
}

/** What `keysOf` found: a step never changes, and every confirmation asks. */
const keysByStep = new WeakMap<PlacedStep, readonly string[]>()

/** The key of each place in each round. */
function keysOf(step: PlacedStep): readonly string[] {
  const known = keysByStep.get(step)
  if (known !== undefined) return known
  const keys = roundsOf(step).flatMap((round) =>
    step.places.map((place) => placedKey({ step: step.id, place: place.id, round })),
  )
  keysByStep.set(step, keys)
  return keys
}

function roundsOf(step: PlacedStep): readonly (1 | 2)[] {
  return step.kind === 'align' && step.againAfterTurns !== undefined ? [1, 2] : [1]
}
