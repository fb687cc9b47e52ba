import { extname, isAbsolute, join } from 'node:path'
import type { SaveDialogOptions } from 'electron'
import { words } from '../../launch/spoken.ts'
import { plainFileName } from './file-name.ts'

const { saving } = words.desktop

const kinds = (): Readonly<Record<string, string>> => ({
  '.pdf': saving.pdf,
  '.csv': saving.table,
  '.svg': saving.drawing,
  '.bedplate': saving.exported,
  '.bedplate-spec': saving.spec,
})

/**
 * How the person is asked where a file is to be put: in the folder of last time, under a name that any disk takes. On Linux
 * a file that is there is written over without a question unless one is asked for (shell/browser/ui/file_dialog_linux.cc,
 * `SetOverwriteConfirmationShown`).
 */
export function saveQuestion(fileName: string, lastFolder: string | null): SaveDialogOptions {
  const ending = extname(fileName)
  const stem = ending === '' ? fileName : fileName.slice(0, -ending.length)
  const name = `${plainFileName(stem)}${ending}`
  return {
    defaultPath: lastFolder !== null && isAbsolute(lastFolder) ? join(lastFolder, name) : name,
    filters: [
      {
        name: kinds()[ending.toLowerCase()] ?? ending.slice(1).toUpperCase(),
        extensions: [ending.slice(1)],
      },
    ],
    properties: ['showOverwriteConfirmation', 'createDirectory'],
  }
}

/** The path with the ending that belongs to the file: the GTK dialog leaves it as it was typed. */
export function withEnding(path: string, fileName: string): string {
  const ending = extname(fileName)
  return path.toLowerCase().endsWith(ending.toLowerCase()) ? path : `${path}${ending}`
}
