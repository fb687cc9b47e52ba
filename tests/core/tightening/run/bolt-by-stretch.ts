import { expect } from 'vitest'
import type { PlannedPull } from '../../../../core/tightening/index.ts'
import { pull, type Bench } from '../bench.ts'
import { reached, runsDown } from './nut-on-bench.ts'
import type { Bolt } from './steel-bolt.ts'
import { free, stretch, withAdapter, type Hand } from './work-and-hands.ts'

/** The length before, with a slip of the decimal point now and then: that is asked about, and measured again. */
export function measuresFree(bench: Bench, planned: PlannedPull, { typo }: Hand): void {
  const length = pull(planned, [String(free), 'mm'])
  if (typo) {
    expect(bench.refuses(pull(planned, [String(free / 10), 'mm']))).toContain('Look at the decimal point')
    reached.lengthDoubted += 1
  }
  bench.does(length)
}

/** Tightens on from where it stands until it is so much longer, a steady hand never past the most torque; gives what a pull showed in truth where something else was typed. */
export function stretches(
  bench: Bench,
  bolt: Bolt,
  planned: PlannedPull,
  by: Hand,
): { readonly pull: number; readonly truth: string } | null {
  const middle = (stretch.least + stretch.most) / 2
  const wanted = (middle * (1 + by.off)) / bolt.mmPerTorque
  const ran = runsDown(bench, bolt, planned, by)
  // Where the torque has it in it, what runs the nut down leaves less to clamp with.
  const inIt = bolt.runsDownAt - ran.uncounted
  const most = stretch.torque.most - inIt
  const torque = Math.max(bolt.torque, by.off === 0 ? Math.min(wanted, most) : wanted)
  bolt.torque = torque
  bolt.longer = torque * bolt.mmPerTorque
  bolt.tightened = true
  if (by.off === 0 && !bolt.past) {
    reached.exactStretch += 1
    expect(bolt.longer).toBeLessThanOrEqual(stretch.most + 1e-9)
    expect(torque).toBeLessThanOrEqual(most + 1e-9)
    if (ran.onTop > 0) reached.onTopOfStretch += 1
  }
  if (bolt.longer > stretch.most + 1e-9) {
    bolt.drawn = true
    reached.tooLong += 1
  } else if (torque >= most || torque < stretch.torque.least - inIt) reached.odd += 1
  if (bolt.drawn || torque > most + 1e-9) bolt.past = true
  const read = (free + bolt.longer).toFixed(3)
  // Half a millimetre too much: a line of the micrometer's sleeve that was not seen.
  const typed = by.typo ? (free + bolt.longer + 0.5).toFixed(3) : read
  const share = by.adapter ? 3 / 4 : 1
  bench.does({
    ...pull(planned, [typed, 'mm'], { torque: [String((torque + bolt.runsDownAt) * share), 'N·m'] }),
    ...ran.said,
    ...(share !== 1 && { held: withAdapter }),
  })
  const { length: number } = bench.run!.pulls
  if (by.typo) return { pull: number, truth: read }
  if (by.unsure) {
    bench.does({ type: 'take-back', pull: number, reason: 'Not sure' })
    reached.takenBackStretch += 1
  }
  return null
}
