import { done, type Outcome } from '../../problem/index.ts'
import { inMillimetres } from '../../quantity/index.ts'
import { cappedBearings, type EngineSpec, type Face } from '../../engine/index.ts'
import { cappedFlange, type CappedBearing } from './caps.ts'
import type { Point } from '../../plane/index.ts'
import { fastenersOn } from './face-fasteners.ts'
import type { Flange } from './flange.ts'
import { ladderFlange } from './ladder.ts'
import type { BetweenFaces } from './section.ts'

/**
 * The joint face of an engine as a flange to calculate with, with what was assumed.
 * `outline` is its edge as it is drawn: the corners of a closed polygon in mm of the engine's own frame.
 * `between` is not in a spec, and a gasket makes bolts feel each other much further.
 *
 * Refuses `face-without-fasteners`, and what `fastenedJoint` refuses. Throws a RangeError when the engine has
 * no such face.
 */
export function flangeOf(
  spec: EngineSpec,
  faceId: string,
  outline: readonly Point[],
  between: BetweenFaces,
): Outcome<Flange> {
  const face = spec.case.faces.find(({ id }) => id === faceId)
  if (face === undefined) throw new RangeError(`the engine ${spec.id} has no face ${faceId}`)
  const fasteners = fastenersOn(spec, face)
  if (!fasteners.ok) return fasteners
  const capped = capsOn(spec, face)
  const walls = face.shows === 'saddles' ? spec.case.saddles : []
  const flange =
    capped.length > 0
      ? cappedFlange(capped, fasteners.value, between)
      : ladderFlange(outline, walls, fasteners.value, between)
  return done({ ...flange, assumptions: [...flange.assumptions, between, ...always] })
}

/**
 * Bearings on this face that have caps of their own, as rods have and the carriers in a tunnel case; none where the
 * face is one joint.
 */
export function capsOn(spec: EngineSpec, { id }: Face): readonly CappedBearing[] {
  return cappedBearings(spec, id).map((bearing) => ({
    x: inMillimetres(bearing.at),
    y: 'across' in bearing ? inMillimetres(bearing.across) : 0,
    widthMm: inMillimetres(bearing.width),
    boreMm: inMillimetres(bearing.diameter),
  }))
}

const always = ['bed', 'flat', 'elastic', 'teaching'] as const
