import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { GaugeBurst, GaugeKeys } from '../../../renderer/instruments/gauge-burst.ts'

/** A gauge that sends `62.004` with so many milliseconds from key to key. */
function sent(everyMs: number): GaugeBurst {
  const burst = new GaugeBurst()
  ;[...'62.004'].forEach((character, place) => burst.key(character, 1000 + place * everyMs))
  return burst
}

describe('a gauge that types', () => {
  it('is known by characters 5 to 10 ms apart that an Enter ends', () => {
    expect(sent(5).endedAt(1000 + 6 * 5)).toBe('62.004')
    expect(sent(10).endedAt(1000 + 6 * 10)).toBe('62.004')
  })

  it('is not taken for hands, however quick', () => {
    expect(sent(90).endedAt(1000 + 6 * 90)).toBeNull()
    expect(sent(90).isBurst).toBe(false)
  })

  it('has sent half a reading when no Enter came', () => {
    const burst = sent(5)
    expect(burst.isBurst).toBe(true)
    expect(burst.endedAt(5000)).toBeNull()
  })

  it('may let its Enter come a little later than its characters', () => {
    expect(sent(5).endedAt(1025 + 120)).toBe('62.004')
  })

  it('begins again after each Enter', () => {
    const burst = sent(5)
    burst.endedAt(1030)
    expect(burst.endedAt(1031)).toBeNull()
  })

  it('leaves what was typed by hand before it out', () => {
    const burst = new GaugeBurst()
    burst.key('7', 0)
    ;[...'24.0 Nm'].forEach((character, place) => burst.key(character, 500 + place * 8))
    expect(burst.endedAt(560)).toBe('24.0 Nm')
  })
})

describe('listening to the keys of the window', () => {
  beforeEach(() => vi.useFakeTimers())
  afterEach(() => vi.useRealTimers())

  function listening() {
    const listener = { whole: vi.fn(), half: vi.fn() }
    const keys = new GaugeKeys(listener)
    const press = (key: string, timeStamp: number, repeat = false) => {
      const keyEvent = { preventDefault: vi.fn(), stopPropagation: vi.fn() }
      const modifiers = { ctrlKey: false, altKey: false, metaKey: false }
      return { ended: keys.take({ key, timeStamp, repeat, ...modifiers, ...keyEvent }), taken: keyEvent }
    }
    const type = (text: string, everyMs: number) =>
      [...text].forEach((character, place) => press(character, place * everyMs))
    return { listener, press, type }
  }

  it('hands over what a wrench sent, unit and all, and keeps its Enter from everybody else', () => {
    const { listener, press, type } = listening()
    type('24,1 N·m', 8)
    const { ended, taken: keyEvent } = press('Enter', 64)
    expect(listener.whole).toHaveBeenCalledExactlyOnceWith('24,1 N·m')
    expect(ended).toBe(true)
    expect(keyEvent.preventDefault).toHaveBeenCalledOnce()
    expect(keyEvent.stopPropagation).toHaveBeenCalledOnce()
  })

  it('leaves an Enter pressed by hand to whom it is meant for', () => {
    const { listener, press, type } = listening()
    type('24', 120)
    const { ended, taken: keyEvent } = press('Enter', 700)
    expect(ended).toBe(false)
    expect(keyEvent.preventDefault).not.toHaveBeenCalled()
    expect(listener.whole).not.toHaveBeenCalled()
  })

  it('says once that a burst broke off, and takes the Enter that comes after for one by hand', () => {
    const { listener, press, type } = listening()
    type('24.', 8)
    vi.advanceTimersByTime(300)
    expect(listener.half).toHaveBeenCalledOnce()
    expect(press('Enter', 320).ended).toBe(false)
    expect(listener.whole).not.toHaveBeenCalled()
  })

  it('does not take a key held down for a burst', () => {
    const { listener, press } = listening()
    press('2', 0)
    for (let at = 30; at < 300; at += 30) press('2', at, true)
    vi.advanceTimersByTime(300)
    expect(press('Enter', 310).ended).toBe(false)
    expect(listener.half).not.toHaveBeenCalled()
  })
})
