import { done, type Outcome } from '../problem/index.ts'
import { inMillimetres, millimetres } from '../quantity/index.ts'
import { headWidth, type FastenerGroup } from '../engine/index.ts'
import { bearingFace, hexBearingFace, socketBearingFace, type BearingFace } from './bearing-face.ts'
import { boltResilience, elasticModuliMpa } from './bolt-resilience.ts'
import { prevailingUpTo, runsFree, type PrevailingRange } from './clamping-torque.ts'
import { clampedResilience, type Layer } from './clamped-resilience.ts'
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

/** The friction classes of VDI 2230 part 1, table A5, and their middles. Class E has no upper end and no place in an engine. */
const frictionOfClass = {
  A: { least: 0.04, usual: 0.07, most: 0.1 },
  B: { least: 0.08, usual: 0.12, most: 0.16 },
  C: { least: 0.14, usual: 0.19, most: 0.24 },
  D: { least: 0.2, usual: 0.275, most: 0.35 },
} as const satisfies Record<string, FrictionRange>

/** Oiled threads are of class B (oiled, waxed), dry ones of class C (as delivered). Sealant and thread-lock may be either. */
export const frictionOf: Readonly<Record<ThreadState, FrictionRange>> = {
  oiled: frictionOfClass.B,
  dry: frictionOfClass.C,
  sealant: plausibleFriction,
  'thread-lock': plausibleFriction,
}

/** The fasteners of a group with what they clamp, as far as a spec says. */
export interface FastenedJoint {
  readonly thread: Thread
  readonly strength: Strength
  readonly bearing: BearingFace
  readonly threadState: ThreadState
  readonly friction: FrictionRange
  /** `runsFree` also where what it takes is measured and goes on top of the spec's torque. */
  readonly prevailing: PrevailingRange
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
  const thread = threadOf(group.thread.diameter, group.thread.pitch, group.thread.system)
  if (!thread.ok) return thread
  const strength = strengthOf(group.propertyClass, thread.value)
  if (!strength.ok) return strength
  const bearing = bearingOf(group, thread.value)
  if (!bearing.ok) return bearing

  const { threadState, frictionClass } = group
  return done({
    thread: thread.value,
    strength: strength.value,
    bearing: bearing.value,
    threadState,
    friction: frictionClass === undefined ? frictionOf[threadState] : frictionOfClass[frictionClass],
    prevailing: prevailingOf(group),
    boltMmPerN: boltOf(group, thread.value, freeThreadOf(group, thread.value)),
    clampedMmPerN: clampedResilience(bearing.value, layersOf(group), group.into),
  })
}

function prevailingOf({ prevailing, torqueIncludesPrevailing }: FastenerGroup): PrevailingRange {
  return prevailing === undefined || torqueIncludesPrevailing === false
    ? runsFree
    : prevailingUpTo(prevailing)
}

/** δ_S of the same fastener when it has thread all along its grip: the softest that a spec leaves open. */
export function softestBoltMmPerN(group: FastenerGroup, thread: Thread): number {
  return boltOf(group, thread, inMillimetres(group.grip))
}

function boltOf(group: FastenerGroup, thread: Thread, freeThreadMm: number): number {
  const { head, grip, clamped } = group
  return boltResilience({
    thread,
    head,
    shank: millimetres(inMillimetres(grip) - freeThreadMm),
    shankDiameter: group.shank,
    freeThread: millimetres(freeThreadMm),
    anchor: group.into,
    modulusMpa: elasticModuliMpa.steel,
    anchorModulusMpa: elasticModuliMpa[group.into === 'nut' ? 'steel' : clamped],
  })
}

function bearingOf(group: FastenerGroup, thread: Thread): Outcome<BearingFace> {
  const { headFace, head } = group
  if (headFace !== undefined) return bearingFace(headFace.outer, headFace.hole)
  const width = headWidth(group)
  return head === 'socket' ? socketBearingFace(thread, width) : hexBearingFace(thread, width)
}

/** The clamped parts from the head on: those of the spec, or one of the material that the thread is in. */
function layersOf({ layers, grip, clamped }: FastenerGroup): readonly Layer[] {
  return (layers ?? [{ thickness: grip, material: clamped }]).map(({ thickness, material }) => ({
    thickness,
    modulusMpa: elasticModuliMpa[material],
  }))
}

/** A nut is 0.8·d high, and the bolt looks out of it by two pitches (ISO 4032, ISO 4014; common practice). */
const nutHeight = 0.8
const pitchesBeyond = 2

/**
 * The thread within the grip, in mm. A bolt of ISO 4014 has thread for 2·d + 6 mm, 12 mm above 125 mm and 25
 * mm above 200 mm of its own length (ISO 888); one diameter of it is engaged, or what a nut takes. A short bolt has
 * thread all along.
 */
function freeThreadOf(group: FastenerGroup, { diameter, pitch }: Thread): number {
  const d = inMillimetres(diameter)
  const grip = inMillimetres(group.grip)
  const engaged = group.into === 'nut' ? nutHeight * d + pitchesBeyond * inMillimetres(pitch) : d
  const length = grip + engaged
  const more = length <= 125 ? 6 : length <= 200 ? 12 : 25
  return Math.min(grip, Math.max(0, 2 * d + more - engaged))
}
