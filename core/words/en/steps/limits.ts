export interface OfPlace {
  readonly name: string
  readonly at: string
}
export interface Bounds {
  /** With their unit; null where there is none on that side. */
  readonly least: string | null
  readonly most: string | null
}

const range = ({ least, most }: Bounds) => {
  if (least === null) return `up to ${most}`
  return most === null ? `from ${least}` : `${least} to ${most}`
}
const verdicts = { new: 'as new', service: 'within the service limit', outside: '! outside its limits' }

/** What is measured against limits: ring gaps, clearances, side play, run-out. */
export const limits = {
  title: ({ name, at }: OfPlace) => `${name}, ${at}`,
  range,
  verdicts,
  newPart: ({ range }: { readonly range: string }) => `New: ${range}`,
  usedPart: ({ range }: { readonly range: string }) => `Service limit: ${range}`,
  reading: ({ unit }: { readonly unit: string }) => `Reading in ${unit}`,
  note: 'Note this reading',
  isOutside: ({ typed }: { readonly typed: string }) =>
    `! ${typed} is outside its limits. Measure again, accept it with a reason, or replace the part.`,
  accept: 'Accept it …',
  whyAccepted: ({ name, at }: OfPlace) => `${name}, ${at}: why is it accepted outside its limits?`,
  acceptIt: 'Accept it so',
  replace: 'Replaced …',
  whatReplaced: ({ name, at }: OfPlace) => `${name}, ${at}: what was replaced or worked on?`,
  replaceIt: 'It is replaced: measure again',
  allDone: ({ readings }: { readonly readings: number }) => `✓ All ${readings} readings are noted.`,
  places: 'All places',
  toMeasure: 'to measure',
  read: (
    facts: OfPlace & {
      readonly typed: string
      readonly verdict: keyof typeof verdicts
      readonly accepted: string | null
    },
  ) =>
    `${facts.name}, ${facts.at}: ${facts.typed}, ${verdicts[facts.verdict]}` +
    `${facts.accepted === null ? '' : `, accepted: ${facts.accepted}`}`,
  replacedFor: ({ text, replaced }: { readonly text: string; readonly replaced: string }) =>
    `${text}; replaced: ${replaced}`,
  again: ({ text }: { readonly text: string }) => `${text} (measured again later)`,
  pictures: {
    'ring-gap': 'The ring alone in its bore, square to it: the feeler goes between its ends.',
    'groove-clearance': 'The ring in its groove: the feeler goes between ring and groove.',
    'piston-clearance': 'The piston in its bore: the gap at the skirt, across the pin.',
    'rod-side': 'The big end on its pin: the feeler goes between rod and web.',
    'run-out': 'The shaft on two vee blocks: the dial gauge reads while it is turned once.',
    'deck-height': 'The piston at its top: from its crown to the face of the block.',
    other: 'The gauge on the part.',
  },
  sheet: { title: 'Measured against limits', limits: 'Limits', reading: 'Reading' },
}
