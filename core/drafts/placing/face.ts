import { insidePolygon, type Point } from '../../plane/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { inNanometres, inPlace } from './position.ts'
import { isBearing, type PlacedThing, type Thing } from './thing.ts'
import { called, withPlaces } from './things.ts'
import type { SpecDocument } from '../../engine/index.ts'

export function faceOf(document: SpecDocument, id: string) {
  return document.case.faces.find((face) => face.id === id)
}

/** The corners of a face in nanometres; null where its edge is grown round what lies on it. */
export function outlineOf(document: SpecDocument, face: string): readonly Point[] | null {
  return faceOf(document, face)?.outline?.map(inPlace) ?? null
}

/**
 * Whether a place lies on a face: within its outline, the edge included. A grown outline takes in whatever there is; two pitches
 * beyond the outer saddles and four across are a slip of the hand, as the audit has it.
 */
export function liesOn(document: SpecDocument, face: string, at: Point): boolean {
  const outline = outlineOf(document, face)
  if (outline !== null) return insidePolygon(outline, at)
  const pitch = inNanometres(document.case.pitch)
  if (Math.abs(at.y) > 4 * pitch) return false
  const { plane = 'plan' } = faceOf(document, face) ?? {}
  if (plane === 'nose' || plane === 'drive') return true
  const saddles = document.case.saddles.map((saddle) => inNanometres(saddle.at))
  if (saddles.length === 0) return true
  return at.x >= Math.min(...saddles) - 2 * pitch && at.x <= Math.max(...saddles) + 2 * pitch
}

/** Bearings and corners make the face, everything else has to lie on it. */
export function mayLieAt(document: SpecDocument, { kind, face }: PlacedThing, at: Point): boolean {
  return isBearing(kind) || kind === 'corner' || liesOn(document, face, at)
}

/** Things at other places of their faces. Refuses `draft-off-face`: all of them stay where they are. */
export function putAt(
  document: SpecDocument,
  things: readonly PlacedThing[],
  to: (thing: PlacedThing) => Point,
): Outcome<SpecDocument> {
  const places = new Map<string, Point>()
  for (const thing of things) {
    const at = to(thing)
    if (!mayLieAt(document, thing, at)) return offFace(document, thing)
    places.set(`${thing.kind}/${thing.id}`, at)
  }
  return done(withPlaces(document, places))
}

export function offFace(document: SpecDocument, thing: Thing): Outcome<never> {
  return refused('draft-off-face', { what: called(document, thing) })
}
