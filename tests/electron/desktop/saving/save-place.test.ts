import { describe, expect, it } from 'vitest'
import { saveQuestion, withEnding } from '../../../../electron/desktop/saving/save-place.ts'

describe('the question where a file is to be put', () => {
  it('is asked in the folder of last time, with the ending of the file, and again before one is written over', () => {
    expect(saveQuestion('Build sheet 2026/014: port.pdf', '/home/ana/sheets')).toEqual({
      defaultPath: '/home/ana/sheets/Build sheet 2026 014 port.pdf',
      filters: [{ name: 'PDF', extensions: ['pdf'] }],
      properties: ['showOverwriteConfirmation', 'createDirectory'],
    })
  })

  it('has no folder of its own at first', () => {
    expect(saveQuestion('2026-014 ferry 61-9f3c.bedplate', null)).toMatchObject({
      defaultPath: '2026-014 ferry 61-9f3c.bedplate',
      filters: [{ name: 'Exported build', extensions: ['bedplate'] }],
    })
  })
})

describe('the ending of a file that is saved', () => {
  it.each([
    ['/a/sheet', 'x.pdf', '/a/sheet.pdf'],
    ['/a/sheet.pdf', 'x.pdf', '/a/sheet.pdf'],
    ['/a/sheet.PDF', 'x.pdf', '/a/sheet.PDF'],
    ['/a/2026.014', 'x.csv', '/a/2026.014.csv'],
    ['/a/pdf', 'x.pdf', '/a/pdf.pdf'],
  ])('of %s for %s gives %s', (typed, fileName, path) => {
    expect(withEnding(typed, fileName)).toBe(path)
  })
})
