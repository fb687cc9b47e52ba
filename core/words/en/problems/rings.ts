import type { AmountText } from '../../amount.ts'
import type { OfStep } from './build.ts'

/** Angles between two places on a piston, and how much there must be. */
export interface Apart {
  readonly apart: AmountText
  readonly least: AmountText
}

export interface OfPiston {
  readonly piston: string
}
export interface OfReading {
  readonly name: string
  readonly typed: string
  readonly is: AmountText
}

const badPlaces = { 'over-pin': 'the end of the pin', 'on-thrust': 'the middle of a thrust side' }

/** Sentences about what is wrong in a spec with rings and pistons. */
export const auditRingWords = {
  'piston-without-cylinder': (facts: { piston: string; cylinder: number; cylinders: number }) =>
    `${facts.piston} belongs to cylinder ${facts.cylinder}, and the engine has ${facts.cylinders}. Correct one of the two.`,
  'cylinder-with-two-ring-sets': ({ cylinder }: { cylinder: number }) =>
    `Cylinder ${cylinder} has rings twice. Take it out of one of the sets.`,
  'cylinder-without-rings': ({ cylinder }: { cylinder: number }) =>
    `Cylinder ${cylinder} has no rings, and others have. Add its piston to the set of its rings.`,
  'rings-out-of-order': ({ first, second }: { first: string; second: string }) =>
    `“${second}” is listed after “${first}” and lies in a groove above it. List the rings from the crown down.`,
  'groove-not-whole': ({ groove }: { groove: number }) =>
    `Groove ${groove} does not have one ring, or two rails with an expander between them. Correct what lies in it.`,
  'ring-without-gap': ({ ring }: { ring: string }) =>
    `“${ring}” has no end gap. Give its limits, or the rule by the bore.`,
  'ring-gaps-in-line': ({ first, second, apart, least }: Apart & { first: string; second: string }) =>
    `The gaps of “${first}” and “${second}” stand ${apart} apart, and ${least} at least is wanted: gas would blow through both. ` +
    'Correct one of the angles.',
  'ring-gap-over-pin': ({ ring, apart, least }: Apart & { ring: string }) =>
    `The gap of “${ring}” stands ${apart} from the end of the pin, and ${least} at least is wanted. Correct its angle.`,
  'ring-gap-on-thrust': ({ ring, apart, least }: Apart & { ring: string }) =>
    `The gap of “${ring}” stands ${apart} from the middle of a thrust side, and ${least} at least is wanted. Correct its angle.`,
  'rings-never-measured': ({ rings }: { rings: string }) =>
    `“${rings}”: no step measures the end gaps. Add one before the rings go on.`,
  'hot-part-without-caution': (facts: { step: string; place: string; temperature: AmountText }) =>
    `“${facts.step}”: ${facts.place} is warmed to ${facts.temperature}, which burns the skin, and the step does not warn of it. ` +
    'Add “hot-part” to its dangers.',
}

/** Sentences about rings in a build. */
export const ringWords = {
  'ring-gap-zero': ({ place }: { readonly place: string }) =>
    `${place}: a ring gap of 0 is no reading, because the ends of a ring must never touch. Measure with the thinnest feeler; where ` +
    'not even that goes in, file the ring or fit another one, and measure again.',
  'ring-gap-other-unit': (
    facts: OfReading & { readonly meant: AmountText; readonly inMillimetres: AmountText },
  ) =>
    `${facts.name}: ${facts.typed} is ${facts.is}, far from its limits, and ${facts.meant} (${facts.inMillimetres}) would be within ` +
    'them. Type it with the unit of your gauge; if it is as you typed it, say so.',
  'ring-gap-impossible': (facts: OfReading & { readonly bore: AmountText; readonly widest: AmountText }) =>
    `${facts.name}: ${facts.typed} is ${facts.is}, and no ring in a bore of ${facts.bore} gapes by more than ${facts.widest}. Read the ` +
    'gauge and its unit again; if it is as you typed it, say so.',
  'ring-too-tight': ({ name, place }: { readonly name: string; readonly place: string }) =>
    `${name}, ${place}: a gap that is too narrow is never accepted, because the ends would meet when the ring is hot. File the ends, and ` +
    'measure again.',
  'piston-unknown': ({ step, cylinder }: OfStep & { readonly cylinder: number }) =>
    `“${step}” has no piston for cylinder ${cylinder}. Choose one of its pistons.`,
  'ring-unknown': ({ piston, ring }: OfPiston & { readonly ring: string }) =>
    `${piston} has no ring “${ring}”. Choose one of its rings.`,
  'rings-fitted-already': ({ piston }: OfPiston) =>
    `The rings of ${piston} are on already. If that was a mistake, undo it.`,
  'rings-not-fitted': ({ piston }: OfPiston) =>
    `The rings of ${piston} are not on, so there is nothing to undo.`,
  'angle-past-turn': ({ ring }: { readonly ring: string }) =>
    `${ring}: an angle on the piston is 0° up to 360°, clockwise from its nose side. Type where the gap stands.`,
  'gaps-lie-in-line': (facts: OfPiston & Apart & { readonly first: string; readonly second: string }) =>
    `${facts.piston}: the gaps of ${facts.first} and ${facts.second} stand ${facts.apart} apart, and ${facts.least} at least is wanted. ` +
    'Turn one of the rings.',
  'gap-badly-placed': (
    facts: OfPiston & Apart & { readonly ring: string; readonly where: keyof typeof badPlaces },
  ) =>
    `${facts.piston}: the gap of ${facts.ring} stands ${facts.apart} from ${badPlaces[facts.where]}, and ${facts.least} at least is wanted. ` +
    'Turn the ring.',
}
