import type {
  BrowserWindowConstructorOptions,
  MenuItemConstructorOptions,
  MessageBoxOptions,
  PrintToPDFOptions,
  Rectangle,
  RenderProcessGoneDetails,
  SaveDialogOptions,
  SaveDialogReturnValue,
  SerialPort,
} from 'electron'

/** A window that was made, as far as it can be told over a line. `preload` is its text; `null` where there is none. */
export interface MadeWindow {
  readonly window: number
  readonly options: Omit<BrowserWindowConstructorOptions, 'parent' | 'webPreferences'>
  readonly webPreferences: Readonly<Record<string, unknown>>
  readonly preload: string | null
}

export interface LoadFailure {
  readonly code: number
  readonly text: string
}

/** An entry of a menu as a person would see it. */
export type SeenEntry = Pick<
  MenuItemConstructorOptions,
  'role' | 'label' | 'type' | 'accelerator' | 'enabled'
> & {
  readonly submenu?: readonly SeenEntry[]
}

/** A frame that asks; `null` is one that has gone or gone elsewhere meanwhile. */
export type AskingFrame = { readonly url: string; readonly isMain: boolean } | null

export interface Response {
  readonly status: number
  readonly headers: Readonly<Record<string, readonly string[]>>
  readonly body: Uint8Array
}

/** What the played program asks of the test that stands for its user, its screen and its renderer processes. */
export interface OfTheTest {
  started: [{ pid: number; argv: readonly string[] }, void]
  ready: [null, void]
  /** Nothing more will be said: the process ends with this code. */
  ended: [{ code: number }, void]
  warning: [{ line: string }, void]
  'error-box': [{ title: string; content: string; ready: boolean }, void]
  'message-box': [{ options: Omit<MessageBoxOptions, 'icon' | 'signal'> }, number]
  'save-dialog': [{ options: SaveDialogOptions }, SaveDialogReturnValue]
  menu: [{ entries: readonly SeenEntry[] | null }, void]
  'context-menu': [{ entries: readonly SeenEntry[] }, void]
  'keep-awake': [{ on: boolean }, void]
  window: [MadeWindow, void]
  shown: [{ window: number }, void]
  focused: [{ window: number }, void]
  bounds: [{ window: number; bounds: Rectangle; maximized: boolean }, void]
  gone: [{ window: number }, void]
  load: [{ window: number; url: string }, LoadFailure | null]
  reload: [{ window: number }, void]
  crash: [{ window: number }, void]
  'full-screen': [{ window: number; on: boolean }, void]
  copied: [{ text: string }, void]
  pdf: [{ window: number; options: PrintToPDFOptions }, Uint8Array]
  popups: [{ window: number; allowed: boolean }, void]
}

export type WindowEvent =
  | { readonly event: 'first-paint' | 'loaded' | 'unresponsive' | 'responsive' | 'blur' | 'focus' }
  | { readonly event: 'query-session-end' | 'session-end' }
  | { readonly event: 'navigated'; readonly url: string }
  | { readonly event: 'page-title-updated'; readonly title: string }
  | { readonly event: 'render-process-gone'; readonly details: RenderProcessGoneDetails }
  | { readonly event: 'preload-error'; readonly path: string; readonly message: string }
  | {
      readonly event: 'context-menu'
      readonly params: { readonly isEditable: boolean; readonly selectionText: string }
    }

/** What the test asks of the played program: as its user, its operating system, and its renderer processes. */
export interface OfTheProgram {
  fetch: [{ url: string; method: string; headers: Record<string, string> }, Response | { error: number }]
  invoke: [
    { window: number; channel: string; args: readonly unknown[]; frame: AskingFrame },
    { result: unknown } | { error: string },
  ]
  'may-navigate': [{ window: number; url: string; isMainFrame: boolean }, boolean]
  'may-have': [
    {
      window: number
      permission: string
      how: 'request' | 'check' | 'device'
      /** Of `media`: `audio`, `video`, or both; a check is of the first. */
      media?: readonly ('audio' | 'video')[]
    },
    boolean,
  ]
  /** What `navigator.serial.requestPort` comes to: the line that was chosen, empty for none. */
  'select-serial': [{ window: number; lines: readonly SerialPort[] }, string]
  /** Whether a line that was unplugged and plugged in again, or is on after a reload, may be opened. */
  'may-open-serial': [{ device: Readonly<Record<string, unknown>>; origin: string }, boolean]
  /** The path to save to; `null` where it was cancelled. */
  download: [{ window: number; id: number; url: string; name: string; size: number }, string | null]
  downloaded: [{ id: number; state: 'completed' | 'cancelled' | 'interrupted' }, void]
  'window-event': [{ window: number } & WindowEvent, void]
  'child-process-gone': [{ type: 'GPU' | 'Utility'; reason: 'crashed' | 'killed'; exitCode: number }, void]
  power: ['suspend' | 'resume' | 'shutdown' | 'lock-screen' | 'unlock-screen', void]
  'open-file': [{ path: string }, void]
  close: [{ window: number }, void]
  move: [{ window: number; bounds: Rectangle }, void]
  quit: [null, void]
}
