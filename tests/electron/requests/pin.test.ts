import { describe, expect, it } from 'vitest'
import { PinTries } from '../../../electron/requests/pin.ts'

describe('tries of a PIN', () => {
  /** Seconds to wait before each try, one a second, all wrong. */
  const waits = (tries: PinTries, count: number) => {
    let now = 0
    return Array.from({ length: count }, () => {
      const first = tries.begin('Ana', now)
      now += first
      if (first > 0) tries.begin('Ana', now)
      now += 1000
      return Math.round(first / 1000)
    })
  }

  it('wait after every five, twice as long each time', () => {
    const seconds = waits(new PinTries(), 21).filter((each) => each > 0)
    expect(seconds).toEqual([29, 59, 119, 239])
  })

  it('never wait longer than a quarter of an hour', () => {
    expect(Math.max(...waits(new PinTries(), 80))).toBe(15 * 60 - 1)
  })

  it('begin again once the PIN was right', () => {
    const tries = new PinTries()
    for (let wrong = 0; wrong < 4; wrong += 1) tries.begin('Ana', 0)
    tries.succeeded('Ana')
    for (let wrong = 0; wrong < 4; wrong += 1) expect(tries.begin('Ana', 0)).toBe(0)
  })

  it('of one person do not hold up another, nor does another’s right PIN help', () => {
    const tries = new PinTries()
    for (let wrong = 0; wrong < 5; wrong += 1) tries.begin('Ana', 0)
    expect(tries.begin('Bo', 0)).toBe(0)
    tries.succeeded('Bo')
    expect(tries.begin('Ana', 1000)).toBe(29_000)
  })
})
