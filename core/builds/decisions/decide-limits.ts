import { done, refused, type Outcome } from '../../problem/index.ts'
import { nanometres, parseLength } from '../../quantity/index.ts'
import { readReason } from '../../tightening/index.ts'
import { ringGapAdvice } from '../limits/ring-gap-advice.ts'
import { ringGapSlip } from '../limits/ring-gap-slip.ts'
import { askedPlaces, judgeLimits, type AskedPlace } from '../limits/asked-places.ts'
import type { BuildAtStep, CommandOf, Events } from '../commands/step-rules.ts'

type BuildAtLimits = BuildAtStep<'measure-limits' | 'measure-rings'>
const version = 1

/**
 * A place may be measured as often as one likes; the last reading counts. Refuses `measure-unknown`, what `parseLength` does,
 * `number-negative` where a gap cannot be, `ring-gap-zero`, and what is no ring gap unless a person is sure: see `ringGapSlip`.
 */
export function measureLimit(at: BuildAtLimits, command: CommandOf<'measure-limit'>): Events {
  const place = placeOf(at, command)
  if (!place.ok) return place
  const { measure, place: called } = place.value
  const length = parseLength(command.typed, 'mm')
  if (!length.ok) return length
  const typed = command.typed.trim()
  if (length.value < 0 && measure.what !== 'deck-height') return refused('number-negative', { typed })
  if (length.value === 0 && measure.what === 'ring-gap') return refused('ring-gap-zero', { place: called })
  if (measure.what === 'ring-gap' && command.sure !== true) {
    const slip = ringGapSlip(at.spec, measure, typed, length.value)
    if (slip !== null) return slip
  }
  const reading = { typed, length_nm: length.value }
  const verdict = judgeLimits(measure, length.value)
  const { readWith } = command
  const read = { reading, ...(readWith !== undefined && { readWith }) }
  return done([{ type: 'limit-measured', version, ...named(command), ...read, verdict }])
}

/**
 * Refuses `measure-unknown`, `nothing-outside` where the place asks for nothing, `reason-missing`, and `ring-too-tight`: a ring of a set
 * that is filed is right, and one whose ends may meet when it is hot never is.
 */
export function acceptMeasured(at: BuildAtLimits, command: CommandOf<'accept-measured'>): Events {
  const open = openAt(at, command)
  if (!open.ok) return open
  const { measure, measured, place } = open.value
  const advice =
    measure.ring === undefined ? null : ringGapAdvice(measure, nanometres(measured!.reading.length_nm))
  if (measure.what === 'ring-gap' && advice?.what === 'file')
    return refused('ring-too-tight', { name: measure.name, place })
  const facts = { name: measure.name, place }
  const reason = readReason(command.reason, { what: 'limit-accepted', ...facts })
  if (!reason.ok) return reason
  return done([{ type: 'limit-accepted', version, ...named(command), reason: reason.value }])
}

/** Refuses as `acceptMeasured`. */
export function replaceMeasured(at: BuildAtLimits, command: CommandOf<'replace-measured'>): Events {
  const open = openAt(at, command)
  if (!open.ok) return open
  const reason = readReason(command.reason, { what: 'measured-part-replaced' })
  if (!reason.ok) return reason
  return done([{ type: 'measured-part-replaced', version, ...named(command), reason: reason.value }])
}

type Place = Pick<CommandOf<'measure-limit'>, 'step' | 'measure' | 'at'>

function named({ step, measure, at }: Place) {
  return { step, measure, at }
}

function placeOf({ spec, state, step }: BuildAtLimits, { measure, at }: Place): Outcome<AskedPlace> {
  const place = askedPlaces(spec, state, step).find((each) => each.measure.id === measure && each.at === at)
  return place === undefined ? refused('measure-unknown', { step: step.name, place: at }) : done(place)
}

function openAt(build: BuildAtLimits, command: Place): Outcome<AskedPlace> {
  const place = placeOf(build, command)
  if (!place.ok) return place
  const { measured, settled, measure, place: called } = place.value
  return measured === null || settled
    ? refused('nothing-outside', { name: measure.name, place: called })
    : place
}
