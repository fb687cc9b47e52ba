import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { contract } from '../../../core/contract/index.ts'
import { requestNames } from '../../../electron/desktop/request-names.ts'

const electron = join(import.meta.dirname, '../../../electron')
const sources = readdirSync(electron, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts'))
  .map((path) => ({ path: path.replaceAll('\\', '/'), text: readFileSync(join(electron, path), 'utf8') }))

function naming(word: RegExp): string[] {
  return sources
    .filter(({ text }) => word.test(text.replace(/\/\*[^]*?\*\/|\/\/.*/g, '')))
    .map(({ path }) => path)
}

describe('the way into the desktop host', () => {
  it('is through one file that checks who asks', () => {
    expect(naming(/\bipcMain\b/)).toEqual(['desktop/ipc.ts'])
  })

  it('is through one function of the preload', () => {
    expect(naming(/\bexposeInMainWorld\b/)).toEqual(['desktop/preload.ts'])
    expect(naming(/\bipcRenderer\b/)).toEqual(['desktop/preload.ts'])
  })

  it('lets the names of the contract through, and no other', () => {
    expect([...requestNames].sort()).toEqual(Object.keys(contract).sort())
  })

  it('leads to no other program', () => {
    expect(naming(/\bopenExternal\b|\bopenPath\b|\bno-sandbox\b|\bbypassCSP\b/)).toEqual([])
  })
})
