import { kilonewtons, mostPressure, type ClampPicture } from '../../core/layout/index.ts'
import type { Words } from '../../core/words/index.ts'
import { clampAfter, loadsAfter, type ClampRun, type MappedOrder } from '../../core/tightening/index.ts'

/** A run of the procedure in one order. */
export interface OrderedRun {
  readonly order: MappedOrder
  readonly run: ClampRun
}

/** One of the two orders after so many pulls. */
export type Side = ReturnType<typeof sidesAfter>[number]

export function sidesAfter(runs: readonly OrderedRun[], pull: number) {
  return runs.map(({ order, run }, index) => ({
    ...{ index, order, run },
    state: clampAfter(run, pull),
    loads: loadsAfter(run, pull),
    just: run.pulls[pull - 1],
  }))
}

/** What the pictures have in common, over all passes, so that a colour means the same everywhere. Pressures in MPa. */
export interface Scale {
  readonly most: number
  readonly mostDifferent: number
  /** The widest number that a disc shows. */
  readonly widest: string
}

/** Less than this is no pressure; it keeps a scale from having no length. */
const leastScale = 1e-9

export function scaleOf(words: Words, runs: readonly OrderedRun[]): Scale {
  const states = runs.map(({ run }) => run.map.afterPasses.map(({ state }) => state))
  const pressures = runs.flatMap(({ run }, index) =>
    states[index]!.map((state) => mostPressure(run.flange, state)),
  )
  const highestPressure = Math.max(leastScale, ...pressures)
  const [one, other] = states
  const differences = (other ? one! : []).flatMap((state, index) => {
    const against = other?.[index]
    return against ? [mostPressure(runs[0]!.run.flange, state, against)] : []
  })
  const loads = runs.flatMap(({ run }) => run.map.afterPulls.flatMap((each) => each.loads.map(Number)))
  return {
    most: highestPressure,
    // Less than a tenth of the pressure itself is no difference to speak of.
    mostDifferent: Math.max(highestPressure / 10, ...differences),
    widest: kilonewtons(words, Math.max(0, ...loads)),
  }
}

export function pictureOf(
  words: Words,
  { run, state, loads, just }: Side,
  { most, widest }: Scale,
): ClampPicture {
  return {
    ...{ flange: run.flange, state, most, own: run.own, widest },
    numbers: new Map([...loads].map(([bolt, load]) => [bolt, kilonewtons(words, load)])),
    marked: new Set(just ? [just.bolt] : []),
  }
}

/**
 * What each fastener holds more or less in the second order than in the first, of those whose difference shows; null where none
 * does, and where there is only one order.
 */
export function differenceOf(
  words: Words,
  [one, other]: readonly Side[],
  { mostDifferent, widest }: Scale,
  marked: string | null,
): ClampPicture | null {
  if (!one || !other) return null
  const numbers = new Map(
    [...one.loads].flatMap(([bolt, load]) => {
      const difference = (other.loads.get(bolt) ?? load) - load
      const text = kilonewtons(words, Math.abs(difference))
      if (text === kilonewtons(words, 0)) return []
      return [[bolt, `${difference < 0 ? '−' : '+'}${text}`] as const]
    }),
  )
  if (numbers.size === 0) return null
  return {
    ...{ flange: one.run.flange, state: one.state, against: other.state, most: mostDifferent },
    ...{ own: one.run.own, numbers, widest: `+${widest}` },
    marked: new Set(marked === null ? [] : [marked]),
  }
}
