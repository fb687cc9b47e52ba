import { inMillimetres } from '../../quantity/index.ts'
import {
  splitAt,
  type Bead,
  type Dowel,
  type EngineSpec,
  type Face,
  type FacePart,
  type Fastener,
  type Fit,
  type OilPassage,
  type Saddle,
} from '../../engine/index.ts'
import type { Box } from '../scene/scene.ts'
import { acrossAnEnd } from '../view.ts'

/** A bearing on a face, in mm of the engine's own frame. */
export interface BearingPlace {
  readonly id: string
  readonly kind: Fit['kind']
  readonly x: number
  readonly y: number
  readonly width: number
  readonly diameter: number
  readonly thrust: boolean
  readonly split: Fit['split']
}

/** All of the spec that lies on one joint face. */
export interface OnFace {
  readonly face: Face
  readonly fasteners: readonly Fastener[]
  readonly dowels: readonly Dowel[]
  readonly oilPassages: readonly OilPassage[]
  readonly faceParts: readonly FacePart[]
  readonly beads: readonly Bead[]
  readonly bearings: readonly BearingPlace[]
}

/** Throws a RangeError when the engine has no such face: to ask for one is a bug. */
export function onFace(spec: EngineSpec, faceId: string): OnFace {
  const face = spec.case.faces.find(({ id }) => id === faceId)
  if (face === undefined) throw new RangeError(`the engine ${spec.id} has no face ${faceId}`)
  const here = (part: { readonly face: string }): boolean => part.face === faceId
  return {
    face,
    fasteners: spec.fasteners.filter(here),
    dowels: spec.case.dowels.filter(here),
    oilPassages: spec.case.oilPassages.filter(here),
    faceParts: spec.case.faceParts.filter(here),
    beads: spec.beads.filter(here),
    bearings: bearingsOf(spec, face),
  }
}

function bearingsOf(spec: EngineSpec, face: Face): readonly BearingPlace[] {
  const { saddles, rods, balanceBearings } = spec.case
  switch (face.shows) {
    case 'saddles':
      return saddles.map((saddle) => bearingPlace(spec, face, 'main', saddle, 0, saddle.thrust))
    case 'rods':
      return rods.map((rod) => bearingPlace(spec, face, 'big-end', rod, 0, false))
    case 'balance':
      return balanceBearings.map((bearing) =>
        bearingPlace(spec, face, 'balance', bearing, inMillimetres(bearing.across), false),
      )
    case 'flange':
      return []
    default:
      return face.shows satisfies never
  }
}

function bearingPlace(
  spec: EngineSpec,
  face: Face,
  kind: BearingPlace['kind'],
  bearing: Pick<Saddle, 'id' | 'at' | 'width' | 'diameter'>,
  across: number,
  thrust: boolean,
): BearingPlace {
  return {
    id: bearing.id,
    kind,
    // Seen along the crank, where a bearing stands along it cannot be seen.
    ...(acrossAnEnd(face) ? { x: across, y: 0 } : { x: inMillimetres(bearing.at), y: across }),
    width: inMillimetres(bearing.width),
    diameter: inMillimetres(bearing.diameter),
    thrust,
    split: splitAt(spec, bearing.id),
  }
}

/** An area given by its middle and its size along and across, in mm of the engine's own frame. */
export function areaOf(part: Pick<OilPassage, 'at' | 'size'>): Box {
  const [x, y] = part.at.map(inMillimetres) as [number, number]
  const [width, height] = part.size.map(inMillimetres) as [number, number]
  return { left: x - width / 2, top: y - height / 2, width, height }
}
