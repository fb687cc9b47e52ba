import { type EventEmitter } from 'node:events'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { WatchedWindow } from './played-electron.ts'

const played = vi.hoisted(() => ({ quits: 0, monitor: null as unknown as EventEmitter }))
vi.mock('electron', async () => {
  const { EventEmitter } = await import('node:events')
  played.monitor = new EventEmitter()
  return { app: { quit: () => (played.quits += 1) }, powerMonitor: played.monitor }
})
const { watchPower } = await import('../../../electron/desktop/power.ts')

const window = new WatchedWindow()
let flushes = 0
watchPower(window.asWindow, () => (flushes += 1))

beforeEach(() => {
  flushes = 0
  played.quits = 0
})

describe('the record, when the machine', () => {
  it('sleeps, is flushed, and the program goes on', () => {
    played.monitor.emit('suspend')
    expect([flushes, played.quits]).toEqual([1, 0])
  })

  it('is switched off, is closed first: the shutdown waits for that', () => {
    let isHeld = false
    played.monitor.emit('shutdown', { preventDefault: () => (isHeld = true) })
    expect([isHeld, played.quits]).toEqual([true, 1])
    played.monitor.emit('shutdown') // by a system that cannot be held
    expect(played.quits).toBe(2)
  })

  it('logs its person off, is flushed at the question and closed at the end', () => {
    window.emit('query-session-end')
    expect([flushes, played.quits]).toEqual([1, 0])
    window.emit('session-end')
    expect(played.quits).toBe(1)
  })
})
