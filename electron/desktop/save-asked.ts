import { existsSync } from 'node:fs'
import { rename, rm, writeFile } from 'node:fs/promises'
import { basename, dirname } from 'node:path'
import { dialog } from 'electron'
import type { BrowserWindow } from 'electron'
import { saveQuestion, withEnding } from './save-place.ts'
import type { WindowMemory } from './window-memory.ts'

/**
 * Asks where a file is to be put, and puts it there: whole, or not at all, so that one that was there is not lost to a full
 * disk. Where the ending is put on, whether one of that name is to be replaced was not asked yet, and is asked here.
 */
export async function saveAsked(
  window: BrowserWindow,
  memory: Pick<WindowMemory, 'now' | 'keep'>,
  fileName: string,
  content: Uint8Array,
): Promise<'saved' | 'cancelled' | 'failed'> {
  for (;;) {
    const question = saveQuestion(fileName, memory.now.saveFolder)
    const { canceled, filePath } = await dialog.showSaveDialog(window, question)
    if (canceled || filePath === '') return 'cancelled'
    const path = withEnding(filePath, fileName)
    memory.keep({ saveFolder: dirname(path) })
    if (path === filePath || !existsSync(path) || (await mayReplace(window, path))) return put(path, content)
  }
}

async function mayReplace(window: BrowserWindow, path: string): Promise<boolean> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'question',
    message: `${basename(path)} is there already. Replace it?`,
    buttons: ['Choose another name', 'Replace'],
    defaultId: 0,
    cancelId: 0,
    noLink: true,
  })
  return response === 1
}

async function put(path: string, content: Uint8Array): Promise<'saved' | 'failed'> {
  const arriving = `${path}.part`
  try {
    await writeFile(arriving, content)
    await rename(arriving, path)
    return 'saved'
  } catch {
    await rm(arriving, { force: true }).catch(() => undefined)
    return 'failed'
  }
}
