import { flushSync } from 'svelte'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { nowEachSecond } from '../../../renderer/parts/seconds.ts'
import { seenBy } from './seen-by.svelte.ts'

beforeEach(() => {
  vi.useFakeTimers({ now: 0, toFake: ['setInterval', 'clearInterval', 'Date'] })
})
afterEach(() => {
  vi.useRealTimers()
})

const passSeconds = (seconds: number) => {
  for (let second = 0; second < seconds; second++) {
    vi.advanceTimersByTime(1000)
    flushSync()
  }
}

describe('the clock of what shows time', () => {
  it('is one for all, is looked at each second, and stops once nothing is shown by it', async () => {
    const first = seenBy(nowEachSecond)
    const second = seenBy(nowEachSecond)
    expect(vi.getTimerCount()).toBe(1)
    passSeconds(3)
    expect(first.seen).toEqual([0, 1000, 2000, 3000])
    expect(second.seen).toEqual(first.seen)
    first.stop()
    await Promise.resolve()
    expect(vi.getTimerCount()).toBe(1)
    second.stop()
    await Promise.resolve()
    expect(vi.getTimerCount()).toBe(0)
  })

  it('says the time of this moment to whatever shows nothing, and goes for none of it', () => {
    vi.setSystemTime(4321)
    expect(nowEachSecond()).toBe(4321)
    expect(vi.getTimerCount()).toBe(0)
  })
})
