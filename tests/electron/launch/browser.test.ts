import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { browserAmong, browserPlaces } from '../../../electron/launch/browser.ts'

describe('places of a browser', () => {
  it('are all folders of PATH on Linux, name by name', () => {
    const places = browserPlaces('linux', { PATH: '/usr/bin:/opt/bin' }, '/home/ada')
    expect(places.slice(0, 2)).toEqual(['/usr/bin/chromium', '/opt/bin/chromium'])
    expect(places).toContain('/opt/bin/google-chrome')
  })

  it('are the program folders on Windows, of which some may not exist', () => {
    expect(browserPlaces('win32', { ProgramFiles: 'C:\\Program Files' }, 'C:\\Users\\ada')).toEqual([
      'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
      'C:\\Program Files\\Microsoft\\Edge\\Application\\msedge.exe',
    ])
  })

  it('are the two folders of applications on macOS', () => {
    expect(browserPlaces('darwin', {}, '/Users/ada').slice(0, 2)).toEqual([
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
      '/Users/ada/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    ])
  })
})

describe('the browser', () => {
  const folder = mkdtempSync(join(tmpdir(), 'browsers-'))
  afterAll(() => rmSync(folder, { recursive: true }))
  const place = (name: string) => join(folder, name)
  writeFileSync(place('snap'), '')
  symlinkSync(place('snap'), place('a-snap'))
  writeFileSync(place('leads-to-a-snap'), '#!/bin/sh\nexec /snap/bin/chromium "$@"\n')
  writeFileSync(place('packaged'), '#!/bin/sh\nexec /usr/lib/chromium/chromium "$@"\n')

  it('is the first that is there', () => {
    expect(browserAmong([place('none'), place('packaged')])).toBe(place('packaged'))
  })

  it('is none that may not read the data folder', () => {
    expect(browserAmong([place('a-snap'), place('leads-to-a-snap'), place('packaged')])).toBe(
      place('packaged'),
    )
    expect(browserAmong([place('a-snap')])).toBeUndefined()
  })
})
