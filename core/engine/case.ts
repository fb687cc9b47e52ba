import { z } from 'zod'
import { advise } from './advice.ts'
import { facePart } from './face-part.ts'
import { remembered } from './remembered.ts'
import { angleText, extentText, idText, lengthText, placeText, shownName, sizeText } from './text.ts'

/**
 * The case, its saddles, rods and joint faces.
 *
 * The engine's own frame: x along the crank axis, 0 at the nose, growing towards the drive end; y across, 0 on the crank
 * axis. Seen from above with the nose at the left, +y is up on the sheet. Side names are the spec's, because 'left' and
 * 'right' of an engine depend on whom one asks.
 */
export const families = ['split-horizontal', 'split-vertical', 'caps', 'bedplate', 'tunnel'] as const

const bearingPlace = {
  id: idText,
  /** Middle of the bearing along the crank axis. */
  at: lengthText,
  width: sizeText,
  /** Nominal housing bore. */
  diameter: sizeText,
}

/** A half bore that carries a main shell. */
export const saddle = z.strictObject({
  ...bearingPlace,
  /** Whether the thrust washers sit on this saddle. */
  thrust: z.boolean().default(false),
})

/** One rod's big end; two rods of a V share a pin and lie side by side. */
export const rod = z.strictObject({ ...bearingPlace, cylinder: z.int().min(1) })

/** One bearing of a balance shaft, off the crank axis by `across`. */
const balanceBearing = z.strictObject({ ...bearingPlace, across: lengthText })

/** A plane in which parts meet and fasteners sit; what the drawing shows one at a time. */
export const face = z.strictObject({
  id: idText,
  name: shownName,
  /** What lies open to the eye when this face is worked on. */
  shows: z.enum(['saddles', 'rods', 'balance', 'flange']),
  /** How the face lies: in plan, on a side of the case, or across an end. In a side face y is the height. */
  plane: z.enum(['plan', 'plus-side', 'minus-side', 'nose', 'drive']).default('plan'),
  /** From where it is worked on, with the engine as it stands on the bench for that work. */
  workedFrom: z.enum(['above', 'below']),
  /** Corner points in order; grown from the other parameters when absent. */
  outline: z.array(placeText).min(3, advise('outline-corners')).max(400).optional(),
  /** What lies between this face and what is put on it, along its edge. */
  gasket: z
    .strictObject({
      /** The part of the list that it is, new each time. */
      part: idText.optional(),
      /** How wide it is from the edge inwards. */
      width: sizeText,
    })
    .optional(),
})

export const dowel = z.strictObject({ id: idText, face: idText, at: placeText, diameter: sizeText })

/** A hole that oil runs through; sealant must stay out of it. */
const oilPassage = z.strictObject({
  id: idText,
  name: shownName,
  face: idText,
  at: placeText,
  /** Along and across. */
  size: extentText,
})

export const engineCase = z.strictObject({
  family: z.enum(families),
  cylinders: z.int().min(1, advise('cylinders-none')).max(24),
  /** 0 ° for cylinders in line, 180 ° for a flat engine. */
  bankAngle: angleText,
  bore: sizeText,
  /** Between neighbouring bores of one bank. */
  pitch: sizeText,
  /** Middle of the first bore along the crank axis. */
  firstBoreAt: lengthText,
  /** How far the second bank's bores lie behind the first's. */
  bankOffset: lengthText.optional(),
  /** What the shop calls the two sides of this engine, for directions in words. */
  sides: z.strictObject({ plus: shownName, minus: shownName }),
  /** None in what is no crankcase; the audit asks for them where a crank runs (`holdsCrank`). */
  saddles: remembered(z.array(saddle).max(40)),
  rods: remembered(z.array(rod).max(40)).default([]),
  balanceBearings: remembered(z.array(balanceBearing).max(40)).default([]),
  faces: remembered(z.array(remembered(face)).min(1, advise('faces-none')).max(20)),
  dowels: remembered(z.array(remembered(dowel)).max(100)).default([]),
  oilPassages: remembered(z.array(remembered(oilPassage)).max(100)).default([]),
  /** Seals, plugs, valves and strainers, each in its face. */
  faceParts: remembered(z.array(remembered(facePart)).max(60)).default([]),
})

/** Whether a crank runs in it: what the audit demands of crankcases alone it does not demand of other assemblies. */
export function holdsCrank({ faces, rods }: Pick<EngineCase, 'faces' | 'rods'>): boolean {
  return rods.length > 0 || faces.some(({ shows }) => shows === 'saddles' || shows === 'rods')
}

export type EngineCase = z.output<typeof engineCase>
export type Saddle = z.output<typeof saddle>
export type Rod = z.output<typeof rod>
export type Face = z.output<typeof face>
export type Dowel = z.output<typeof dowel>
export type OilPassage = z.output<typeof oilPassage>
