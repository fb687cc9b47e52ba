import type { Fit } from '../../engine/index.ts'
import type { Option } from './assignment-problem.ts'
import { worstCase } from '../clearance.ts'
import { againstLimits, targetOf } from '../limits.ts'
import { allowedPairs, thickerHalves, type Half, type Sizes } from '../choice/pairs.ts'
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

/** Two kinds of shell in one bearing, the upper half's and the lower half's. */
export interface ShellOption extends Option {
  readonly takes: readonly [upper: number, lower: number]
}

/**
 * Finds every way of filling a bearing from these kinds: the right undersize and half, what is pinned, the spec's mixing
 * rule, inside the limits at worst. It costs the square of twice the nominal clearance's distance from the target, in nm².
 * Where two shells would do either way round, the thicker is in the half that takes it.
 */
export function optionFinder(
  fit: Fit,
  kinds: readonly ShellKind[],
): (bearing: OpenBearing) => readonly ShellOption[] {
  const pairs = allowedPairs(fit)
  const twiceTarget = 2 * targetOf(fit)
  const [thicker] = thickerHalves(fit)
  const twiceWall = kinds.map(({ wall }) => wall.least + wall.most)

  return (bearing) => {
    const { bore, journal } = bearing.sizes
    const uppers = fittingByGrade(kinds, bearing, 'upper')
    const lowers = fittingByGrade(kinds, bearing, 'lower')
    const options = new Map<number, ShellOption>()
    for (const pair of pairs)
      for (const upper of uppers.get(pair.upper) ?? [])
        for (const lower of lowers.get(pair.lower) ?? []) {
          // One shell that was measured singly cannot lie in both halves.
          if (upper === lower && kinds[upper]!.pieces < 2 && !kinds[upper]!.orderable) continue
          const key = Math.min(upper, lower) * kinds.length + Math.max(upper, lower)
          const asTheyGo =
            thicker === 'upper'
              ? twiceWall[upper]! >= twiceWall[lower]!
              : twiceWall[lower]! >= twiceWall[upper]!
          if (options.has(key) && !asTheyGo) continue
          const clearance = worstCase(bore, journal, kinds[upper]!.wall, kinds[lower]!.wall)
          if (againstLimits(clearance, fit.clearance) !== 'inside') continue
          options.set(key, {
            cost: (clearance.least + clearance.most - twiceTarget) ** 2,
            takes: [upper, lower],
          })
        }
    return [...options.values()]
  }
}

/** Whether a kind of shell is for this half of the bearing, of its undersize, and what is pinned there if anything is. */
export function mayGoInto(kind: ShellKind, { undersize, pinned }: OpenBearing, half: Half): boolean {
  const pin = pinned[half]
  const asPinned = pin === null || ('label' in pin ? kind.label === pin.label : kind.grade === pin.grade)
  return asPinned && kind.undersize === undersize && (kind.half === half || kind.half === 'either')
}

/** The indexes, by grade, of the kinds that may go into one half and that can be had. */
function fittingByGrade(
  kinds: readonly ShellKind[],
  bearing: OpenBearing,
  half: Half,
): ReadonlyMap<string, readonly number[]> {
  const fitting = new Map<string, number[]>()
  for (const [index, kind] of kinds.entries()) {
    if (!mayGoInto(kind, bearing, half) || (kind.pieces === 0 && !kind.orderable)) continue
    const ofGrade = fitting.get(kind.grade)
    if (ofGrade === undefined) fitting.set(kind.grade, [index])
    else ofGrade.push(index)
  }
  return fitting
}
