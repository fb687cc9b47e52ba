import type { Point } from '../../plane/index.ts'
import type { SpecDocument } from '../../engine/index.ts'
import { inNanometres, lengthTextOf, unitOf } from './position.ts'
import { subjects, type BearingKind, type PlacedThing } from './thing.ts'

type Face = SpecDocument['case']['faces'][number]

export interface Bearing {
  readonly id: string
  readonly at: string
  readonly width: string
  readonly diameter: string
  /** Of a balance bearing alone. */
  readonly across?: string
}

const shownAs: Readonly<Record<BearingKind, Face['shows']>> = {
  saddle: 'saddles',
  rod: 'rods',
  balance: 'balance',
}

export function bearingsOf({ case: engine }: SpecDocument, kind: BearingKind): readonly Bearing[] {
  return { saddle: engine.saddles, rod: engine.rods ?? [], balance: engine.balanceBearings ?? [] }[kind]
}

/** A document with another list of bearings of a kind. The entries must be of that kind. */
export function withBearings(
  document: SpecDocument,
  kind: BearingKind,
  list: readonly Bearing[],
): SpecDocument {
  const engine = document.case
  switch (kind) {
    case 'saddle':
      return { ...document, case: { ...engine, saddles: list as typeof engine.saddles } }
    case 'rod':
      return { ...document, case: { ...engine, rods: list as NonNullable<typeof engine.rods> } }
    case 'balance':
      return {
        ...document,
        case: { ...engine, balanceBearings: list as NonNullable<typeof engine.balanceBearings> },
      }
    default:
      return kind satisfies never
  }
}

/** The kind of bearing that lies open on a face; null for none. Seen along the crank none has a place along it. */
export function bearingKindOn(document: SpecDocument, face: string): BearingKind | null {
  const shown = document.case.faces.find(({ id }) => id === face)
  if (shown === undefined || !liesAlong(shown)) return null
  return subjects.bearings.find((kind) => shownAs[kind] === shown.shows) ?? null
}

function liesAlong({ plane = 'plan' }: Face): boolean {
  return plane !== 'nose' && plane !== 'drive'
}

/** The bearings of a kind with their places, on the first face that shows them, or the one that is asked for. */
export function placedBearings(
  document: SpecDocument,
  kind: BearingKind,
  face: string = document.case.faces.find((each) => liesAlong(each) && each.shows === shownAs[kind])?.id ??
    '',
): readonly PlacedThing[] {
  return bearingsOf(document, kind).map(({ id, at, across }) => ({
    ...{ kind, id, face },
    at: { x: inNanometres(at), y: across === undefined ? 0 : inNanometres(across) },
  }))
}

/** A bearing at another place: along the crank, a balance bearing across it too. A length keeps its unit, and its text where it is the same. */
export function bearingAt<Of extends Bearing>(bearing: Of, { x, y }: Point): Of {
  const text = (length: number, old: string) =>
    inNanometres(old) === length ? old : lengthTextOf(length, unitOf(old))
  const { at, across } = bearing
  return { ...bearing, at: text(x, at), ...(across !== undefined && { across: text(y, across) }) }
}

/** A list with one more: saddles from the nose on, others at the end. */
export function withBearing(document: SpecDocument, kind: BearingKind, bearing: Bearing): SpecDocument {
  const list = bearingsOf(document, kind)
  const place = inNanometres(bearing.at)
  const before = list.findIndex((each) => inNanometres(each.at) > place)
  const index = kind === 'saddle' && before >= 0 ? before : list.length
  return withBearings(document, kind, list.toSpliced(index, 0, bearing))
}

/** The first cylinder that has no rod. */
export function freeCylinder({ case: { rods = [] } }: SpecDocument): number {
  const taken = new Set(rods.map(({ cylinder }) => cylinder))
  let cylinder = 1
  while (taken.has(cylinder)) cylinder += 1
  return cylinder
}

/** A bearing has another name, and everything that names it too: fits, charts, the end float, the crank. */
export function renamedBearing(
  document: SpecDocument,
  kind: BearingKind,
  from: string,
  to: string,
): SpecDocument {
  const named = (id: string) => (id === from ? to : id)
  const { crank, endFloat } = document
  const list = bearingsOf(document, kind).map((each) => ({ ...each, id: named(each.id) }))
  return {
    ...withBearings(document, kind, list),
    fits: document.fits.map((fit) => ({
      ...fit,
      positions: fit.positions.map(named),
      ...(fit.chart && {
        chart: fit.chart.map((cell) => ({
          ...cell,
          ...(cell.positions && { positions: cell.positions.map(named) }),
        })),
      }),
    })),
    ...(endFloat && { endFloat: { ...endFloat, saddle: named(endFloat.saddle) } }),
    ...(crank && {
      crank: { ...crank, throws: crank.throws.map((each) => ({ ...each, rods: each.rods.map(named) })) },
    }),
  }
}

/**
 * Takes bearings out, of the fits and the crank too. What cannot be without one of them keeps it, and then the document cannot be
 * read: a fit with no bearing left, the end float of a saddle.
 */
export function withoutBearings(
  document: SpecDocument,
  kind: BearingKind,
  gone: ReadonlySet<string>,
): SpecDocument {
  const left = (ids: readonly string[]) => ids.filter((id) => !gone.has(id))
  const { crank } = document
  const list = bearingsOf(document, kind).filter(({ id }) => !gone.has(id))
  const throws = crank?.throws
    .map((each) => ({ ...each, rods: left(each.rods) }))
    .filter(({ rods }) => rods.length > 0)
  const kept = new Set(throws?.map(({ id }) => id))
  return {
    ...withBearings(document, kind, list),
    fits: document.fits.map((fit) => fitWithout(fit, left)),
    ...(crank &&
      throws && {
        crank: {
          ...crank,
          throws,
          ...(crank.counterweights && {
            counterweights: crank.counterweights.filter((each) => kept.has(each.throw)),
          }),
        },
      }),
  }
}

function fitWithout(
  fit: SpecDocument['fits'][number],
  left: (ids: readonly string[]) => string[],
): SpecDocument['fits'][number] {
  const { chart, ...rest } = fit
  const cells = chart
    ?.map((cell) => (cell.positions ? { ...cell, positions: left(cell.positions) } : cell))
    .filter(({ positions }) => positions === undefined || positions.length > 0)
  return { ...rest, positions: left(fit.positions), ...(cells && cells.length > 0 && { chart: cells }) }
}
