import { describe, expect, it } from 'vitest'
import { GaugeBurst } from '../../../renderer/steps/shells/gauge-burst.ts'

/** A gauge that sends `62.004` with so many milliseconds from key to key. */
function sent(everyMs: number): GaugeBurst {
  const burst = new GaugeBurst()
  for (let key = 0; key < 6; key++) burst.key(1000 + key * everyMs)
  return burst
}

describe('a gauge that types', () => {
  it('is known by characters 5 to 10 ms apart that an Enter ends', () => {
    expect(sent(5).endsAt(1000 + 6 * 5)).toBe(true)
    expect(sent(10).endsAt(1000 + 6 * 10)).toBe(true)
  })

  it('is not taken for hands, however quick', () => {
    expect(sent(90).endsAt(1000 + 6 * 90)).toBe(false)
    expect(sent(90).isBurst).toBe(false)
  })

  it('has sent half a reading when no Enter came', () => {
    const burst = sent(5)
    expect(burst.isBurst).toBe(true)
    expect(burst.endsAt(5000)).toBe(false)
  })

  it('begins anew after each Enter', () => {
    const burst = sent(5)
    burst.endsAt(1030)
    expect(burst.endsAt(1031)).toBe(false)
  })
})
