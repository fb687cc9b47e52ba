import { BrowserWindow } from 'electron'
import { done, refused } from '../../core/problem/index.ts'
import type { SavePdf } from '../requests/index.ts'
import { saveAsked } from './save-asked.ts'
import type { WindowMemory } from './window-memory.ts'

/** Prints the page in the window as it would go to paper, and asks where the file is to be put. */
export function savePdfAt(memory: Pick<WindowMemory, 'now' | 'keep'>): SavePdf {
  return async ({ paper, fileName }) => {
    const [window] = BrowserWindow.getAllWindows()
    if (window === undefined) return refused('pdf-not-saved', {})
    const bytes = await window.webContents.printToPDF({
      pageSize: paper,
      printBackground: true,
      preferCSSPageSize: true,
    })
    const saved = await saveAsked(window, memory, `${fileName}.pdf`, bytes)
    return saved === 'failed' ? refused('pdf-not-saved', {}) : done({ saved: saved === 'saved' })
  }
}
