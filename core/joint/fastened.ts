import { done, type Outcome } from '../problem/index.ts'
import { inMillimetres, millimetres, type Length } from '../quantity/index.ts'
import type { FastenerGroup } from '../engine/index.ts'
import { bearingFace, hexBearingFace, type BearingFace } from './bearing-face.ts'
import { boltResilience, elasticModuliMpa } from './bolt-resilience.ts'
import { clampedResilience } from './clamped-resilience.ts'
import { strengthOf, type Strength } from './property-class.ts'
import { threadOf, type Thread } from './thread.ts'

/** A coefficient of friction, thread and head alike, as far as it is known. */
export interface FrictionRange {
  readonly least: number
  readonly usual: number
  readonly most: number
}

export type ThreadState = FastenerGroup['threadState']

/**
 * The friction of threads of which no more is known, head alike, from VDI 2230 part 1, table A5: class B (0.08 to 0.16,
 * oiled or waxed) and class C (0.14 to 0.24, as delivered, dry) together. The usual value is the middle of what both classes
 * cover.
 */
export const plausibleFriction = { least: 0.08, usual: 0.15, most: 0.24 } as const

/**
 * Classes B (oiled, waxed) and C (dry, as delivered) of VDI 2230 part 1, table A5, and their middles. Sealant
 * and thread-lock are neither, and may be either.
 */
export const frictionOf: Readonly<Record<ThreadState, FrictionRange>> = {
  oiled: { least: 0.08, usual: 0.12, most: 0.16 },
  dry: { least: 0.14, usual: 0.19, most: 0.24 },
  sealant: plausibleFriction,
  'thread-lock': plausibleFriction,
}

/** The fasteners of a group with what they clamp, as far as a spec tells. */
export interface FastenedJoint {
  readonly thread: Thread
  readonly strength: Strength
  readonly bearing: BearingFace
  readonly threadState: ThreadState
  readonly friction: FrictionRange
  /** δ_S and δ_P, in mm/N. */
  readonly boltMmPerN: number
  readonly clampedMmPerN: number
}

/**
 * What the fasteners of a group are to the calculation. What a spec does not say is taken as usual: a bolt of
 * ISO 4014 of which one diameter is engaged, into a tapped hole in the material that is clamped, wide parts
 * under the head.
 *
 * Refuses what `threadOf`, `strengthOf` and `bearingFace` refuse.
 */
export function fastenedJoint(group: FastenerGroup): Outcome<FastenedJoint> {
  const thread = threadOf(group.thread.diameter, group.thread.pitch)
  if (!thread.ok) return thread
  const strength = strengthOf(group.propertyClass, thread.value)
  if (!strength.ok) return strength
  const { headFace, acrossFlats, grip, clamped, threadState } = group
  const bearing = headFace
    ? bearingFace(headFace.outer, headFace.hole)
    : hexBearingFace(thread.value, acrossFlats)
  if (!bearing.ok) return bearing

  const freeThread = freeThreadOf(thread.value, grip)
  const clampedMpa = elasticModuliMpa[clamped]
  const boltMmPerN = boltResilience({
    thread: thread.value,
    shank: millimetres(inMillimetres(grip) - freeThread),
    freeThread: millimetres(freeThread),
    anchor: 'tapped hole',
    modulusMpa: elasticModuliMpa.steel,
    anchorModulusMpa: clampedMpa,
  })
  const layers = [{ thickness: grip, modulusMpa: clampedMpa }]
  return done({
    thread: thread.value,
    strength: strength.value,
    bearing: bearing.value,
    threadState,
    friction: frictionOf[threadState],
    boltMmPerN,
    clampedMmPerN: clampedResilience(bearing.value, layers, 'tapped hole'),
  })
}

/**
 * The thread within the grip, in mm. A bolt of ISO 4014 has thread for 2·d + 6 mm, 12 mm above 125 mm and 25
 * mm above 200 mm of its own length (ISO 888); one diameter of it is engaged. A short bolt has thread all
 * along.
 */
function freeThreadOf({ diameter }: Thread, grip: Length): number {
  const d = inMillimetres(diameter)
  const length = inMillimetres(grip) + d
  const more = length <= 125 ? 6 : length <= 200 ? 12 : 25
  return Math.min(inMillimetres(grip), d + more)
}
