import { done, refused, type Outcome } from '../problem/index.ts'
import { inMillimetres, newtons, type Force } from '../quantity/index.ts'
import type { Thread } from './thread.ts'

/**
 * The property classes of steel screws, as marked on the head; grades of inch screws, which are marked by strokes; and inch
 * socket screws, which carry no mark of their strength and are known by their standard.
 */
export const propertyClasses = [
  ...(['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9'] as const),
  ...(['SAE 2', 'SAE 5', 'SAE 8'] as const),
  ...(['A574'] as const),
]
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

/** In ksi, as SAE J429 and ASTM A574 have them: 1 psi = 0.006 894 757 MPa (NIST SP 811, appendix B.8). */
function inKsi(tensile: number, yieldAt: number, proof: number): Strength {
  const mpaInKsi = 6.894757
  return strength(tensile * mpaInKsi, yieldAt * mpaInKsi, proof * mpaInKsi)
}

/**
 * ISO 898-1:2013, table 3, for diameters up to and including 16 mm; SAE J429, table 1, for up to 3/4 in; ASTM A574, mechanical
 * requirements, for up to 1/2 in.
 */
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
  'SAE 2': inKsi(74, 57, 55),
  'SAE 5': inKsi(120, 92, 85),
  'SAE 8': inKsi(150, 130, 120),
  A574: inKsi(180, 153, 140),
}

/** Above so many mm a class is another one, where the tables have it so; null where it is not made. */
const thicker: Readonly<
  Partial<Record<PropertyClass, { readonly aboveMm: number; readonly strength: Strength | null }>>
> = {
  '8.8': { aboveMm: 16, strength: strength(830, 660, 600) },
  '9.8': { aboveMm: 16, strength: null },
  'SAE 2': { aboveMm: 19.05, strength: inKsi(60, 36, 33) },
  'SAE 5': { aboveMm: 25.4, strength: inKsi(105, 81, 74) },
  A574: { aboveMm: 12.7, strength: inKsi(170, 153, 135) },
}

/** Which standard a class or grade is of. */
export function standardOf(propertyClass: string): 'iso' | 'sae' | 'astm' {
  if (propertyClass === 'A574') return 'astm'
  return propertyClass.startsWith('SAE') ? 'sae' : 'iso'
}

/** The strength that a property class promises at this thread. Refuses `property-class-unknown`, naming those there are. */
export function strengthOf(propertyClass: string, thread: Thread): Outcome<Strength> {
  const diameterMm = inMillimetres(thread.diameter)
  const at = (name: PropertyClass): Strength | null => {
    const other = thicker[name]
    return other !== undefined && diameterMm > other.aboveMm ? other.strength : strengths[name]
  }
  const known = propertyClasses.filter((each) => at(each) !== null)
  const found = known.find((each) => each === propertyClass)
  const promised = found === undefined ? null : at(found)
  return promised === null
    ? refused('property-class-unknown', { propertyClass, diameterMm, known })
    : done(promised)
}

/** The tension that the screw bears without any lasting stretch: S_p·A_s (ISO 898-1, 9.6). */
export function proofLoad(thread: Thread, { proofMpa }: Strength): Force {
  return newtons(proofMpa * thread.stressAreaMm2)
}
