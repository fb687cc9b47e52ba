import type { EngineSpec, StepKind } from '../../engine/index.ts'
import { mostPhotosOfBuild } from '../../photo/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { readReason } from '../../tightening/index.ts'
import { photosAt } from '../events/photo-record.ts'
import type { BuildState } from '../events/state.ts'
import { mayWorkOn } from './step-guard.ts'
import type { BuildAtStep, CommandOf, Events } from '../commands/step-rules.ts'

const version = 1

/**
 * A photo may be added at any step at any time; where the step itself asks for one, once the steps before it are done. Refuses
 * `build-finished` for one of a step, `photo-at-no-step`, `step-unknown`, `step-before`, `part-unknown`, `photo-too-many`,
 * `photo-there-already`.
 */
export function addPhoto(spec: EngineSpec, state: BuildState, command: CommandOf<'add-photo'>): Events {
  const { step, photo, part } = command
  const place = placeFor(spec, state, step)
  if (!place.ok) return place
  if (part !== null && !spec.parts.some(({ id }) => id === part))
    return refused('part-unknown', { part }, 'part')
  if (state.photos.length + state.photosWithdrawn.length >= mostPhotosOfBuild)
    return refused('photo-too-many', { most: mostPhotosOfBuild })
  if (photosAt(state, step).some((each) => each.photo.sha256 === photo.sha256))
    return refused('photo-there-already', {})
  return done([{ type: 'photo-added', version, step, photo, caption: command.caption.trim(), part }])
}

function placeFor(spec: EngineSpec, state: BuildState, id: string | null): Outcome<unknown> {
  if (state.finished)
    return id === null ? done(null) : refused('build-finished', { name: state.started?.name ?? '' })
  if (id === null) return refused('photo-at-no-step', {}, 'step')
  const step = spec.steps.find((each) => each.id === id)
  if (step === undefined) return refused('step-unknown', { step: id }, 'step')
  return step.kind === 'photo' ? mayWorkOn(spec, state, step) : done(step)
}

/** Refuses `step-done-already` where there is a photo, or a reason why there is none, and `reason-missing`. */
export function skipPhoto({ state, step }: BuildAtStep<'photo'>, command: CommandOf<'skip-photo'>): Events {
  if (photosAt(state, step.id).length > 0 || state.photosSkipped[step.id] !== undefined)
    return refused('step-done-already', { step: step.name })
  const reason = readReason(command.reason, { what: 'photo-skipped', step: step.name })
  return reason.ok ? done([{ type: 'photo-skipped', version, step: step.id, reason: reason.value }]) : reason
}

/** Of a finished build too. Refuses `photo-withdrawn`, `photo-unknown`, `reason-missing`. */
export function withdrawPhoto(
  state: BuildState,
  { entry, reason: typed }: CommandOf<'withdraw-photo'>,
): Events {
  const photo = state.photos.find(({ seq }) => seq === entry)
  if (photo === undefined)
    return state.photosWithdrawn.some(({ seq }) => seq === entry)
      ? refused('photo-withdrawn', {}, 'entry')
      : refused('photo-unknown', {}, 'entry')
  const reason = readReason(typed, { what: 'photo-withdrawn' })
  if (!reason.ok) return reason
  const { step } = photo
  const { sha256 } = photo.photo
  return done([{ type: 'photo-withdrawn', version, step, entry, sha256, reason: reason.value }])
}

/** Refuses `note-empty`. */
export function writeNote({ step }: BuildAtStep<StepKind>, command: CommandOf<'write-note'>): Events {
  const text = command.text.trim()
  return text === ''
    ? refused('note-empty', {}, 'text')
    : done([{ type: 'note-written', version, step: step.id, text }])
}
