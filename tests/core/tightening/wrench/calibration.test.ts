import { describe, expect, it } from 'vitest'
import { calibrationWarning } from '../../../../core/tightening/index.ts'
import { medium } from '../wrench-rack.ts'
import { lineOf } from '../../../problem-line.ts'

function remarkOn(calibration: object | undefined, today: string): string | null {
  const warning = calibrationWarning(medium({ calibration }), today)
  return warning && lineOf(warning)
}

describe('the calibration of a wrench, ISO 6789: 12 months or 5000 cycles, whichever comes first', () => {
  const on = '2025-03-02'

  it('holds to the same day a year on and to the five thousandth cycle', () => {
    expect(remarkOn({ on, cycles: 5000 }, '2026-03-02')).toBeNull()
  })

  it('is due the day after', () => {
    expect(remarkOn({ on, cycles: 10 }, '2026-03-03')).toBe(
      'calibration-overdue: name=Medium click wrench, on=2025-03-02, cycles=10, due=months',
    )
  })

  it('is due with the next cycle', () => {
    expect(remarkOn({ on, cycles: 5001 }, '2025-04-01')).toContain(
      'calibration-overdue: name=Medium click wrench, on=2025-03-02, cycles=5001, due=cycles',
    )
  })

  it('of a leap day holds to the end of February', () => {
    expect(remarkOn({ on: '2024-02-29', cycles: 0 }, '2025-02-28')).toBeNull()
    expect(remarkOn({ on: '2024-02-29', cycles: 0 }, '2025-03-01')).toContain('calibration-overdue')
  })

  it('is asked for where nothing is noted', () => {
    expect(remarkOn(undefined, '2026-03-02')).toContain('calibration-unknown: name=Medium click wrench')
  })

  it('may be of this very day', () => {
    expect(remarkOn({ on, cycles: 0 }, on)).toBeNull()
  })

  it('cannot lie in the future', () => {
    expect(remarkOn({ on, cycles: 0 }, '2025-03-01')).toContain(
      'calibration-in-future: name=Medium click wrench, on=2025-03-02',
    )
  })
})
