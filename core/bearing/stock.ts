import type { Fit } from '../spec/index.ts'
import { done, problem, type Outcome, type Problem } from '../problem/index.ts'
import { allot, type Allotment } from './allot.ts'
import type { Range } from './clearance.ts'
import type { Half, Judged } from './pairs.ts'
import { nearestInside } from './proposal.ts'
import { kindsOf, ofSize, type ShellKind, type Tray } from './tray.ts'
import { waysOf, type OpenBearing, type ShellWay } from './ways.ts'

export interface AllottedShell {
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
  readonly upper: AllottedShell
  readonly lower: AllottedShell
  readonly judged: Judged
}

export interface Assignment {
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
export function assignFromTray(fit: Fit, tray: Tray, bearings: readonly OpenBearing[]): Outcome<Assignment> {
  const kinds = kindsOf(fit, tray, new Set(bearings.map(({ undersize }) => undersize)))
  if (!kinds.ok) return kinds
  const options = bearings.map((bearing) => ({ bearing, ways: waysOf(fit, kinds.value, bearing) }))
  // From the widest room for walls to the narrowest, so that bearings that want the same shells follow one another.
  const open = options.filter(({ ways }) => ways.length > 0).sort((a, b) => room(b.bearing) - room(a.bearing))
  const shut = options.filter(({ ways }) => ways.length === 0)
  const pieces = piecesLeft(
    kinds.value,
    shut.map(({ bearing }) => bearing),
    2 * bearings.length,
  )
  const { best, proved } = fewestOrdersThenNearest(
    open.map(({ ways }) => ways),
    pieces,
    kinds.value,
  )
  const without = best === null ? options : shut
  const filled =
    best === null ? [] : open.map(({ bearing, ways }, place) => ({ bearing, way: ways[best.ways[place]!]! }))
  return done({
    filled: inOrderOf(bearings, handOut(kinds.value, pieces, filled)),
    unfilled: without.map(({ bearing }) => ({
      position: bearing.position,
      problem: whyUnfilled(fit, bearing),
    })),
    squaredDeviation: (best?.cost ?? 0) / 4e6,
    proved,
  })
}

function room({ sizes: { bore, journal } }: OpenBearing): number {
  return bore.least + bore.most - journal.least - journal.most
}

function inOrderOf(
  bearings: readonly OpenBearing[],
  filled: ReadonlyMap<OpenBearing, FilledBearing>,
): readonly FilledBearing[] {
  return bearings.flatMap((bearing) => filled.get(bearing) ?? [])
}

/** A pinned shell is not given to another bearing, even where the one it is pinned to cannot be filled. */
function piecesLeft(
  kinds: readonly ShellKind[],
  shut: readonly OpenBearing[],
  mostWanted: number,
): readonly number[] {
  const left = kinds.map(({ pieces }) => Math.min(pieces, mostWanted))
  for (const { undersize, pinned } of shut)
    for (const half of ['upper', 'lower'] as const) {
      const pin = pinned[half]
      if (pin === null) continue
      const kept = kinds.findIndex(
        (kind, index) =>
          left[index]! > 0 &&
          kind.undersize === undersize &&
          (kind.half === half || kind.half === 'either') &&
          ('label' in pin ? kind.label === pin.label : kind.grade === pin.grade),
      )
      if (kept >= 0) left[kept]! -= 1
    }
  return left
}

/** Finds the fewest orders first; with no more than those, the least sum of squares. */
function fewestOrdersThenNearest(
  places: readonly (readonly ShellWay[])[],
  pieces: readonly number[],
  kinds: readonly ShellKind[],
): { readonly best: Allotment | null; readonly proved: boolean } {
  const orderable = kinds.map((kind) => kind.orderable)
  // Prices are whole numbers, so an order costs enough of them for its price to be a fine one.
  const costOfOrder = 1000
  const fewest = allot({
    places: places.map((ways) => ways.map(({ takes }) => ({ cost: 0, takes }))),
    pieces,
    order: { kinds: orderable, cost: costOfOrder, most: Infinity },
    grain: costOfOrder,
  })
  if (fewest.best === null) return fewest
  const { ways } = fewest.best
  const cost = ways.reduce((total, way, place) => total + places[place]![way]!.cost, 0)
  const order = { kinds: orderable, cost: 0, most: fewest.best.cost / costOfOrder }
  const nearest = allot({ places, pieces, order, grain: 1 }, { ways, cost })
  return { best: nearest.best, proved: fewest.proved && nearest.proved }
}

/** Hands out the pieces that are there; those beyond are ordered. */
function handOut(
  kinds: readonly ShellKind[],
  pieces: readonly number[],
  filled: readonly { readonly bearing: OpenBearing; readonly way: ShellWay }[],
): ReadonlyMap<OpenBearing, FilledBearing> {
  const left = [...pieces]
  const shell = (kind: number): AllottedShell => {
    const { grade, undersize, half, label, wall } = kinds[kind]!
    left[kind]! -= 1
    return { grade, undersize, half, label: left[kind]! < 0 ? null : label, wall }
  }
  return new Map(
    filled.map(({ bearing, way: { takes, judged } }) => {
      const { position } = bearing
      return [bearing, { position, upper: shell(takes[0]), lower: shell(takes[1]), judged }]
    }),
  )
}

function whyUnfilled(fit: Fit, { position, sizes, undersize, pinned }: OpenBearing): Problem {
  if (pinned.upper !== null || pinned.lower !== null) return problem('pinned-outside', { place: position })
  const sized = ofSize(fit, undersize)
  const nearest = sized.ok ? nearestInside(sized.value, position, sizes) : sized
  return nearest.ok ? problem('tray-too-small', { place: position }) : nearest.problem
}
