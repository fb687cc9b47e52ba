import type {
  BrowserWindow as ElectronWindow,
  BrowserWindowConstructorOptions,
  Rectangle,
  WebContents as ElectronContents,
} from 'electron'
import { isAbsolute } from 'node:path'
import type { WindowEvent } from '../questions.ts'
import { playedApp } from './app.ts'
import { PlayedContents, preloadText } from './contents.ts'
import { life, openWindows } from './life.ts'
import { answers, outside } from './outside.ts'
import { eventsOf, PlayedEvents, strict } from './strict.ts'

const windowEvents = eventsOf<ElectronWindow>()(
  'ready-to-show',
  'show',
  'close',
  'closed',
  'unresponsive',
  'responsive',
  'page-title-updated',
  'resize',
  'resized',
  'move',
  'moved',
  'maximize',
  'unmaximize',
  'enter-full-screen',
  'leave-full-screen',
  'focus',
  'blur',
  'session-end',
  'query-session-end',
)

type PlayedOfWindow =
  | 'id'
  | 'loadURL'
  | 'show'
  | 'showInactive'
  | 'focus'
  | 'close'
  | 'destroy'
  | 'restore'
  | 'maximize'
  | 'isVisible'
  | 'isMinimized'
  | 'isMaximized'
  | 'isFullScreen'
  | 'setFullScreen'
  | 'setTitle'
  | 'isDestroyed'
  | 'getBounds'
  | 'getNormalBounds'
  | 'setBounds'
  | 'setMenuBarVisibility'
  | 'setAutoHideMenuBar'
  | 'setBackgroundColor'

class PlayedWindow extends PlayedEvents implements Pick<ElectronWindow, PlayedOfWindow> {
  readonly id: number
  readonly webContents: PlayedContents
  #isVisible: boolean
  #isMaximized = false
  #isFullScreen = false
  #bounds: Rectangle

  constructor(options: BrowserWindowConstructorOptions = {}) {
    if (!life.isReady) throw new Error('Cannot create BrowserWindow before app is ready')
    super('BrowserWindow', windowEvents)
    this.id = ++lastId
    const { webPreferences = {}, parent: _, ...plain } = options
    const { preload, ...rules } = webPreferences
    if (preload !== undefined && !isAbsolute(preload))
      throw new Error('preload script must have absolute path')
    this.webContents = strict('webContents', new PlayedContents(this.id, preload))
    this.#isVisible = options.show !== false
    const { x = 100, y = 100, width = 800, height = 600 } = options
    this.#bounds = { x, y, width, height }
    windows.set(this.id, this)
    openWindows.set(this.id, this)
    outside.tell('window', {
      window: this.id,
      options: JSON.parse(JSON.stringify(plain)) as typeof plain,
      webPreferences: JSON.parse(JSON.stringify(rules)) as Record<string, unknown>,
      preload: preload === undefined ? null : preloadText(preload, this.webContents),
    })
    playedApp.send('browser-window-created', {}, strict('BrowserWindow', this))
    playedApp.send('web-contents-created', {}, this.webContents)
    if (this.#isVisible) outside.tell('shown', { window: this.id })
  }

  loadURL(url: string): Promise<void> {
    return this.webContents.loadURL(url)
  }

  show(): void {
    this.#isVisible = true
    outside.tell('shown', { window: this.id })
    this.send('show')
  }

  showInactive(): void {
    this.show()
  }

  focus(): void {
    outside.tell('focused', { window: this.id })
  }

  /** NativeWindow::NotifyWindowCloseButtonClicked: a close that is prevented also takes back that the program quits. */
  close(): void {
    if (this.send('close')) life.isQuitting = false
    else this.destroy()
  }

  destroy(): void {
    if (!windows.delete(this.id)) return
    openWindows.delete(this.id)
    outside.tell('gone', { window: this.id })
    this.webContents.send('destroyed')
    this.send('closed')
    if (windows.size === 0) playedApp.allWindowsClosed()
  }

  restore(): void {}
  setTitle(): void {}

  setFullScreen(on: boolean): void {
    this.#isFullScreen = on
    outside.tell('full-screen', { window: this.id, on })
    this.send(on ? 'enter-full-screen' : 'leave-full-screen')
  }

  maximize(): void {
    this.#isMaximized = true
    this.#tellBounds()
    this.send('maximize')
  }

  isVisible(): boolean {
    return this.#isVisible
  }
  isMinimized(): boolean {
    return false
  }
  isMaximized(): boolean {
    return this.#isMaximized
  }
  isFullScreen(): boolean {
    return this.#isFullScreen
  }
  isDestroyed(): boolean {
    return !windows.has(this.id)
  }
  getBounds(): Rectangle {
    return this.#bounds
  }
  getNormalBounds(): Rectangle {
    return this.#bounds
  }

  setBounds(bounds: Partial<Rectangle>): void {
    this.#bounds = { ...this.#bounds, ...bounds }
    this.#tellBounds()
    for (const name of ['resize', 'move', 'resized', 'moved']) this.send(name)
  }

  setMenuBarVisibility(): void {}
  setAutoHideMenuBar(): void {}
  setBackgroundColor(): void {}

  hear(event: WindowEvent): void {
    this.webContents.hear(event)
    if (event.event === 'first-paint') this.send('ready-to-show')
    else if (event.event === 'page-title-updated') this.send(event.event, {}, event.title, true)
    else if (event.event === 'unresponsive' || event.event === 'responsive') this.send(event.event)
    else if (event.event === 'blur' || event.event === 'focus') this.send(event.event)
    else if (event.event === 'query-session-end' || event.event === 'session-end')
      this.send(event.event, { reasons: ['logoff'] })
  }

  #tellBounds(): void {
    outside.tell('bounds', { window: this.id, bounds: this.#bounds, maximized: this.#isMaximized })
  }
}

const windows = new Map<number, PlayedWindow>()
let lastId = 0

type PlayedOfClass = 'getAllWindows' | 'getFocusedWindow' | 'fromWebContents'

/** lib/browser/api/browser-window.ts */
export const BrowserWindow = strict(
  'BrowserWindow',
  class BrowserWindow extends PlayedWindow {
    constructor(options?: BrowserWindowConstructorOptions) {
      super(options)
      return strict('BrowserWindow', this)
    }
    static getAllWindows(): PlayedWindow[] {
      return [...windows.values()].map((window) => strict('BrowserWindow', window))
    }
    static getFocusedWindow(): PlayedWindow | null {
      return BrowserWindow.getAllWindows()[0] ?? null
    }
    static fromWebContents({ id }: { id: number }): PlayedWindow | null {
      return BrowserWindow.getAllWindows().find((window) => window.id === id) ?? null
    }
  } satisfies Record<keyof Pick<typeof ElectronWindow, PlayedOfClass>, unknown>,
)

export function contentsOf(window: number): ElectronContents | null {
  return (windows.get(window)?.webContents ?? null) as unknown as ElectronContents | null
}

answers['window-event'] = ({ window, ...event }) => windows.get(window)?.hear(event)
answers.close = ({ window }) => windows.get(window)?.close()
answers.move = ({ window, bounds }) => windows.get(window)?.setBounds(bounds)

/** docs/api/web-contents.md: `will-frame-navigate` for every frame, then `will-navigate` for the page itself. */
answers['may-navigate'] = ({ window, url, isMainFrame }) => {
  const contents = windows.get(window)?.webContents
  if (contents === undefined) return false
  const details = { url, isMainFrame, isSameDocument: false }
  if (contents.send('will-frame-navigate', details, url)) return false
  return !(isMainFrame && contents.send('will-navigate', details, url))
}
