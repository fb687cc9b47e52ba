import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { contentPolicy, pageAt, readPages } from '../../../electron/pages/index.ts'
import { folder } from '../bench.ts'

function built() {
  const inFolder = folder()
  mkdirSync(join(inFolder, 'assets'))
  writeFileSync(join(inFolder, 'index.html'), '<title>Bedplate</title>')
  writeFileSync(join(inFolder, 'assets/font.woff2'), 'font')
  writeFileSync(join(inFolder, 'notes.exe'), 'nothing to serve')
  symlinkSync('/etc/hostname', join(inFolder, 'leak.txt'))
  return readPages(inFolder)
}

describe('the pages of the window', () => {
  it('are the built files of known kinds, by their exact paths', () => {
    const pages = built()
    expect([...pages.keys()].sort()).toEqual(['/', '/assets/font.woff2', '/index.html'])
    expect(pageAt(pages, '/assets/font.woff2')).toMatchObject({ type: 'font/woff2' })
    expect(pageAt(pages, '/#token')?.bytes.toString()).toContain('Bedplate')
  })

  it.each([
    '',
    'index.html',
    '/INDEX.HTML',
    '/index.html/..',
    '/leak.txt',
    '/notes.exe',
    '/constructor',
    '/assets/',
  ])('are not at %j', (path) => {
    expect(pageAt(built(), path)).toBeNull()
  })
})

describe('the content policy', () => {
  it('lets nothing in but what the program ships', () => {
    const rules = Object.fromEntries(
      contentPolicy.split('; ').map((rule) => [rule.split(' ')[0], rule.split(' ').slice(1)]),
    )
    expect(rules['default-src']).toEqual(["'none'"])
    expect(rules['script-src']).toEqual(["'self'"])
    expect(rules['frame-ancestors']).toEqual(["'none'"])
    expect(contentPolicy).not.toMatch(/unsafe|\*|http:/)
  })
})
