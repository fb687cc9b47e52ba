import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../../core/problem/index.ts'
import { calibrationWarning } from '../../../../core/tightening/index.ts'
import { medium } from '../wrench-rack.ts'

function remarkOn(calibration: object | undefined, today: string): string | null {
  const warning = calibrationWarning(medium({ calibration }), today)
  return warning && sentenceOf(warning)
}

describe('the calibration of a wrench, ISO 6789: 12 months or 5000 cycles, whichever comes first', () => {
  const on = '2025-03-02'

  it('holds to the same day a year on and to the five thousandth cycle', () => {
    expect(remarkOn({ on, cycles: 5000 }, '2026-03-02')).toBeNull()
  })

  it('is due the day after', () => {
    expect(remarkOn({ on, cycles: 10 }, '2026-03-03')).toBe(
      'Medium click wrench is due for calibration: the last was on 2\u00a0Mar\u00a02025, more than 12 months ago ' +
        '(ISO 6789: 12 months or 5000 cycles, whichever comes first). Have it calibrated, or use another.',
    )
  })

  it('is due with the next cycle', () => {
    expect(remarkOn({ on, cycles: 5001 }, '2025-04-01')).toContain(
      '5001 cycles since 2\u00a0Mar\u00a02025, and 5000 are the most',
    )
  })

  it('of a leap day holds to the end of February', () => {
    expect(remarkOn({ on: '2024-02-29', cycles: 0 }, '2025-02-28')).toBeNull()
    expect(remarkOn({ on: '2024-02-29', cycles: 0 }, '2025-03-01')).toContain('due for calibration')
  })

  it('is asked for where nothing is noted', () => {
    expect(remarkOn(undefined, '2026-03-02')).toContain('No calibration of')
  })

  it('may be of this very day', () => {
    expect(remarkOn({ on, cycles: 0 }, on)).toBeNull()
  })

  it('cannot lie in the future', () => {
    expect(remarkOn({ on, cycles: 0 }, '2025-03-01')).toContain('which is still to come')
  })
})
