import { BrowserWindow } from 'electron'
import { done, refused } from '../../../core/problem/index.ts'
import type { SavePdf } from '../../requests/index.ts'
import type { FileSaver } from './file-saver.ts'

/** Prints the page in the window as it would go to paper, and asks where the file is to be put. */
export function savePdfBy(saver: FileSaver): SavePdf {
  return async ({ paper, fileName }) => {
    const [window] = BrowserWindow.getAllWindows()
    if (window === undefined) return refused('pdf-not-saved', {})
    const bytes = await window.webContents.printToPDF({
      pageSize: paper,
      printBackground: true,
      preferCSSPageSize: true,
    })
    const saved = await saver.save(`${fileName}.pdf`, bytes)
    if (saved.kind === 'failed') return refused('pdf-not-saved', {})
    return done({ path: saved.kind === 'saved' ? saved.path : null })
  }
}
