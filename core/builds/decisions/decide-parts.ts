import type { StepKind } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { readReason } from '../../tightening/index.ts'
import { againstReuse, unaccountedParts, usesAt, type PartUse } from '../parts/part-uses.ts'
import type { BuildAtStep, CommandOf, Events } from '../commands/step-rules.ts'

const version = 1

/**
 * Refuses `part-unknown`, `part-not-in-step`, `parts-ticked-already`, `parts-too-many`, and `reason-missing` where the spec
 * wants new ones or the limit of its uses is reached.
 */
export function tickParts(at: BuildAtStep<StepKind>, command: CommandOf<'tick-parts'>): Events {
  const found = useAt(at, command.part, command.step)
  if (!found.ok) return found
  const { part, step, left } = found.value
  const { count, condition, before } = command
  if (left === 0) return refused('parts-ticked-already', { part: part.name, step: step.name })
  if (count > left) return refused('parts-too-many', { part: part.name, step: step.name, count, left })
  const why = condition === 'new' ? null : againstReuse(part, before ?? null)
  const reason = why === null ? null : readReason(command.reason, { what: why, part: part.name })
  if (reason !== null && !reason.ok) return reason
  return done([
    {
      type: 'parts-ticked',
      version,
      step: step.id,
      part: part.id,
      count,
      condition,
      ...(condition === 'used-again' && before !== undefined && { before }),
      reason: reason?.value ?? null,
      number: command.number.trim() || null,
    },
  ])
}

/** Refuses as `tickParts`, `parts-not-ticked` where there is nothing to take back, and `reason-missing`. */
export function removeTicks(at: BuildAtStep<StepKind>, command: CommandOf<'remove-ticks'>): Events {
  const found = useAt(at, command.part, command.step)
  if (!found.ok) return found
  const { part, step, ticks } = found.value
  if (ticks.length === 0) return refused('parts-not-ticked', { part: part.name, step: step.name })
  const reason = readReason(command.reason, { what: 'ticks-removed', part: part.name })
  if (!reason.ok) return reason
  return done([{ type: 'ticks-removed', version, step: step.id, part: part.id, reason: reason.value }])
}

/** Refuses as `tickParts`, for the step in which the part is used. */
export function leaveOver(at: BuildAtStep<'count'>, command: CommandOf<'leave-over'>): Events {
  const found = useAt(at, command.part, command.usedIn)
  if (!found.ok) return found
  const { part, step, left } = found.value
  if (left === 0) return refused('parts-ticked-already', { part: part.name, step: step.name })
  const reason = readReason(command.reason, { what: 'part-left-over', part: part.name })
  if (!reason.ok) return reason
  return done([
    {
      type: 'part-left-over',
      version,
      step: at.step.id,
      part: part.id,
      usedIn: step.id,
      count: left,
      reason: reason.value,
    },
  ])
}

/** Refuses `step-done-already`, and `part-unaccounted` while a part is neither ticked nor left over. */
export function countParts({ spec, state, step }: BuildAtStep<'count'>): Events {
  if (state.parts.counted.has(step.id)) return refused('step-done-already', { step: step.name })
  const [open] = unaccountedParts(spec, state)
  return open === undefined
    ? done([{ type: 'parts-counted', version, step: step.id }])
    : refused('part-unaccounted', { part: open.part.name, step: open.step.name, left: open.left })
}

function useAt(
  { spec, state }: Pick<BuildAtStep<StepKind>, 'spec' | 'state'>,
  id: string,
  step: string,
): Outcome<PartUse> {
  const part = spec.parts.find((each) => each.id === id)
  if (part === undefined) return refused('part-unknown', { part: id })
  const use = usesAt(spec, state, step).find((each) => each.part === part)
  const stepName = spec.steps.find((each) => each.id === step)?.name ?? step
  return use === undefined ? refused('part-not-in-step', { part: part.name, step: stepName }) : done(use)
}
