import { afterEach, describe, expect, it, vi } from 'vitest'
import { keepScreenOn } from '../../../renderer/parts/keep-screen-on.ts'

/** A page as the standard has it (W3C Screen Wake Lock): the system lets go of every lock once the page is hidden. */
function page(grants: () => boolean) {
  const listeners = new Set<() => void>()
  const held = new Set<object>()
  const document = {
    visibilityState: 'visible',
    addEventListener: (_: string, listen: () => void) => listeners.add(listen),
    removeEventListener: (_: string, listen: () => void) => listeners.delete(listen),
  }
  const request = () => {
    if (!grants()) return Promise.reject(new DOMException('low battery', 'NotAllowedError'))
    const lock = {
      release: () => {
        held.delete(lock)
        return Promise.resolve()
      },
    }
    held.add(lock)
    return Promise.resolve(lock)
  }
  vi.stubGlobal('document', document)
  vi.stubGlobal('navigator', { wakeLock: { request } })
  return {
    held,
    turns: async (visibilityState: 'hidden' | 'visible') => {
      Object.assign(document, { visibilityState })
      if (visibilityState === 'hidden') held.clear()
      for (const listen of listeners) listen()
      await settled()
    },
  }
}
const settled = () => new Promise((resolve) => setTimeout(resolve))

afterEach(() => vi.unstubAllGlobals())

describe('the screen that is kept on', () => {
  it('stays on from the first pull to the last, over another window too, and no longer', async () => {
    const { held, turns } = page(() => true)
    const told: boolean[] = []
    const over = keepScreenOn((staysOn) => told.push(staysOn))
    await settled()
    expect(held.size).toBe(1)
    await turns('hidden')
    expect(held.size).toBe(0)
    await turns('visible')
    expect(held.size).toBe(1)
    over()
    await settled()
    expect(held.size).toBe(0)
    await turns('visible')
    expect(held.size).toBe(0)
    expect(told).toEqual([true, true])
  })

  it('is let go of where the last pull comes before the system has answered', async () => {
    const { held } = page(() => true)
    keepScreenOn()()
    await settled()
    expect(held.size).toBe(0)
  })

  it('is told to go dark where the system refuses, or the browser cannot', async () => {
    const told: boolean[] = []
    page(() => false)
    keepScreenOn((staysOn) => told.push(staysOn))
    await settled()
    vi.stubGlobal('navigator', {})
    keepScreenOn((staysOn) => told.push(staysOn))
    await settled()
    expect(told).toEqual([false, false])
  })
})
