import { afterEach, describe, expect, it, vi } from 'vitest'
import { watchIdle } from '../../../electron/local/idle.ts'

describe('watching for a window that is gone', () => {
  afterEach(() => vi.useRealTimers())

  /** Ten checks, half a minute apart, as in the program. */
  function watched() {
    vi.useFakeTimers()
    const ended = vi.fn()
    return { watch: watchIdle(10, 30_000, ended), ended }
  }

  it('ends after five minutes without a request', () => {
    const { ended } = watched()
    vi.advanceTimersByTime(299_000)
    expect(ended).not.toHaveBeenCalled()
    vi.advanceTimersByTime(2_000)
    expect(ended).toHaveBeenCalledOnce()
  })

  it('begins to count again at each request', () => {
    const { watch, ended } = watched()
    for (let minute = 0; minute < 60; minute += 1) {
      vi.advanceTimersByTime(60_000)
      watch.noteRequest()
    }
    expect(ended).not.toHaveBeenCalled()
  })

  it('is over when it is stopped', () => {
    const { watch, ended } = watched()
    watch.stop()
    vi.advanceTimersByTime(3_600_000)
    expect(ended).not.toHaveBeenCalled()
  })
})
