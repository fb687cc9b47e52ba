import { type EventEmitter } from 'node:events'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import type { BrowserWindow, BrowserWindowConstructorOptions } from 'electron'
import type { WindowSettings, WindowMemory } from '../../../../electron/desktop/window/window-memory.ts'

/** What was done to the last window, in order. */
const played = vi.hoisted(() => ({
  done: [] as string[],
  options: {},
  windows: [] as unknown[],
  themeSource: '',
  isMaximized: false,
  isFullScreen: false,
}))
vi.mock('electron', async () => {
  const { EventEmitter } = await import('node:events')
  class PlayedWindow extends EventEmitter {
    readonly webContents = new EventEmitter()
    #isVisible = false
    constructor(options: BrowserWindowConstructorOptions) {
      super()
      played.options = options
      played.windows.push(this)
    }
    static getAllWindows = () => played.windows
    isDestroyed = () => false
    isVisible = () => this.#isVisible
    isMinimized = () => true
    isMaximized = () => played.isMaximized
    isFullScreen = () => played.isFullScreen
    getNormalBounds = () => ({ x: 40, y: 50, width: 900, height: 700 })
    show = () => {
      this.#isVisible = true
      played.done.push('show')
    }
    maximize = () => played.done.push('maximize')
    setFullScreen = () => played.done.push('full screen')
    setBackgroundColor = (colour: string) => played.done.push(colour)
    restore = () => played.done.push('restore')
    focus = () => played.done.push('focus')
  }
  return {
    BrowserWindow: PlayedWindow,
    Menu: { setApplicationMenu: () => undefined, buildFromTemplate: () => ({ popup: () => undefined }) },
    nativeTheme: {
      shouldUseDarkColors: true,
      set themeSource(source: string) {
        played.themeSource = source
      },
    },
    screen: {
      getPrimaryDisplay: () => ({ id: 1, workArea: { x: 0, y: 0, width: 1920, height: 1080 } }),
      getAllDisplays: () => [{ id: 1, workArea: { x: 0, y: 0, width: 1920, height: 1080 } }],
    },
  }
})
const { bringToFront, dressWindow, makeWindow } =
  await import('../../../../electron/desktop/window/window.ts')

let now: WindowSettings
const memory = {
  get now() {
    return now
  },
  keep: (change: Partial<WindowSettings>) => void (now = { ...now, ...change }),
} as WindowMemory

beforeEach(() => {
  now = { place: null, theme: 'as-the-system', language: null, saveFolder: null }
  Object.assign(played, { done: [], windows: [], themeSource: '', isMaximized: false, isFullScreen: false })
})

const made = (isWaitedFor = true): BrowserWindow & EventEmitter =>
  makeWindow('/app', memory, { isWaitedFor }) as BrowserWindow & EventEmitter

describe('the window of the desktop host', () => {
  it('is made hidden, on the ground that its page will have, in the sandbox', () => {
    made()
    expect(played.options).toMatchObject({
      show: false,
      backgroundColor: '#14171a',
      webPreferences: { sandbox: true, contextIsolation: true, nodeIntegration: false },
    })
    expect(played.themeSource).toBe('system')
  })

  it.each([
    ['normal', ['show']],
    ['maximized', ['maximize', 'show']],
    ['full-screen', ['show', 'full screen']],
  ] as const)('is shown when its page is painted, as it was left: %s', (state, done) => {
    now = { ...now, place: { bounds: { x: 10, y: 10, width: 1000, height: 800 }, state } }
    const window = made()
    expect(played.done).toEqual([])
    window.emit('ready-to-show')
    expect(played.done).toEqual(done)
    expect(played.options).toMatchObject({ x: 10, y: 10, width: 1000, height: 800 })
  })

  it('is shown after a while though its page was never painted, unless a launcher waits for it', () => {
    vi.useFakeTimers()
    try {
      made()
      vi.advanceTimersByTime(60_000)
      expect(played.done).toEqual([])
      const window = made(false)
      vi.advanceTimersByTime(20_000)
      expect(played.done).toEqual(['show'])
      window.emit('ready-to-show') // once
      expect(played.done).toEqual(['show'])
    } finally {
      vi.useRealTimers()
    }
  })

  it.each([
    [false, false, 'normal'],
    [true, false, 'maximized'],
    [true, true, 'full-screen'],
  ])('leaves its place behind (maximized %s, full screen %s)', (isMaximized, isFullScreen, state) => {
    const window = made()
    Object.assign(played, { isMaximized, isFullScreen })
    window.emit('close')
    expect(now.place).toEqual({ bounds: { x: 40, y: 50, width: 900, height: 700 }, state })
  })

  it('takes on the look that the bench has chosen, and keeps it for the next start', () => {
    dressWindow(made(), memory, 'light')
    expect(played.themeSource).toBe('light')
    expect(played.done).toEqual(['#f4f1e8'])
    expect(now.theme).toBe('light')
  })

  it('comes to the front where there is one', () => {
    bringToFront()
    expect(played.done).toEqual([])
    made()
    bringToFront()
    expect(played.done).toEqual(['restore', 'show', 'focus'])
  })
})
