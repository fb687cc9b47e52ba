import { describe, expect, it } from 'vitest'
import { Pause } from '../../../renderer/bench/pause.ts'

describe('the pause after a press', () => {
  it('lets the first press through', () => {
    expect(new Pause().passes(0)).toBe(true)
  })

  it('takes what comes within 400 ms for the same press bouncing', () => {
    const pause = new Pause()
    pause.passes(1000)
    expect(pause.passes(1005)).toBe(false)
    expect(pause.passes(1399)).toBe(false)
    expect(pause.passes(1400)).toBe(true)
  })

  it('counts from the press that was let through, so that a bouncing pedal does not lock for ever', () => {
    const pause = new Pause()
    for (let at = 0; at < 400; at += 50) pause.passes(at)
    expect(pause.passes(400)).toBe(true)
  })
})
