import { describe, expect, it } from 'vitest'
import { isLostLoad, onPageFault } from '../../../../electron/desktop/window/page-faults.ts'
import type { FaultState } from '../../../../electron/desktop/window/page-faults.ts'

const minuteMs = 60_000

describe('a fault of the page', () => {
  it('loads it again once, then asks the person, and while they are asked does nothing', () => {
    let state: FaultState = { kind: 'well' }
    const acts = [0, 1, 2, 3].map((minute) => {
      const next = onPageFault(state, minute * minuteMs)
      state = next.state
      return next.act
    })
    expect(acts).toEqual(['load-again', 'ask', 'nothing', 'nothing'])
  })

  it('counts from one again after ten minutes without one', () => {
    const first = onPageFault({ kind: 'well' }, 0)
    expect(onPageFault(first.state, 9.9 * minuteMs).act).toBe('ask')
    expect(onPageFault(first.state, 10 * minuteMs).act).toBe('load-again')
  })
})

describe('a load that failed', () => {
  it('is a fault where it leaves the window without its page', () => {
    expect(isLostLoad(-2, true)).toBe(true)
    expect(isLostLoad(-2, false)).toBe(false)
  })

  it('is none where another load took its place (ERR_ABORTED)', () => {
    expect(isLostLoad(-3, true)).toBe(false)
  })
})
