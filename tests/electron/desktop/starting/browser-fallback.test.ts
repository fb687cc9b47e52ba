import { beforeEach, describe, expect, it, vi } from 'vitest'
import { done } from '../../../../core/problem/index.ts'
import { WatchedWindow } from '../played-electron.ts'

interface Box {
  readonly message: string
  readonly detail: string
  readonly buttons: readonly string[]
}
const played = vi.hoisted(() => ({ quits: 0, copied: [] as string[], boxes: [] as Box[], press: [0] }))
vi.mock('electron', () => ({
  app: { quit: () => (played.quits += 1) },
  clipboard: { writeText: (text: string) => Promise.resolve(void played.copied.push(text)) },
  dialog: {
    showMessageBox: (_window: unknown, box: Box) => {
      played.boxes.push(box)
      return Promise.resolve({ response: played.press.shift() ?? 0 })
    },
  },
}))
const { BrowserFallback } = await import('../../../../electron/desktop/starting/browser-fallback.ts')

const window = new WatchedWindow().asWindow
const pages = new Map([['/', { type: 'text/plain', bytes: Buffer.from('the window') }]])
const answer = () => Promise.resolve(done({}) as { ok: true; value: never })
const newFallback = () => new BrowserFallback({ pages, answer })

beforeEach(() => {
  Object.assign(played, { quits: 0, copied: [], boxes: [], press: [0] })
})

describe('a window that fails', () => {
  it('says what happened, that nothing is lost, and an address that answers while the message is open', async () => {
    const fallback = newFallback()
    expect(await fallback.ask(window, 'hung')).toBe('load-again')
    const [box] = played.boxes
    expect(box?.message).toBe(
      'The page in the window no longer answered. It was loaded again once, and that did not help.',
    )
    expect(box?.detail).toContain('What was confirmed is on disk.')
    const address = /http:\/\/127\.0\.0\.1:\d+\/#\S+/.exec(box?.detail ?? '')?.[0] ?? ''
    expect(await (await fetch(address)).text()).toBe('the window')
    await fallback.close()
    await expect(fetch(address)).rejects.toThrow()
  })

  it('copies the address and asks on, and serves at one address however often it is asked', async () => {
    played.press = [1, 0]
    const fallback = newFallback()
    await fallback.ask(window, 'gone')
    await fallback.ask(window, 'gone')
    expect(played.boxes).toHaveLength(3)
    expect(played.boxes[1]?.detail).toContain('The address is copied')
    for (const { detail } of played.boxes) expect(detail).toContain(played.copied[0])
    await fallback.close()
  })

  it('ends the program where that is chosen', async () => {
    played.press = [2]
    const fallback = newFallback()
    expect(await fallback.ask(window, 'no-bridge')).toBe('ended')
    expect(played.quits).toBe(1)
    await fallback.close()
  })

  it('has nothing to close where it was never asked', async () => {
    await expect(newFallback().close()).resolves.toBeUndefined()
  })
})
