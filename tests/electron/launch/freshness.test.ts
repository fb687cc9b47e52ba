import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { digestOf, digestOfSources, isStale, noteBuilt } from '../../../electron/launch/freshness.ts'

let root: string

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'build-'))
  for (const folder of ['renderer', 'core/bearing', 'electron'])
    mkdirSync(join(root, folder), { recursive: true })
  writeFileSync(join(root, 'renderer/main.ts'), 'one')
  writeFileSync(join(root, 'core/bearing/index.ts'), 'two')
})

afterEach(() => rmSync(root, { recursive: true }))

function build(): void {
  mkdirSync(join(root, 'dist/renderer'), { recursive: true })
  noteBuilt(root, 'renderer', digestOfSources(root, 'renderer'))
}

describe('a build', () => {
  it('is stale before it was ever made', () => {
    expect(isStale(root, 'renderer')).toBe(true)
  })

  it('is fresh after it was made, whatever the times of the files', () => {
    build()
    writeFileSync(join(root, 'renderer/main.ts'), 'one')
    expect(isStale(root, 'renderer')).toBe(false)
  })

  it('is stale when a source changed, came, or went', () => {
    build()
    writeFileSync(join(root, 'core/bearing/index.ts'), 'changed')
    expect(isStale(root, 'renderer')).toBe(true)
    build()
    writeFileSync(join(root, 'renderer/App.svelte'), '')
    expect(isStale(root, 'renderer')).toBe(true)
    build()
    rmSync(join(root, 'renderer/App.svelte'))
    expect(isStale(root, 'renderer')).toBe(true)
  })

  it('is stale when it was deleted, though the note of it was not', () => {
    build()
    rmSync(join(root, 'dist/renderer'), { recursive: true })
    expect(isStale(root, 'renderer')).toBe(true)
  })

  it('does not depend on what it is not made from', () => {
    build()
    writeFileSync(join(root, 'electron/main.ts'), 'new')
    expect(isStale(root, 'renderer')).toBe(false)
  })
})

describe('the digest of sources', () => {
  it('tells a name from a content', () => {
    const before = digestOf(root, ['renderer'])
    rmSync(join(root, 'renderer/main.ts'))
    writeFileSync(join(root, 'renderer/mai'), 'n.tsone')
    expect(digestOf(root, ['renderer'])).not.toBe(before)
  })
})
