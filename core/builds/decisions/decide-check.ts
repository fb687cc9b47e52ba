import { done, refused, type Outcome } from '../../problem/index.ts'
import { parseLength } from '../../quantity/index.ts'
import type { Step } from '../../engine/index.ts'
import type { BuildEvent } from '../events/events.ts'
import type { BuildAtStep, CommandOf, Events } from '../commands/step-rules.ts'

type AnswerCheck = CommandOf<'answer-check'>
type Check = Extract<Step, { kind: 'check' }>
type Answer = Extract<BuildEvent, { type: 'check-answered' }>

/**
 * A check may be answered as often as one likes; the last answer counts. What was not good is good only once something was
 * done, and that is said in the note. Good needs a reading within the
 * limits, which are themselves allowed, where the step asks for one; a reading outside is recorded as not
 * good, whatever was said.
 */
export function answerCheck({ state, step }: BuildAtStep<'check'>, command: AnswerCheck): Events {
  const reading = readGauge(step, command)
  if (!reading.ok) return reading
  const wasBad = state.checks[step.id]?.verdict === 'not-good'
  if (wasBad && command.good && command.unexplained !== true && command.note.trim() === '')
    return refused('check-good-why', { step: step.name })
  const verdict = command.good && isWithin(step, reading.value) ? 'good' : 'not-good'
  const { id } = step
  return done([
    {
      type: 'check-answered',
      version: 1,
      step: id,
      verdict,
      reading: reading.value,
      ...(reading.value !== null && command.readWith !== undefined && { readWith: command.readWith }),
      note: command.note.trim(),
      ...(command.fittedWashers !== undefined && { fittedWashers: command.fittedWashers }),
      ...(command.washersByTable !== undefined && { washersByTable: command.washersByTable }),
      ...(command.measuredWith !== undefined && { measuredWith: command.measuredWith }),
      ...(command.thrustPair !== undefined && { thrustPair: command.thrustPair }),
    },
  ])
}

function readGauge(step: Check, { reading, good }: AnswerCheck): Outcome<Answer['reading']> {
  if (step.reading === undefined)
    return reading === null ? done(null) : refused('check-without-reading', { step: step.name })
  if (reading === null) return good ? refused('check-reading-missing', { step: step.name }) : done(null)
  const length = parseLength(reading, 'mm')
  if (!length.ok) return length
  if (length.value < 0) return refused('number-negative', { typed: reading.trim() })
  return done({ typed: reading, length_nm: length.value })
}

function isWithin({ reading: limits }: Check, reading: Answer['reading']): boolean {
  if (limits === undefined) return true
  return reading !== null && reading.length_nm >= limits.least && reading.length_nm <= limits.most
}
