import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { folder } from '../../bench.ts'

/** Electron's part is played here: what it does with a page can only be seen where its binary is. */
const played = vi.hoisted(() => ({
  printed: [] as unknown[],
  asked: [] as unknown[],
  boxes: [] as unknown[],
  chosen: [''],
  button: 0,
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
        const filePath = played.chosen.shift() ?? ''
        return Promise.resolve({ canceled: filePath === '', filePath })
      },
      showMessageBox: (_: unknown, options: unknown) => {
        played.boxes.push(options)
        return Promise.resolve({ response: played.button })
      },
    },
  }
})
const { savePdfBy } = await import('../../../../electron/desktop/saving/pdf.ts')
const { FileSaver } = await import('../../../../electron/desktop/saving/file-saver.ts')

/** The folder of last time, as the window remembers it. */
let saveFolder: string | null = null
const savePdf = savePdfBy(
  new FileSaver({
    get now() {
      return { place: null, theme: 'light', language: null, saveFolder } as const
    },
    keep: (change) => void (saveFolder = change.saveFolder ?? null),
  }),
)

beforeEach(() => {
  Object.assign(played, { printed: [], asked: [], boxes: [], chosen: [''], button: 0, windows: 1 })
  saveFolder = null
})

describe('the sheet as PDF in the desktop host', () => {
  it('is printed with the page’s own margins, and put where the person says, under a name any disk takes', async () => {
    const path = join(folder(), 'sheet.pdf')
    played.chosen = [path]
    expect(await savePdf({ paper: 'Letter', fileName: 'Build sheet 2026/014: port' })).toEqual({
      ok: true,
      value: { path },
    })
    expect(played.printed).toEqual([{ pageSize: 'Letter', printBackground: true, preferCSSPageSize: true }])
    expect(played.asked).toMatchObject([
      {
        defaultPath: 'Build sheet 2026 014 port.pdf',
        properties: expect.arrayContaining(['showOverwriteConfirmation']) as unknown,
      },
    ])
    expect(readFileSync(path, 'utf8')).toBe('%PDF-1.7')
    expect(readdirSync(dirname(path))).toEqual(['sheet.pdf'])
  })

  it('is offered in the folder of last time', async () => {
    const path = join(folder(), 'sheet.pdf')
    played.chosen = [path, '']
    await savePdf({ paper: 'A4', fileName: 'one' })
    await savePdf({ paper: 'A4', fileName: 'two' })
    expect(played.asked[1]).toMatchObject({ defaultPath: join(dirname(path), 'two.pdf') })
  })

  it('gets its ending where that was not typed, and replaces nothing for that without a question', async () => {
    const path = join(folder(), 'sheet')
    writeFileSync(`${path}.pdf`, 'precious')
    played.chosen = [path, '']
    expect(await savePdf({ paper: 'A4', fileName: 'sheet' })).toEqual({ ok: true, value: { path: null } })
    expect(played.boxes).toMatchObject([{ message: 'sheet.pdf is there already. Replace it?' }])
    expect(readFileSync(`${path}.pdf`, 'utf8')).toBe('precious')

    played.chosen = [path]
    played.button = 1
    expect(await savePdf({ paper: 'A4', fileName: 'sheet' })).toEqual({
      ok: true,
      value: { path: `${path}.pdf` },
    })
    expect(readFileSync(`${path}.pdf`, 'utf8')).toBe('%PDF-1.7')
  })

  it('is not saved where nobody chose a place, which is no problem', async () => {
    expect(await savePdf({ paper: 'A4', fileName: 'sheet' })).toEqual({ ok: true, value: { path: null } })
  })

  it('is reported where it cannot be written, or the window has gone', async () => {
    played.chosen = [join(folder(), 'no such folder', 'sheet.pdf')]
    const problem = { ok: false, problem: { code: 'pdf-not-saved' } }
    expect(await savePdf({ paper: 'A4', fileName: 'sheet' })).toMatchObject(problem)
    played.windows = 0
    expect(await savePdf({ paper: 'A4', fileName: 'sheet' })).toMatchObject(problem)
  })
})
