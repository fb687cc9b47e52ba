import type { PlacedKind } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { readReason } from '../../tightening/index.ts'
import { placeRounds, type PlaceRound } from '../placed/placed-places.ts'
import type { BuildAtStep, CommandOf, Events } from '../commands/step-rules.ts'

type BuildAtPlaces = BuildAtStep<PlacedKind>
const version = 1

/**
 * Refuses `place-unknown`, `place-done-already`, `marks-first` where marks are looked at again before all of them were set, and
 * `reason-missing` where something is to be written and is not.
 */
export function doPlace(at: BuildAtPlaces, command: CommandOf<'do-place'>): Events {
  const found = workAt(at, command)
  if (!found.ok) return found
  const { place } = found.value
  if (found.value.done !== null) return refused('place-done-already', { place: place.at, step: at.step.name })
  const open = placeRounds(at.state, at.step).find(({ round, done }) => round === 1 && done === null)
  if (command.round === 2 && open !== undefined)
    return refused('marks-first', { place: place.at, first: open.place.at })
  const wanted = at.step.kind === 'note'
  const written = wanted ? readReason(command.note, { what: 'written', place: place.at }) : null
  if (written !== null && !written.ok) return written
  const note = (written === null ? command.note.trim() : written.value) || null
  return done([{ type: 'place-done', version, ...named(command), note }])
}

/** Refuses `place-unknown`, `place-not-done` and `reason-missing`. */
export function undoPlace(at: BuildAtPlaces, command: CommandOf<'undo-place'>): Events {
  const found = workAt(at, command)
  if (!found.ok) return found
  const { place } = found.value
  if (found.value.done === null) return refused('place-not-done', { place: place.at, step: at.step.name })
  const reason = readReason(command.reason, { what: 'place-undone', place: place.at })
  if (!reason.ok) return reason
  return done([{ type: 'place-undone', version, ...named(command), reason: reason.value }])
}

type OfPlace = Pick<CommandOf<'do-place'>, 'step' | 'place' | 'round'>

function named({ step, place, round }: OfPlace) {
  return { step, place, round }
}

function workAt({ state, step }: BuildAtPlaces, { place, round }: OfPlace): Outcome<PlaceRound> {
  const found = placeRounds(state, step).find((each) => each.place.id === place && each.round === round)
  return found === undefined ? refused('place-unknown', { step: step.name, place }) : done(found)
}
