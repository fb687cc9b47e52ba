import { EventEmitter } from 'node:events'
import type { BrowserWindow } from 'electron'

/** A window as far as it is watched: it can be told things, and notes what is done to it. */
export class WatchedWindow extends EventEmitter {
  readonly done: string[] = []
  readonly webContents = Object.assign(new EventEmitter(), {
    forcefullyCrashRenderer: () => void this.done.push('crash'),
  })
  isGone = false
  isOn = true

  isDestroyed = (): boolean => this.isGone
  isVisible = (): boolean => this.isOn
  show = (): void => {
    this.isOn = true
    this.done.push('show')
  }
  loadURL = (): Promise<void> => {
    this.done.push('load')
    return Promise.resolve()
  }

  get asWindow(): BrowserWindow {
    return this as unknown as BrowserWindow
  }
}
