import { EventEmitter } from 'node:events'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { WatchedWindow } from '../played-electron.ts'

const { app } = vi.hoisted(() => ({ app: { on: (): void => undefined } as unknown as EventEmitter }))
vi.mock('electron', () => ({ app, BrowserWindow: {}, Menu: {}, nativeTheme: {}, screen: {} }))
const { watchPage } = await import('../../../../electron/desktop/window/page-watch.ts')

let window: WatchedWindow
let log: string[]
let answer: 'load-again' | 'ended'
let faults: string[]

beforeEach(() => {
  vi.useFakeTimers()
  const events = new EventEmitter()
  app.on = ((name: string, listener: () => void) => events.on(name, listener)) as typeof app.on
  app.emit = events.emit.bind(events)
  window = new WatchedWindow()
  log = []
  answer = 'load-again'
  faults = []
  watchPage(
    window.asWindow,
    (line) => log.push(line),
    (fault) => {
      faults.push(fault)
      return Promise.resolve(answer)
    },
  )
})
afterEach(() => vi.useRealTimers())

const endProcess = (reason = 'crashed') =>
  window.webContents.emit('render-process-gone', {}, { reason, exitCode: 133 })
const loads = () => window.done.filter((what) => what === 'load').length

describe('the page in the window', () => {
  it('is loaded at first, and once again when its process has ended', () => {
    expect(loads()).toBe(1)
    endProcess()
    expect(loads()).toBe(2)
    expect(log).toEqual(['The page in the window ended. (crashed, 133)'])
  })

  it('is asked about the second time, over a window that can be seen, and loaded when that is wanted', async () => {
    endProcess()
    window.isOn = false
    endProcess()
    expect([faults, window.isOn, loads()]).toEqual([['gone'], true, 2])
    await vi.runAllTimersAsync()
    expect(loads()).toBe(3)
  })

  it('is left alone while the person is asked, and when the program ends', async () => {
    answer = 'ended'
    endProcess()
    endProcess()
    endProcess()
    await vi.runAllTimersAsync()
    expect([faults, loads()]).toEqual([['gone'], 2])
  })

  it('that hangs is ended after ten seconds, and its end is called by its cause', async () => {
    window.emit('unresponsive')
    await vi.advanceTimersByTimeAsync(9_999)
    expect(window.done).not.toContain('crash')
    await vi.advanceTimersByTimeAsync(1)
    expect(window.done).toContain('crash')
    endProcess()
    expect(log.at(-1)).toBe('The page in the window no longer answered. (crashed, 133)')
    endProcess()
    expect(log.at(-1)).toBe('The page in the window ended. (crashed, 133)')
  })

  it('that answers again, or whose window is closed meanwhile, is not ended', async () => {
    window.emit('unresponsive')
    window.emit('responsive')
    await vi.runAllTimersAsync()
    window.emit('unresponsive')
    window.emit('closed')
    await vi.runAllTimersAsync()
    expect(window.done).not.toContain('crash')
  })

  it('that ended in order, or a load that another one replaced, is no fault', () => {
    endProcess('clean-exit')
    window.webContents.emit('did-fail-load', {}, -3, 'ERR_ABORTED', '', true)
    window.webContents.emit('did-fail-load', {}, -6, 'ERR_FILE_NOT_FOUND', '', false)
    expect([loads(), log]).toEqual([1, []])
  })

  it('is loaded again for a load, a preload or a drawing process that failed', () => {
    window.webContents.emit('did-fail-load', {}, -6, 'ERR_FILE_NOT_FOUND', '', true)
    window.webContents.emit('preload-error', {}, '', new Error('no module'))
    app.emit('child-process-gone', {}, { type: 'GPU', reason: 'crashed', exitCode: 1 })
    expect(loads()).toBe(2)
    expect(faults).toEqual(['no-bridge'])
    expect(log).toHaveLength(3)
  })

  it('is not touched for other processes, which are only noted, nor after its window has gone', () => {
    app.emit('child-process-gone', {}, { type: 'Utility', reason: 'killed', exitCode: 9, name: 'Network' })
    window.isGone = true
    endProcess()
    expect(loads()).toBe(1)
    expect(log).toHaveLength(2)
  })
})
