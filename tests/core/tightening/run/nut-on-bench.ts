import { expect } from 'vitest'
import { prevailingIn, runningBefore, type PlannedPull } from '../../../../core/tightening/index.ts'
import { pull, type Bench } from '../bench.ts'
import type { Bolt } from './steel-bolt.ts'
import { mostToRunDown, type Hand } from './work-and-hands.ts'

/** How often each thing was come to: a property that reaches nothing shows nothing. */
export const reached = {
  ...{ exact: 0, done: 0, replaced: 0, begunAgain: 0, turnedOn: 0, readAgain: 0 },
  ...{ exactStretch: 0, tightenedOn: 0, tooLong: 0, odd: 0, lengthDoubted: 0, takenBackStretch: 0 },
  ...{ torque: 0, angle: 0, recheck: 0, inAll: 0, adapter: 0 },
  ...{ inSteps: 0, waited: 0, waitRefused: 0, waitShortened: 0 },
  ...{ included: 0, 'not-said': 0, 'on-top': 0, onTopOfStretch: 0 },
  ...{ turned: 0, capsLoosened: 0 },
  ...{ runDown: 0, runDownSeated: 0, runDownAgain: 0, runsTooHard: 0, knownWhileItTouches: 0 },
}

/**
 * Runs the nut down; `onTop` is what the program goes by, read now or before, `uncounted` what the spec's torque does not have in it. It may ask only while the nut
 * does not touch, and one that takes too much is undone and oiled before it is read again.
 */
export function runsDown(bench: Bench, bolt: Bolt, planned: PlannedPull, { typo }: Hand) {
  const pass = bench.procedure.passes[planned.pass]!
  const isOnTop = prevailingIn(bench.spec, pass, planned.fastener)?.counts === 'on-top'
  const before = runningBefore(bench.procedure, bench.run, planned.fastener)
  const { touches } = bolt
  // By the spec, whatever the program makes of it.
  const group = bench.spec.fastenerGroups.find(({ id }) => id === 'rod-bolts')
  const uncounted = () => (group?.torqueIncludesPrevailing === false ? bolt.runsDownAt : 0)
  bolt.touches = true
  if (!isOnTop) return { onTop: 0, uncounted: uncounted(), said: {} }
  if (before !== null) {
    reached.knownWhileItTouches += 1
    expect(before.value, 'what goes on top').toBeCloseTo(bolt.runsDownAt, 9)
    return { onTop: before.value, uncounted: uncounted(), said: {} }
  }
  expect(touches, 'asked what it takes to run down while it touches').toBe(false)
  expect(bench.refuses(pull(planned, null))).toContain('before the fastener touches')
  const runningReading = (torque: number) => ({ running: { typed: String(torque), unit: 'N·m' as const } })
  const slipped = typo ? 10 * bolt.runsDownAt : bolt.runsDownAt
  if (slipped > mostToRunDown) {
    expect(bench.refuses({ ...pull(planned, null), ...runningReading(slipped) })).toContain('undo it')
    if (bolt.runsDownAt > mostToRunDown) {
      bolt.runsDownAt = 0.8 * mostToRunDown
      reached.runsTooHard += 1
    }
  }
  reached[pass.kind === 'seat' ? 'runDownSeated' : 'runDown'] += 1
  if (bolt.tightened) reached.runDownAgain += 1
  return { onTop: bolt.runsDownAt, uncounted: uncounted(), said: runningReading(bolt.runsDownAt) }
}
