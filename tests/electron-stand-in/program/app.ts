import type { App } from 'electron'
import { isAbsolute } from 'node:path'
import { life, openWindows } from './life.ts'
import { takeLock } from './lock.ts'
import { answers, endProcess, warn } from './outside.ts'
import { eventsOf, PlayedEvents, strict } from './strict.ts'

/** shell/browser/api/electron_api_app.cc, GetPathConstant */
const pathNames =
  'home appData assets userData sessionData temp exe module desktop documents downloads music pictures videos recent logs crashDumps'.split(
    ' ',
  )

const events = eventsOf<App>()(
  'will-finish-launching',
  'ready',
  'window-all-closed',
  'before-quit',
  'will-quit',
  'quit',
  'open-file',
  'activate',
  'browser-window-created',
  'web-contents-created',
  'render-process-gone',
  'child-process-gone',
  'second-instance',
)

type Played =
  | 'isReady'
  | 'whenReady'
  | 'getVersion'
  | 'getName'
  | 'setName'
  | 'name'
  | 'isPackaged'
  | 'getAppPath'
  | 'getPath'
  | 'setPath'
  | 'enableSandbox'
  | 'setAppUserModelId'
  | 'setAboutPanelOptions'
  | 'setAppLogsPath'
  | 'requestSingleInstanceLock'
  | 'hasSingleInstanceLock'
  | 'releaseSingleInstanceLock'
  | 'quit'
  | 'exit'
  | 'focus'

let becameReady = (): void => undefined
const ready = new Promise<void>((resolve) => {
  becameReady = resolve
})

class PlayedApp extends PlayedEvents implements Pick<App, Played> {
  name = ''
  isPackaged = false
  #version = ''
  #path = ''
  readonly #paths = new Map<string, string>()
  #release: (() => void) | null = null

  constructor() {
    super('app', events)
  }

  /** Not Electron's own: what its start knows of the program's package. */
  introduce(about: {
    name: string
    version: string
    path: string
    isPackaged: boolean
    paths: Readonly<Record<string, string>>
  }) {
    this.name = about.name
    this.isPackaged = about.isPackaged
    this.#version = about.version
    this.#path = about.path
    for (const [name, path] of Object.entries(about.paths)) this.#paths.set(name, path)
  }

  isReady(): boolean {
    return life.isReady
  }

  whenReady(): Promise<void> {
    return ready
  }

  getVersion(): string {
    return this.#version
  }

  getName(): string {
    return this.name
  }

  setName(name: string): void {
    this.name = name
  }

  getAppPath(): string {
    return this.#path
  }

  getPath(name: string): string {
    const path = this.#paths.get(name)
    if (path === undefined) throw new Error(`Failed to get '${name}' path`)
    return path
  }

  setPath(name: string, path: string): void {
    if (!isAbsolute(path)) throw new Error('Path must be absolute')
    if (!pathNames.includes(name)) throw new Error('Failed to set path')
    if (life.isReady && name === 'userData')
      throw new Error('stand-in: userData is set after ready, when Chromium uses the folder already')
    this.#paths.set(name, path)
  }

  setAppLogsPath(path?: string): void {
    if (path !== undefined) this.setPath('logs', path)
  }

  enableSandbox(): void {
    if (life.isReady) throw new Error('app.enableSandbox() can only be called before app is ready')
    sandbox.isEnabled = true
  }

  setAppUserModelId(): void {}
  setAboutPanelOptions(): void {}
  focus(): void {}

  requestSingleInstanceLock(additional?: Record<string, unknown>): boolean {
    if (this.#release !== null) return true
    this.#release = takeLock(this.getPath('userData'), additional ?? null, {
      isShutDown: () => life.isShutDown,
      // electron_api_app.cc, NotificationCallbackWrapper: after `ready`
      heard: (argv, cwd, data) => void ready.then(() => this.send('second-instance', {}, argv, cwd, data)),
    })
    return this.#release !== null
  }

  hasSingleInstanceLock(): boolean {
    return this.#release !== null
  }

  releaseSingleInstanceLock(): void {
    this.#release?.()
    this.#release = null
  }

  /** Browser::Quit */
  quit(): void {
    if (life.isQuitting) return
    life.isQuitting = !this.send('before-quit')
    if (!life.isQuitting) return
    if (openWindows.size === 0) this.#notifyAndShutDown()
    else for (const window of [...openWindows.values()]) window.close()
  }

  /** Browser::ExitWithCode: before the message loop the process ends at once, without any event. */
  exit(code = 0): void {
    if (!life.isLooping) return endProcess(code)
    life.exitCode = code
    life.isQuitting = life.isExiting = true
    if (openWindows.size === 0) this.#shutDown()
    else for (const window of [...openWindows.values()]) window.destroy()
  }

  /** Browser::OnWindowAllClosed */
  allWindowsClosed(): void {
    if (life.isExiting) this.#shutDown()
    else if (life.isQuitting) this.#notifyAndShutDown()
    else this.send('window-all-closed')
  }

  /** What comes once the entry is evaluated, whatever came of it: `ready` even when the program was told to quit. */
  becomeReady(): void {
    // InstallShutdownSignalHandlers: one shot at a graceful end for each signal, the second one of a kind kills.
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => this.quit())
    this.send('will-finish-launching')
    life.isReady = true
    becameReady()
    this.send('ready', {}, {})
    setImmediate(() => {
      life.isLooping = true
      if (life.isShutDown) endProcess(life.exitCode)
    })
  }

  #notifyAndShutDown(): void {
    if (life.isShutDown) return
    if (this.send('will-quit')) life.isQuitting = false
    else this.#shutDown()
  }

  #shutDown(): void {
    if (life.isShutDown) return
    life.isShutDown = life.isQuitting = true
    this.send('quit', {}, life.exitCode)
    this.releaseSingleInstanceLock()
    if (life.isLooping) endProcess(life.exitCode)
  }
}

export const sandbox = { isEnabled: false }
export const playedApp = new PlayedApp()
// lib/browser/init.ts: quits by itself only where nobody else listens.
playedApp.on('window-all-closed', () => {
  if (playedApp.listenerCount('window-all-closed') === 1) playedApp.quit()
})

export const app = strict('app', playedApp)

answers.quit = () => playedApp.quit()
answers['open-file'] = ({ path }) => {
  if (!playedApp.send('open-file', {}, path)) warn(`nobody took the file ${path} that was opened`)
}
answers['child-process-gone'] = (details) => {
  playedApp.send('child-process-gone', {}, details)
}
