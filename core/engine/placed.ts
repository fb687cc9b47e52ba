import { z } from 'zod'
import { advise } from './advice.ts'
import type { FacePart } from './face-part.ts'
import { idText, sentenceText, shownName, temperatureText } from './text.ts'

/** Steps whose work is done place by place, each ticked by itself. */
export const placedKinds = ['lubricate', 'clean', 'orient', 'align', 'fit-places', 'note'] as const

/** The small pictures of such work, each as the person sees it who does it. */
export const placedPictures = [
  'oil',
  'dry',
  'oil-way',
  'face',
  'plug',
  'piston-front',
  'rod-side',
  'cap-numbers',
  'washer-grooves',
  'seal-lip',
  'two-piece-seal',
  'core-plug',
  'check-valve',
  'strainer',
  'circlip-gap',
  'circlip-seated',
  'pin-offset',
  'piston-heated',
  'timing-marks',
  'chain-link',
  'mark-at-line',
  'wheel-on-key',
  'ring-heated',
  'ring-in-groove',
  'oil-jet',
  'flat-side',
  'drive-slot',
  'crank-pressed',
  'writing',
] as const

/** One place of such a step. */
export const placed = z.strictObject({
  id: idText,
  /** Where, as it is called: `Saddle 3, rear side`. */
  at: shownName,
  /** What is done there, or what is asked. */
  say: sentenceText,
  /** Unless said, the picture that belongs to the kind of step. */
  picture: z.enum(placedPictures).optional(),
  /** The seal, plug, valve or strainer that it is about, of the case's list: it is shown on the drawing, its depth beside the picture. */
  facePart: idText.optional(),
  /** To what the part is warmed first. A person who touches it is warned, and the spec has a caution for it. */
  heatTo: temperatureText.optional(),
})

export const placedList = z.array(placed).min(1, advise('places-none')).max(60)

export type PlacedWork = z.output<typeof placed>
export type PlacedPicture = (typeof placedPictures)[number]
export type PlacedKind = (typeof placedKinds)[number]

const usualPictures: { readonly [Kind in PlacedKind]: PlacedPicture } = {
  lubricate: 'oil',
  clean: 'face',
  orient: 'piston-front',
  align: 'timing-marks',
  'fit-places': 'circlip-seated',
  note: 'writing',
}

/** The small picture of such work, where a place names none. */
export function usualPicture(kind: PlacedKind): PlacedPicture {
  return usualPictures[kind]
}

/** The small picture of the work at such a part, unless a place names another. */
const pictureOfFacePart: { readonly [Kind in FacePart['kind']]: PlacedPicture } = {
  seal: 'seal-lip',
  'two-piece-seal': 'two-piece-seal',
  plug: 'core-plug',
  'check-valve': 'check-valve',
  strainer: 'strainer',
}

/** What is drawn for a place; `part` is the seal, plug, valve or strainer that it is about. */
export function pictureOfPlace(
  kind: PlacedKind,
  { picture }: PlacedWork,
  part: Pick<FacePart, 'kind'> | null = null,
): PlacedPicture {
  return picture ?? (part === null ? usualPictures[kind] : pictureOfFacePart[part.kind])
}
