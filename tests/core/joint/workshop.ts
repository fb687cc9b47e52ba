import { bearingFace, threadOf, type BearingFace, type Thread } from '../../../core/joint/index.ts'
import { sentenceOf, type Outcome } from '../../../core/problem/index.ts'
import { millimetres } from '../../../core/quantity/index.ts'

/** The value of an outcome that a test knows to be good. */
export function valueOf<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(sentenceOf(outcome.problem))
  return outcome.value
}

export function thread(diameterMm: number, pitchMm: number): Thread {
  return valueOf(threadOf(millimetres(diameterMm), millimetres(pitchMm)))
}

export function face(outerMm: number, holeMm: number): BearingFace {
  return valueOf(bearingFace(millimetres(outerMm), millimetres(holeMm)))
}

/** The hexagon bolts of these tests, with d_w of ISO 4014 and the medium holes of ISO 273. */
export const m6 = { thread: thread(6, 1), bearing: face(8.88, 6.6) }
export const m8 = { thread: thread(8, 1.25), bearing: face(11.63, 9) }
export const m10 = { thread: thread(10, 1.5), bearing: face(14.63, 11) }
