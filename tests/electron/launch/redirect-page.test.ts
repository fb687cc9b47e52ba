import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { writeRedirectPage } from '../../../electron/launch/redirect-page.ts'

const folder = mkdtempSync(join(tmpdir(), 'redirect-page-'))
afterAll(() => rmSync(folder, { recursive: true }))

describe('the page that leads a browser to the program', () => {
  it('holds the address, so that no command line has to', () => {
    const page = writeRedirectPage('http://127.0.0.1:4711/#secret', folder, false)
    expect(page).toBe(join(folder, 'open.html'))
    expect(readFileSync(page, 'utf8')).toContain('location.replace("http://127.0.0.1:4711/#secret")')
  })

  it.skipIf(process.platform === 'win32')('can be read by its user alone', () => {
    expect(statSync(writeRedirectPage('http://127.0.0.1:4711/#secret', folder, false)).mode & 0o777).toBe(
      0o600,
    )
  })

  it('cannot be broken out of by an address', () => {
    const page = writeRedirectPage('http://127.0.0.1:4711/#</script><script>"', folder, false)
    expect(readFileSync(page, 'utf8').match(/<\/?script>/g)).toHaveLength(2)
  })

  it('gives the window the room of the screen once, and later leaves it as it was left', () => {
    const address = 'http://127.0.0.1:4711/#secret'
    expect(readFileSync(writeRedirectPage(address, folder, true), 'utf8')).toMatch(
      /resizeTo\(screen\.availWidth, screen\.availHeight\); location\.replace/,
    )
    expect(readFileSync(writeRedirectPage(address, folder, false), 'utf8')).not.toContain('resizeTo')
  })

  it('replaces one that was left behind', () => {
    writeFileSync(join(folder, 'open.html'), 'old')
    expect(
      readFileSync(writeRedirectPage('http://127.0.0.1:4711/#new', folder, false), 'utf8'),
    ).not.toContain('old')
  })
})
