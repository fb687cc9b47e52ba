import { sidesOf, type Point } from '../../plane/index.ts'
import type { SpecDocument } from '../../engine/index.ts'
import { inPlace, lengthTextOf, placeTexts, unitOf } from './position.ts'
import type { PathKind, PlacedThing } from './thing.ts'

type PlaceText = [string, string]
type Bead = NonNullable<SpecDocument['beads']>[number]

/** Which point of which outline or bead: `joint~3` is the third corner of the face `joint`. */
function ofPath(id: string): { readonly of: string; readonly index: number } {
  const at = id.lastIndexOf('~')
  return { of: id.slice(0, at), index: Number(id.slice(at + 1)) - 1 }
}

export function pointId(of: string, index: number): string {
  return `${of}~${index + 1}`
}

/** Where a point, or the entry that it is of, stands in the document. */
export function pathOfPoint(
  document: SpecDocument,
  kind: PathKind,
  id: string,
): readonly (string | number)[] | null {
  const { of, index } = ofPath(id)
  if (kind === 'corner') {
    const face = document.case.faces.findIndex((each) => each.id === of)
    return face < 0 ? null : ['case', 'faces', face, 'outline', index]
  }
  const bead = (document.beads ?? []).findIndex((each) => each.id === of)
  if (bead < 0) return null
  return ['beads', bead, ...(kind === 'bead-point' ? ['path', index] : ['keepOut', index])]
}

/** The points of a kind on a face, in the order of the document. */
export function pointsOn(document: SpecDocument, kind: PathKind, face: string): readonly PlacedThing[] {
  const placed = (of: string, places: readonly (readonly [string, string])[]) =>
    places.map((at, index) => ({ kind, id: pointId(of, index), face, at: inPlace(at) }))
  if (kind === 'corner') return placed(face, document.case.faces.find(({ id }) => id === face)?.outline ?? [])
  return (document.beads ?? [])
    .filter((bead) => bead.face === face)
    .flatMap((bead) =>
      placed(bead.id, kind === 'bead-point' ? bead.path : (bead.keepOut ?? []).map(({ at }) => at)),
    )
}

export function faceOfPoint(document: SpecDocument, kind: PathKind, id: string): string | undefined {
  const { of } = ofPath(id)
  return kind === 'corner' ? of : document.beads?.find((bead) => bead.id === of)?.face
}

/** A document with points at other places, by their ids. */
export function withPointsAt(
  document: SpecDocument,
  kind: PathKind,
  places: ReadonlyMap<string, Point>,
): SpecDocument {
  return changed(document, kind, (of, points) =>
    points.map((old, index) => {
      const at = places.get(pointId(of, index))
      return at === undefined ? old : placeTexts(at, old)
    }),
  )
}

/** Without some points; what they are of keeps the rest. */
export function withoutPoints(
  document: SpecDocument,
  kind: PathKind,
  gone: ReadonlySet<string>,
): SpecDocument {
  if (kind === 'keep-out')
    return eachBead(document, (bead) =>
      bead.keepOut === undefined
        ? bead
        : { ...bead, keepOut: bead.keepOut.filter((_, index) => !gone.has(pointId(bead.id, index))) },
    )
  return changed(document, kind, (of, points) => points.filter((_, index) => !gone.has(pointId(of, index))))
}

/** One point more, in the side of the path that it lengthens least; its number there, counted from 0. */
export function withPoint(
  document: SpecDocument,
  kind: 'corner' | 'bead-point',
  of: string,
  at: Point,
): { readonly document: SpecDocument; readonly index: number } {
  const isClosed = kind === 'corner' || document.beads?.find((bead) => bead.id === of)?.closed === true
  let index = 0
  const after = changed(document, kind, (each, points) => {
    if (each !== of) return points
    index = placeInPath(points.map(inPlace), isClosed, at)
    const unit = unitOf(points[0]?.[0] ?? document.case.bore)
    return points.toSpliced(index, 0, [lengthTextOf(at.x, unit), lengthTextOf(at.y, unit)])
  })
  return { document: after, index }
}

/** Where it makes the path least longer: in one of its sides, or at an end of one that is open. */
function placeInPath(points: readonly Point[], isClosed: boolean, at: Point): number {
  const to = ({ x, y }: Point) => Math.hypot(x - at.x, y - at.y)
  const longer = sidesOf(points, isClosed).map(
    ([a, b], index) => [to(a) + to(b) - Math.hypot(b.x - a.x, b.y - a.y), index + 1] as const,
  )
  const [first, last] = [points[0], points.at(-1)]
  const ends =
    isClosed || !first || !last
      ? []
      : ([
          [to(last), points.length],
          [to(first), 0],
        ] as const)
  const [least] = [...longer, ...ends].toSorted(([one], [other]) => one - other)
  return least?.[1] ?? points.length
}

function changed(
  document: SpecDocument,
  kind: PathKind,
  change: (of: string, points: PlaceText[]) => PlaceText[],
): SpecDocument {
  if (kind === 'corner') {
    const faces = document.case.faces.map((face) => {
      if (face.outline === undefined) return face
      const outline = change(face.id, face.outline)
      const { outline: _, ...grown } = face
      return outline.length === 0 ? grown : { ...face, outline }
    })
    return { ...document, case: { ...document.case, faces } }
  }
  if (kind === 'bead-point')
    return eachBead(document, (bead) => ({ ...bead, path: change(bead.id, bead.path) }))
  return eachBead(document, (bead) => {
    const { keepOut } = bead
    if (keepOut === undefined) return bead
    const places = change(
      bead.id,
      keepOut.map(({ at }) => at),
    )
    return { ...bead, keepOut: keepOut.map((zone, index) => ({ ...zone, at: places[index]! })) }
  })
}

function eachBead(document: SpecDocument, change: (bead: Bead) => Bead): SpecDocument {
  return document.beads === undefined ? document : { ...document, beads: document.beads.map(change) }
}
