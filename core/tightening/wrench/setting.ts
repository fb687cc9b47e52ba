import { done, refused, type Outcome } from '../../problem/index.ts'
import { newtonMetres, roundHalfAway, torqueIn, torqueOf, type Torque } from '../../quantity/index.ts'
import { adapterTooLong, type Adapter, type Wrench } from './wrench.ts'

/** A wrench as it is held: bare, or with an adapter, whose angle is the one it stands at now. */
export interface WrenchSetup {
  readonly wrench: Wrench
  readonly adapter: Adapter | null
}

/**
 * What the scale shows of each newton metre at the fastener: L/(L + E·cos α), 1 without an adapter (US Army
 * TM 9-2350-277-40&P, TM 1-1500-204-23-9). Below 1 where the adapter lengthens the lever, above where it is
 * turned back.
 *
 * Refuses `adapter-too-long` when the adapter reaches as far as the wrench is long. Without a length it
 * refuses `wrench-length-missing`, except for an adapter square to the handle, with which the length does not
 * matter.
 */
export function scaleShare({ wrench, adapter }: WrenchSetup): Outcome<number> {
  return adapter === null ? done(1) : leverShare(wrench, adapter)
}

/** `scaleShare` of an adapter, from no more of the wrench than its lever. */
export function leverShare(
  { name, length }: Pick<Wrench, 'name' | 'length'>,
  adapter: Omit<Adapter, 'id'>,
): Outcome<number> {
  if (adapter.angle === 90) return done(1)
  if (length === undefined) return refused('wrench-length-missing', { name, adapter: adapter.name })
  if (adapter.offset >= length) return { ok: false, problem: adapterTooLong(adapter, length) }
  return done(length / (length + adapter.offset * Math.cos((adapter.angle / 180) * Math.PI)))
}

/** What part of the scale may be used, both ends included. */
export interface UsableRange {
  readonly from: Torque
  readonly upTo: Torque
}

/**
 * From a fifth of full scale, or what the wrench states instead, and never below its lowest mark (ISO 6789-1;
 * US Army TM 1-1500-204-23-9 has the same fifth).
 */
export function usableRange({ range, statedMinimum }: Wrench): UsableRange {
  const trusted = statedMinimum ?? newtonMetres(range.most / 5)
  return { from: trusted > range.least ? trusted : range.least, upTo: range.most }
}

/** The mark nearest to a torque that lies within the usable range; null when there is none in it at all. */
export function nearestMark(wrench: Wrench, torque: Torque): Torque | null {
  const { unit, step } = wrench.scale
  const { from, upTo } = usableRange(wrench)
  // Counted in steps, and freed of binary dust, so that 20 N·m on a scale of 0.1 is a mark.
  const inSteps = (value: Torque) => roundHalfAway(torqueIn(value, unit) / step, 9)
  const nearestStep = roundHalfAway(inSteps(torque))
  const steps = Math.min(Math.max(nearestStep, Math.ceil(inSteps(from))), Math.floor(inSteps(upTo)))
  return steps < inSteps(from) ? null : torqueOf(roundHalfAway(steps * step, 9), unit)
}
