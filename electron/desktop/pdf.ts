import { writeFile } from 'node:fs/promises'
import { BrowserWindow, dialog } from 'electron'
import { done, refused } from '../../core/problem/index.ts'
import type { SavePdf } from '../requests/index.ts'
import { plainFileName } from './file-name.ts'

/** Prints the page in the window as it would go to paper, and asks where the file is to be put. */
export const savePdf: SavePdf = async ({ paper, fileName }) => {
  const [window] = BrowserWindow.getAllWindows()
  if (window === undefined) return refused('pdf-not-saved', {})
  const bytes = await window.webContents.printToPDF({
    pageSize: paper,
    printBackground: true,
    preferCSSPageSize: true,
  })
  const { canceled, filePath } = await dialog.showSaveDialog(window, {
    defaultPath: `${plainFileName(fileName)}.pdf`,
    filters: [{ name: 'PDF', extensions: ['pdf'] }],
  })
  if (canceled) return done({ saved: false })
  try {
    await writeFile(filePath, bytes)
    return done({ saved: true })
  } catch {
    return refused('pdf-not-saved', {})
  }
}
