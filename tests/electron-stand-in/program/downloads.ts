import type { DownloadItem, Event, SaveDialogOptions } from 'electron'
import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { playedApp } from './app.ts'
import { askWhereToSave } from './dialog.ts'
import { answers } from './outside.ts'
import { playedSession } from './session.ts'
import { eventsOf, PlayedEvents, strict } from './strict.ts'
import { contentsOf } from './windows.ts'

const events = eventsOf<DownloadItem>()('updated', 'done')

type Played =
  | 'setSavePath'
  | 'getSavePath'
  | 'setSaveDialogOptions'
  | 'getSaveDialogOptions'
  | 'getFilename'
  | 'getURL'
  | 'getTotalBytes'
  | 'getReceivedBytes'
  | 'getState'
  | 'cancel'
  | 'savePath'

class PlayedItem extends PlayedEvents implements Pick<DownloadItem, Played> {
  savePath = ''
  isCancelled = false
  #options: SaveDialogOptions = {}
  #state: 'progressing' | 'completed' | 'cancelled' | 'interrupted' = 'progressing'
  readonly #about: { readonly url: string; readonly name: string; readonly size: number }

  constructor(about: { readonly url: string; readonly name: string; readonly size: number }) {
    super('DownloadItem', events)
    this.#about = about
  }

  setSavePath(path: string): void {
    this.savePath = path
  }
  getSavePath(): string {
    return this.savePath
  }
  setSaveDialogOptions(options: SaveDialogOptions): void {
    this.#options = options
  }
  getSaveDialogOptions(): SaveDialogOptions {
    return this.#options
  }
  getFilename(): string {
    return this.#about.name
  }
  getURL(): string {
    return this.#about.url
  }
  getTotalBytes(): number {
    return this.#about.size
  }
  getReceivedBytes(): number {
    return this.#state === 'completed' ? this.#about.size : 0
  }
  getState(): 'progressing' | 'completed' | 'cancelled' | 'interrupted' {
    return this.#state
  }
  cancel(): void {
    this.isCancelled = true
  }
  end(state: 'completed' | 'cancelled' | 'interrupted'): void {
    this.#state = state
    this.send('done', {}, state)
  }
}

const items = new Map<number, PlayedItem>()
/** Where the last file went: the next dialog opens there. */
let lastFolder = ''

/** shell/browser/electron_download_manager_delegate.cc: a path that was set is taken; else a dialog asks. */
answers.download = async ({ window, id, url, name, size }) => {
  const item = new PlayedItem({ url, name, size })
  items.set(id, item)
  const contents = contentsOf(window)
  const event: Pick<Event, 'preventDefault' | 'defaultPrevented'> = {
    defaultPrevented: false,
    preventDefault: () => item.cancel(),
  }
  playedSession.emit('will-download', event, strict('DownloadItem', item), contents)
  if (item.isCancelled) return null
  if (item.savePath !== '') return item.savePath
  const options = item.getSaveDialogOptions()
  const folder = existsSync(lastFolder) ? lastFolder : playedApp.getPath('downloads')
  const { canceled, filePath } = await askWhereToSave({
    ...options,
    title: options.title || url, // the address itself, where nobody gave a title
    defaultPath: options.defaultPath || join(folder, name),
  })
  if (canceled) return null
  lastFolder = dirname(filePath)
  item.savePath = filePath
  return filePath
}

answers.downloaded = ({ id, state }) => {
  items.get(id)?.end(state)
  items.delete(id)
}
