import { describe, expect, it } from 'vitest'
import { done, refused } from '../../../core/problem/index.ts'
import { savePdf } from '../../../renderer/sheet/save-pdf.ts'
import { twin } from '../twin.ts'

const page = { paper: 'A4', fileName: 'Build sheet 2026-014 61-9f3c0a1b2c3d4e5f' } as const

async function saved(answer: 'by the host' | 'by the browser' | 'not at all') {
  let prints = 0
  const { client, requests } = twin({
    'sheet.pdf': () =>
      answer === 'by the host'
        ? done({ path: '/home/ana/sheet.pdf' })
        : refused(answer === 'by the browser' ? 'pdf-by-browser' : 'pdf-not-saved', {}),
  })
  const outcome = await savePdf(client, () => void (prints += 1), page)
  return { prints, outcome, requests }
}

describe('a page as PDF', () => {
  it('is made by the desktop host, on the paper that was chosen', async () => {
    const { prints, outcome, requests } = await saved('by the host')
    expect([prints, outcome]).toEqual([0, { kind: 'saved', path: '/home/ana/sheet.pdf' }])
    expect(requests).toEqual([{ name: 'sheet.pdf', input: page }])
  })

  it('is left to the browser’s own print where there is a browser', async () => {
    expect(await saved('by the browser')).toMatchObject({ prints: 1, outcome: null })
  })

  it('that could not be written is reported, and nothing is printed instead', async () => {
    expect(await saved('not at all')).toMatchObject({
      prints: 0,
      outcome: { kind: 'refused', problem: { code: 'pdf-not-saved' } },
    })
  })
})
