import { existsSync } from 'node:fs'
import { rename, rm, writeFile } from 'node:fs/promises'
import { basename, dirname } from 'node:path'
import { BrowserWindow, dialog } from 'electron'
import { words } from '../../launch/spoken.ts'
import { saveQuestion, withEnding } from './save-place.ts'
import type { WindowMemory } from '../window/window-memory.ts'

const { saving } = words.desktop

export type SaveResult =
  | { readonly kind: 'saved'; readonly path: string }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed' }

/**
 * Asks where a file is to be put, and puts it there: whole, or not at all, so that one that was there is not lost to a full
 * disk. One file after the other, so that no dialog opens over another one. Where the ending is put on, whether one of that
 * name is to be replaced was not asked yet, and is asked here.
 */
export class FileSaver {
  readonly #memory: Pick<WindowMemory, 'now' | 'keep'>
  #last: Promise<unknown> = Promise.resolve()

  constructor(memory: Pick<WindowMemory, 'now' | 'keep'>) {
    this.#memory = memory
  }

  save(fileName: string, content: string | Uint8Array): Promise<SaveResult> {
    const saved = this.#last.then(() => this.#ask(fileName, content))
    this.#last = saved.catch(() => undefined)
    return saved
  }

  async #ask(fileName: string, content: string | Uint8Array): Promise<SaveResult> {
    for (;;) {
      const [window] = BrowserWindow.getAllWindows()
      if (window === undefined) return { kind: 'failed' }
      const question = saveQuestion(fileName, this.#memory.now.saveFolder)
      const { canceled, filePath } = await dialog.showSaveDialog(window, question)
      if (canceled || filePath === '') return { kind: 'cancelled' }
      const path = withEnding(filePath, fileName)
      if (path !== filePath && existsSync(path) && !(await mayReplace(window, path))) continue
      if (!(await put(path, content))) return { kind: 'failed' }
      this.#memory.keep({ saveFolder: dirname(path) })
      return { kind: 'saved', path }
    }
  }
}

async function mayReplace(window: BrowserWindow, path: string): Promise<boolean> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'question',
    message: saving.isThere({ name: basename(path) }),
    buttons: [saving.otherName, saving.replace],
    defaultId: 0,
    cancelId: 0,
    noLink: true,
  })
  return response === 1
}

async function put(path: string, content: string | Uint8Array): Promise<boolean> {
  const arriving = `${path}.part`
  try {
    await writeFile(arriving, content)
    await rename(arriving, path)
    return true
  } catch {
    await rm(arriving, { force: true }).catch(() => undefined)
    return false
  }
}
