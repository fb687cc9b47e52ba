import type { Fit } from '../spec/index.ts'
import type { Way } from './allot.ts'
import { oilClearance } from './clearance.ts'
import { againstLimits, targetOf } from './limits.ts'
import { allowedPairs, thickerHalves, type Half, type Judged, type Sizes } from './pairs.ts'
import type { ShellKind } from './tray.ts'

/** What a person has fixed for one half: a grade, wherever it comes from, or one line of the tray. */
export type Pin = { readonly grade: string } | { readonly label: string }

/** One bearing that is to get its shells from the tray. */
export interface OpenBearing {
  readonly position: string
  readonly sizes: Sizes
  /** What its journal is ground to; null for the standard size. */
  readonly undersize: string | null
  readonly pinned: { readonly upper: Pin | null; readonly lower: Pin | null }
}

/** Two kinds of shell in a bearing, inside the limits. Takes the upper half's kind, then the lower half's. */
export interface ShellWay extends Way {
  readonly takes: readonly [number, number]
  readonly judged: Judged
}

/**
 * Every way of filling a bearing from these kinds: the right undersize and half, what is pinned, the spec's mixing rule,
 * inside the limits at worst. It costs the square of twice the nominal clearance's distance from the target, in nm².
 * Where two shells would do either way round, the thicker is in the half that takes it.
 */
export function waysOf(fit: Fit, kinds: readonly ShellKind[], bearing: OpenBearing): readonly ShellWay[] {
  const uppers = fitting(kinds, bearing, 'upper')
  const lowers = fitting(kinds, bearing, 'lower')
  const allowed = new Set(allowedPairs(fit).map(({ upper, lower }) => `${upper}/${lower}`))
  const ways = new Map<number, ShellWay>()
  for (const upper of uppers)
    for (const lower of lowers) {
      if (!allowed.has(`${kinds[upper]!.grade}/${kinds[lower]!.grade}`)) continue
      const takes = [upper, lower] as const
      const pair = Math.min(...takes) * kinds.length + Math.max(...takes)
      if (ways.has(pair) && !thickerInItsHalf(fit, kinds, takes)) continue
      const way = wayWith(fit, kinds, bearing.sizes, takes)
      if (way.judged.within === 'inside') ways.set(pair, way)
    }
  return [...ways.values()]
}

/** The indexes of the kinds that may go into one half of a bearing. */
function fitting(
  kinds: readonly ShellKind[],
  { undersize, pinned }: OpenBearing,
  half: Half,
): readonly number[] {
  const pin = pinned[half]
  return kinds.flatMap((kind, index) => {
    const pinnedTo = pin === null || ('label' in pin ? kind.label === pin.label : kind.grade === pin.grade)
    const fits = kind.undersize === undersize && (kind.half === half || kind.half === 'either')
    return pinnedTo && fits && (kind.pieces > 0 || kind.orderable) ? [index] : []
  })
}

function wayWith(
  fit: Fit,
  kinds: readonly ShellKind[],
  { bore, journal }: Sizes,
  takes: readonly [number, number],
): ShellWay {
  const clearance = oilClearance(bore, journal, kinds[takes[0]]!.wall, kinds[takes[1]]!.wall)
  const cost = (clearance.least + clearance.most - 2 * targetOf(fit)) ** 2
  return { cost, takes, judged: { clearance, within: againstLimits(clearance, fit.clearance) } }
}

function thickerInItsHalf(
  fit: Fit,
  kinds: readonly ShellKind[],
  [upper, lower]: readonly [number, number],
): boolean {
  const twice = ({ wall }: ShellKind) => wall.least + wall.most
  const thicker = twice(kinds[upper]!) > twice(kinds[lower]!) ? 'upper' : 'lower'
  return thicker === thickerHalves(fit)[0]
}
