import type { PrintToPDFOptions, WebContents as ElectronContents } from 'electron'
import { readFileSync } from 'node:fs'
import type { WindowEvent } from '../questions.ts'
import { playedApp } from './app.ts'
import { openWindows } from './life.ts'
import { outside } from './outside.ts'
import { playedSession } from './session.ts'
import { eventsOf, PlayedEvents, strict } from './strict.ts'

const contentsEvents = eventsOf<ElectronContents>()(
  'will-navigate',
  'will-frame-navigate',
  'will-redirect', // never sent: the own scheme redirects nowhere
  'will-attach-webview', // never sent: `webviewTag` must be off
  'did-finish-load',
  'did-fail-load',
  'did-start-navigation',
  'did-navigate',
  'render-process-gone',
  'unresponsive',
  'responsive',
  'preload-error',
  'context-menu',
  'destroyed',
)

type PlayedOfContents =
  | 'id'
  | 'getURL'
  | 'loadURL'
  | 'reload'
  | 'isDestroyed'
  | 'isCrashed'
  | 'setWindowOpenHandler'
  | 'printToPDF'
  | 'forcefullyCrashRenderer'

/** lib/browser/print-to-pdf.ts, paperFormats */
const papers = 'letter legal tabloid ledger a0 a1 a2 a3 a4 a5 a6'.split(' ')

export class PlayedContents extends PlayedEvents implements Pick<ElectronContents, PlayedOfContents> {
  readonly id: number
  readonly preload: string | undefined
  url = ''
  #isCrashed = false

  constructor(id: number, preload: string | undefined) {
    super('webContents', contentsEvents)
    this.id = id
    this.preload = preload
  }

  get session(): typeof playedSession {
    return strict('session', playedSession)
  }

  getURL(): string {
    return this.url
  }

  async loadURL(url: string): Promise<void> {
    this.#isCrashed = false
    const failure = await outside.ask('load', { window: this.id, url })
    if (failure === null) return
    const { code, text } = failure
    this.send('did-fail-load', {}, code, text, url, true, 0, 0)
    throw Object.assign(new Error(`${text} (${code}) loading '${url}'`), { errno: code, code: text, url })
  }

  reload(): void {
    this.#isCrashed = false
    outside.tell('reload', { window: this.id })
  }

  forcefullyCrashRenderer(): void {
    outside.tell('crash', { window: this.id })
  }

  isDestroyed(): boolean {
    return !openWindows.has(this.id)
  }

  isCrashed(): boolean {
    return this.#isCrashed
  }

  setWindowOpenHandler(handler: Parameters<ElectronContents['setWindowOpenHandler']>[0]): void {
    const details = { url: 'about:blank', frameName: '', features: '', disposition: 'new-window' } as const
    const { action } = handler({ ...details, referrer: { url: '', policy: 'default' } })
    outside.tell('popups', { window: this.id, allowed: action === 'allow' })
  }

  async printToPDF(options: PrintToPDFOptions): Promise<Buffer> {
    const { pageSize = 'letter' } = options
    if (typeof pageSize === 'string' && !papers.includes(pageSize.toLowerCase()))
      throw new Error(`Invalid pageSize ${pageSize}`)
    return Buffer.from(await outside.ask('pdf', { window: this.id, options }))
  }

  hear(event: WindowEvent): void {
    switch (event.event) {
      case 'navigated':
        this.url = event.url
        this.send('did-navigate', {}, event.url, 200, 'OK')
        break
      case 'loaded':
        this.send('did-finish-load')
        break
      case 'unresponsive':
      case 'responsive':
        this.send(event.event)
        break
      case 'render-process-gone':
        this.#isCrashed = true
        this.send(event.event, {}, event.details)
        playedApp.send(event.event, {}, strict('webContents', this), event.details)
        break
      case 'preload-error':
        this.send(event.event, {}, event.path, new Error(event.message))
        break
      case 'context-menu':
        this.send(event.event, {}, contextOf(event.params))
        break
      case 'first-paint':
      case 'page-title-updated':
      case 'blur':
      case 'focus':
      case 'query-session-end':
      case 'session-end':
        break
    }
  }
}

/** docs/api/structures/context-menu-params.md, as far as it depends on where one clicks */
function contextOf({ isEditable, selectionText }: { isEditable: boolean; selectionText: string }): object {
  const hasSelection = selectionText !== ''
  const editFlags = {
    canUndo: isEditable,
    canRedo: isEditable,
    canCut: isEditable && hasSelection,
    canCopy: hasSelection,
    canPaste: isEditable,
    canDelete: isEditable && hasSelection,
    canSelectAll: true,
    canEditRichly: false,
  }
  return {
    x: 10,
    y: 10,
    isEditable,
    selectionText,
    editFlags,
    linkURL: '',
    mediaType: 'none',
    misspelledWord: '',
  }
}

/** lib/sandboxed_renderer/preload.ts: a preload that cannot be read is reported, and the page is loaded without it. */
export function preloadText(preload: string, contents: PlayedContents): string | null {
  try {
    return readFileSync(preload, 'utf8')
  } catch (error) {
    console.error(`Unable to load preload script: ${preload}`)
    setImmediate(() => contents.hear({ event: 'preload-error', path: preload, message: String(error) }))
    return null
  }
}
