import { asItShouldBe } from './work-and-hands.ts'

/** One bolt of steel: what was done to it, whatever the record says. */
export interface Bolt {
  /** What clamps of it. */
  torque: number
  /** How much longer it is than it was, in mm, and how much each N·m makes it. */
  longer: number
  mmPerTorque: number
  /** Whether it was longer than its upper limit: no loosening undoes that. */
  drawn: boolean
  /** By pass, in degrees, since it was last loose. */
  readonly turned: Map<number, number>
  /** Whether it went past the most of some pass and was not put right since. */
  past: boolean
  tightened: boolean
  /** What its nut takes to run down, in N·m: less once it was used. */
  runsDownAt: number
  /** Its nut touches: what it takes to run down can no longer be read. */
  touches: boolean
}

export const newBolt = (runsDownAt: number, mmPerTorque = asItShouldBe): Bolt => ({
  ...{ torque: 0, longer: 0, mmPerTorque, drawn: false },
  ...{ turned: new Map(), past: false, tightened: false, runsDownAt, touches: false },
})

/** The same bolt, loose: its nut turns more easily than before. */
export function loose(bolt: Bolt): Bolt {
  const runsDownAt = bolt.touches ? 0.7 * bolt.runsDownAt : bolt.runsDownAt
  return { ...bolt, torque: 0, longer: 0, turned: new Map(), runsDownAt, touches: false }
}
