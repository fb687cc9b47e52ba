import type { Fit } from '../../engine/index.ts'
import { done, problem, type Outcome, type Problem } from '../../problem/index.ts'
import { oilClearance, type Range } from '../clearance.ts'
import { fewestOrdersThenNearest } from './fewest-orders.ts'
import { againstLimits } from '../limits.ts'
import type { Half, JudgedClearance } from '../choice/pairs.ts'
import { nearestInside } from '../choice/proposal.ts'
import { kindsOf, ofSize, type ShellKind, type Tray } from './tray.ts'
import { mayGoInto, optionFinder, type OpenBearing, type ShellOption } from './options.ts'

export interface AssignedShell {
  readonly grade: string
  readonly undersize: string | null
  /** What is ordered under this name: `either` where upper and lower are the same part. */
  readonly half: Half | 'either'
  /** The line of the tray it is taken from; null for one that must be ordered. */
  readonly label: string | null
  readonly wall: Range
}

export interface FilledBearing {
  readonly position: string
  readonly upper: AssignedShell
  readonly lower: AssignedShell
  readonly judged: JudgedClearance
}

export interface ShellAssignment {
  /** In the order in which the bearings were given. */
  readonly filled: readonly FilledBearing[]
  /** Bearings that no shells, in the tray or ordered, bring inside the limits, and what to do. */
  readonly unfilled: readonly { readonly position: string; readonly problem: Problem }[]
  /** The sum of the squares of each nominal clearance's distance from the target, in µm². */
  readonly squaredDeviation: number
  /** Whether it is certain that there is no better; only a tray far beyond one engine's leaves it open. */
  readonly proved: boolean
}

/**
 * Gives every bearing its shells, all at once: as few as possible are to be ordered, and among the ways of doing that the
 * sum of squared deviations from the target clearance is the least. Each clearance stays inside the limits at worst, the
 * halves are mixed only as the spec allows, and what is pinned stays.
 *
 * Refuses what `kindsOf` refuses.
 */
export function assignFromTray(
  fit: Fit,
  tray: Tray,
  bearings: readonly OpenBearing[],
): Outcome<ShellAssignment> {
  const kinds = kindsOf(fit, tray, new Set(bearings.map(({ undersize }) => undersize)))
  if (!kinds.ok) return kinds
  const optionsOf = optionFinder(fit, kinds.value)
  const fillable = bearings.map((bearing) => ({ bearing, options: optionsOf(bearing) }))
  // From the widest room for walls to the narrowest, so that bearings that want the same shells follow one another.
  const open = fillable
    .filter(({ options }) => options.length > 0)
    .sort((a, b) => room(b.bearing) - room(a.bearing))
  const pieces = piecesLeft(
    kinds.value,
    fillable.filter(({ options }) => options.length === 0).map(({ bearing }) => bearing),
    2 * bearings.length,
  )
  const { best, proved } = fewestOrdersThenNearest(
    open.map(({ options }) => options),
    pieces,
    kinds.value.map(({ orderable }) => orderable),
  )
  const chosen = new Map<OpenBearing, ShellOption>()
  best?.options.forEach((option, place) => chosen.set(open[place]!.bearing, open[place]!.options[option]!))
  return done({
    filled: handOut(fit, kinds.value, pieces, bearings, chosen),
    unfilled: bearings
      .filter((bearing) => !chosen.has(bearing))
      .map((bearing) => ({ position: bearing.position, problem: whyUnfilled(fit, bearing) })),
    squaredDeviation: (best?.cost ?? 0) / 4e6,
    proved,
  })
}

function room({ sizes: { bore, journal } }: OpenBearing): number {
  return bore.least + bore.most - journal.least - journal.most
}

/** A pinned shell is not given to another bearing, even where the one it is pinned to cannot be filled. */
function piecesLeft(
  kinds: readonly ShellKind[],
  shut: readonly OpenBearing[],
  mostWanted: number,
): readonly number[] {
  const left = kinds.map(({ pieces }) => Math.min(pieces, mostWanted))
  for (const bearing of shut)
    for (const half of ['upper', 'lower'] as const) {
      if (bearing.pinned[half] === null) continue
      const kept = kinds.findIndex((kind, index) => left[index]! > 0 && mayGoInto(kind, bearing, half))
      if (kept >= 0) left[kept]! -= 1
    }
  return left
}

/** Hands out the pieces that are there, first bearing first, so that whole bearings can be closed; the rest is ordered. */
function handOut(
  fit: Fit,
  kinds: readonly ShellKind[],
  pieces: readonly number[],
  bearings: readonly OpenBearing[],
  chosen: ReadonlyMap<OpenBearing, ShellOption>,
): readonly FilledBearing[] {
  const left = [...pieces]
  const shell = (kind: number): AssignedShell => {
    const { grade, undersize, half, label, wall } = kinds[kind]!
    left[kind]! -= 1
    return { grade, undersize, half, label: left[kind]! < 0 ? null : label, wall }
  }
  return bearings.flatMap((bearing) => {
    const option = chosen.get(bearing)
    if (option === undefined) return []
    const { position, sizes } = bearing
    const [upper, lower] = [shell(option.takes[0]), shell(option.takes[1])]
    const clearance = oilClearance(sizes.bore, sizes.journal, upper.wall, lower.wall)
    return [
      { position, upper, lower, judged: { clearance, within: againstLimits(clearance, fit.clearance) } },
    ]
  })
}

function whyUnfilled(fit: Fit, { position, sizes, undersize, pinned }: OpenBearing): Problem {
  if (pinned.upper !== null || pinned.lower !== null) return problem('pinned-outside', { place: position })
  const sized = ofSize(fit, undersize)
  const nearestPair = sized.ok ? nearestInside(sized.value, position, sizes) : sized
  return nearestPair.ok ? problem('tray-too-small', { place: position }) : nearestPair.problem
}
