import { describe, expect, it } from 'vitest'
import { inBrowser } from '../../../../electron/desktop/starting/in-browser.ts'
import { folder, store } from '../../bench.ts'
import { asking } from '../../requests/asking.ts'

describe('the desktop host seen from a browser', () => {
  it('says that it is the local one, leaves PDFs and files to the browser, and answers the rest as ever', async () => {
    const { answer } = asking(await store(folder()))
    const seen = inBrowser((name, input) => answer(name, input))
    expect(await seen('host.read', {})).toMatchObject({ ok: true, value: { host: 'local', problem: null } })
    expect(await seen('sheet.pdf', { paper: 'A4', fileName: 'x' })).toMatchObject({
      ok: false,
      problem: { code: 'pdf-by-browser' },
    })
    expect(await seen('files.save', { fileName: 'x.csv', text: '' })).toMatchObject({
      ok: false,
      problem: { code: 'save-by-browser' },
    })
    expect(await seen('builds.list', {})).toEqual(await answer('builds.list', {}))
  })
})
