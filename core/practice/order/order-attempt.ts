import type { EngineSpec } from '../../engine/index.ts'
import { measureOrder, placesOf, type Place } from '../../tightening/index.ts'
import { pulledIn, type AfterPass, type OrderDrill } from './order-drill.ts'
import type { Tally } from '../round.ts'

/** What a person says is next: a fastener, that the pass is complete, or what comes after it. */
export type OrderAnswer =
  | { readonly kind: 'fastener'; readonly fastener: string }
  | { readonly kind: 'pass-complete' }
  | { readonly kind: 'after'; readonly pass: AfterPass }

/**
 * Why the order goes to another fastener here. `middle-first`: it goes outwards, and that one is nearer to the middle.
 * `apart`: the one that was named lies beside the last pulled. `as-given`: neither; the spec's order stands for itself.
 */
export type OrderReason = 'middle-first' | 'apart' | 'as-given'

/** A wrong answer, with what is to be said of it. */
export type OrderMistake =
  | { readonly kind: 'already-pulled' | 'not-in-pass' | 'is-complete'; readonly fastener: string }
  | {
      readonly kind: 'out-of-order'
      readonly fastener: string
      readonly wanted: string
      readonly reason: OrderReason
    }
  | { readonly kind: 'not-complete'; readonly left: number }
  | { readonly kind: 'wrong-pass'; readonly pass: AfterPass; readonly wanted: AfterPass }

/** How far a person has come with an order drill. */
export interface OrderAttempt {
  readonly drill: OrderDrill
  /** How many of the key are named. */
  readonly named: number
  readonly asks: 'fastener' | 'after' | 'nothing'
  /** Wrong answers since the last right one. */
  readonly wrongHere: number
  readonly tally: Tally
}

export function beginOrder(drill: OrderDrill): OrderAttempt {
  return { drill, named: 0, asks: 'fastener', wrongHere: 0, tally: [] }
}

/** The attempt after an answer, and what was wrong with it; null where it was right. What answers no question changes nothing. */
export function answerOrder(
  spec: EngineSpec,
  attempt: OrderAttempt,
  answer: OrderAnswer,
): { readonly attempt: OrderAttempt; readonly mistake: OrderMistake | null } {
  if (!isAnswer(attempt, answer)) return { attempt, mistake: null }
  const mistake = mistakeIn(spec, attempt, answer)
  const about = aboutNext(attempt)
  if (mistake !== null) return { attempt: { ...attempt, wrongHere: attempt.wrongHere + 1 }, mistake }
  const tally = [...attempt.tally, { about, errors: attempt.wrongHere }]
  return { attempt: { ...attempt, ...onwards(attempt), wrongHere: 0, tally }, mistake: null }
}

function isAnswer({ asks }: OrderAttempt, { kind }: OrderAnswer): boolean {
  if (kind === 'after') return asks === 'after'
  return kind === 'pass-complete' ? asks === 'fastener' : asks !== 'nothing'
}

/** What is asked for now, as the scene names it; the pass's face for what is no fastener. */
function aboutNext({ drill, named }: OrderAttempt): string {
  const fastener = drill.key[named]
  return fastener === undefined ? `face/${drill.procedure.face}` : `fastener/${fastener}`
}

/** After the last fastener of a pass it is to be said that the pass is complete, then what comes next. */
function onwards({ drill, named, asks }: OrderAttempt): Pick<OrderAttempt, 'named' | 'asks'> {
  if (asks === 'after') return { named, asks: 'nothing' }
  if (named >= drill.key.length) return { named, asks: 'after' }
  const now = named + 1
  const ends = now === drill.key.length && drill.after === null
  return { named: now, asks: ends ? 'nothing' : 'fastener' }
}

function mistakeIn(
  spec: EngineSpec,
  { drill, named, asks }: OrderAttempt,
  answer: OrderAnswer,
): OrderMistake | null {
  if (asks === 'after') {
    const wanted = drill.after?.key ?? null
    if (answer.kind === 'fastener') return { kind: 'is-complete', fastener: answer.fastener }
    return answer.kind === 'after' && answer.pass !== wanted
      ? { kind: 'wrong-pass', pass: answer.pass, wanted }
      : null
  }
  const left = drill.key.length - named
  if (answer.kind !== 'fastener') return left > 0 ? { kind: 'not-complete', left } : null
  const { fastener } = answer
  const wanted = drill.key[named]
  if (wanted === undefined) return { kind: 'is-complete', fastener }
  if (fastener === wanted) return null
  if ([...drill.before, ...drill.key.slice(0, named)].includes(fastener))
    return { kind: 'already-pulled', fastener }
  if (!pulledIn(drill.procedure, drill.pass).includes(fastener)) return { kind: 'not-in-pass', fastener }
  return { kind: 'out-of-order', fastener, wanted, reason: reasonFor(spec, drill, named, fastener, wanted) }
}

/** The pass is said to go outwards where fewer than this share of its pairs have the outer one first. */
const outwardsBelow = 0.4

function reasonFor(
  spec: EngineSpec,
  { before, key }: OrderDrill,
  named: number,
  fastener: string,
  wanted: string,
): OrderReason {
  const places = placesOf(spec, [...before, ...key])
  const at = new Map(places.map((place) => [place.id, place]))
  const [tapped, next] = [at.get(fastener), at.get(wanted)]
  if (tapped === undefined || next === undefined) return 'as-given'
  const { inwards } = measureOrder(places)
  const middle = middleOf(places)
  const away = (place: Place) => Math.hypot(place.x - middle.x, place.y - middle.y)
  if (inwards !== null && inwards < outwardsBelow && away(next) < away(tapped) * 0.95) return 'middle-first'
  const last = at.get([...before, ...key.slice(0, named)].at(-1) ?? '')
  if (last === undefined) return 'as-given'
  const fromLast = (place: Place) => Math.hypot(place.x - last.x, place.y - last.y)
  return fromLast(tapped) < fromLast(next) * 0.95 ? 'apart' : 'as-given'
}

/** Of the box around all places. */
function middleOf(places: readonly Place[]): { readonly x: number; readonly y: number } {
  const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2
  return { x: middle(places.map(({ x }) => x)), y: middle(places.map(({ y }) => y)) }
}
