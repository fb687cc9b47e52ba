import type { MeasuredKind, PlacedPicture } from '../../core/engine/index.ts'
import { measurePicture, placedPicture, type SmallPicture } from '../../core/layout/index.ts'
import type { HelpTopicId, TermId, Words } from '../../core/words/index.ts'

/** What stands in a topic: a drawing of the demo engine, or the small picture that a step of this kind has. */
export type HelpPicture =
  | {
      readonly kind: 'drawing'
      /** A step of the demo engine. */
      readonly step: string
      /** How many entries the demo build has made in it; null for a build that has nothing yet. */
      readonly entries: number | null
    }
  | { readonly kind: 'measure'; readonly what: MeasuredKind }
  | { readonly kind: 'placed'; readonly what: PlacedPicture }

const drawing = (step: string, entries: number | null = 0): HelpPicture => ({
  kind: 'drawing',
  step,
  entries,
})

export const pictures: { readonly [Topic in HelpTopicId]?: HelpPicture } = {
  'build-window': drawing('fit-mains', 3),
  drawing: drawing('case-run', null),
  editor: drawing('case-run', null),
  marks: drawing('case-marks'),
  shells: drawing('choose-mains'),
  'fit-shells': drawing('fit-mains', 3),
  bead: drawing('bead-plus', null),
  limits: { kind: 'measure', what: 'piston-clearance' },
  rings: { kind: 'measure', what: 'ring-gap' },
  placed: { kind: 'placed', what: 'oil-way' },
  run: drawing('rods-on', 10),
  angle: drawing('rods-on', 17),
  'own-order': drawing('case-run', null),
  'clamp-map': drawing('case-run', null),
}

const measured: { readonly [Term in TermId]?: MeasuredKind } = {
  'ring-gap': 'ring-gap',
  'groove-clearance': 'groove-clearance',
  'side-clearance': 'rod-side',
  'run-out': 'run-out',
  'deck-height': 'deck-height',
}
const placed: { readonly [Term in TermId]?: PlacedPicture } = {
  'oil-way': 'oil-way',
  piston: 'piston-front',
  'rod-cap': 'cap-numbers',
  'thrust-washer': 'washer-grooves',
  'oil-seal': 'seal-lip',
  circlip: 'circlip-seated',
  'piston-pin': 'pin-offset',
  'timing-mark': 'timing-marks',
}

interface NamedPicture {
  readonly picture: SmallPicture
  readonly label: string
}

export function measureOf({ limits }: Words, what: MeasuredKind): NamedPicture {
  return { picture: measurePicture(what), label: limits.pictures[what] }
}
export function placedOf({ placed }: Words, what: PlacedPicture): NamedPicture {
  return { picture: placedPicture(what), label: placed.pictures[what] }
}

/** The small picture of a word of the glossary; null for one that has none. */
export function termPicture(words: Words, term: TermId): NamedPicture | null {
  const [byMeasure, byPlace] = [measured[term], placed[term]]
  if (byMeasure !== undefined) return measureOf(words, byMeasure)
  return byPlace === undefined ? null : placedOf(words, byPlace)
}
