import { done, refused, type Outcome } from '../problem/index.ts'
import { inMillimetres, newtons, type Force } from '../quantity/index.ts'
import type { Thread } from './thread.ts'

/** The property classes of steel screws, as marked on the head. */
export const propertyClasses = ['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9'] as const
export type PropertyClass = (typeof propertyClasses)[number]

/** The least that a screw of a class must bear, in MPa (N/mm²). */
export type Strength = {
  /** R_m. */
  readonly tensileMpa: number
  /** R_eL of classes 4.6 and 5.6, R_pf of 4.8, 5.8 and 6.8, R_p0.2 of the rest. */
  readonly yieldMpa: number
  /** S_p, borne without any lasting stretch. */
  readonly proofMpa: number
}

function strength(tensileMpa: number, yieldMpa: number, proofMpa: number): Strength {
  return { tensileMpa, yieldMpa, proofMpa }
}

/** ISO 898-1:2013, table 3, for diameters up to and including 16 mm. */
const strengths: Readonly<Record<PropertyClass, Strength>> = {
  '4.6': strength(400, 240, 225),
  '4.8': strength(420, 340, 310),
  '5.6': strength(500, 300, 280),
  '5.8': strength(520, 420, 380),
  '6.8': strength(600, 480, 440),
  '8.8': strength(800, 640, 580),
  '9.8': strength(900, 720, 650),
  '10.9': strength(1040, 940, 830),
  '12.9': strength(1220, 1100, 970),
}

const thickMm = 16
/** Where the same table differs above 16 mm: 8.8 is harder there, and 9.8 is not made. */
const thickStrengths = { ...strengths, '8.8': strength(830, 660, 600), '9.8': undefined }

/** The strength that a property class promises at this thread. Refuses `property-class-unknown`, naming those there are. */
export function strengthOf(propertyClass: string, thread: Thread): Outcome<Strength> {
  const diameterMm = inMillimetres(thread.diameter)
  const table = diameterMm > thickMm ? thickStrengths : strengths
  const known = propertyClasses.filter((each) => table[each] !== undefined)
  const found = known.find((each) => each === propertyClass)
  const promised = found && table[found]
  return promised ? done(promised) : refused('property-class-unknown', { propertyClass, diameterMm, known })
}

/** The tension that the screw bears without any lasting stretch: S_p·A_s (ISO 898-1, 9.6). */
export function proofLoad(thread: Thread, { proofMpa }: Strength): Force {
  return newtons(proofMpa * thread.stressAreaMm2)
}
