import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { folder } from '../bench.ts'

/** Electron's part is played here: what it does with a page can only be seen where its binary is. */
const played = vi.hoisted(() => ({
  printed: [] as unknown[],
  asked: [] as unknown[],
  chosen: '',
  windows: 1,
}))
vi.mock('electron', () => {
  const window = {
    webContents: {
      printToPDF: (options: unknown) => {
        played.printed.push(options)
        return Promise.resolve(Buffer.from('%PDF-1.7'))
      },
    },
  }
  return {
    BrowserWindow: { getAllWindows: () => Array.from({ length: played.windows }, () => window) },
    dialog: {
      showSaveDialog: (_: unknown, options: unknown) => {
        played.asked.push(options)
        return Promise.resolve({ canceled: played.chosen === '', filePath: played.chosen })
      },
    },
  }
})
const { savePdf } = await import('../../../electron/desktop/pdf.ts')

beforeEach(() => Object.assign(played, { printed: [], asked: [], chosen: '', windows: 1 }))

describe('the sheet as PDF in the desktop host', () => {
  it('is printed with the page’s own margins, and put where the person says, under a name any disk takes', async () => {
    played.chosen = join(folder(), 'sheet.pdf')
    expect(await savePdf({ paper: 'Letter', fileName: 'Build sheet 2026/014: port' })).toEqual({
      ok: true,
      value: { saved: true },
    })
    expect(played.printed).toEqual([{ pageSize: 'Letter', printBackground: true, preferCSSPageSize: true }])
    expect(played.asked).toMatchObject([{ defaultPath: 'Build sheet 2026 014 port.pdf' }])
    expect(readFileSync(played.chosen, 'utf8')).toBe('%PDF-1.7')
  })

  it('is not saved where nobody chose a place, which is no problem', async () => {
    expect(await savePdf({ paper: 'A4', fileName: 'sheet' })).toEqual({ ok: true, value: { saved: false } })
  })

  it('is told of where it cannot be written, or the window has gone', async () => {
    played.chosen = join(folder(), 'no such folder', 'sheet.pdf')
    const problem = { ok: false, problem: { code: 'pdf-not-saved' } }
    expect(await savePdf({ paper: 'A4', fileName: 'sheet' })).toMatchObject(problem)
    played.windows = 0
    expect(await savePdf({ paper: 'A4', fileName: 'sheet' })).toMatchObject(problem)
  })
})
