import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { textIn } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { findElectron } from '../../../electron/launch/electron-binary.ts'

let root: string
let folder: string

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'electron-'))
  folder = join(root, 'node_modules/electron')
  mkdirSync(join(folder, 'dist'), { recursive: true })
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ version: '45.4.1' }))
})
afterEach(() => rmSync(root, { recursive: true }))

/** Lays a program down as Electron's archive does, with its version beside it. */
function unpack(at: string, version: string): string {
  mkdirSync(at, { recursive: true })
  writeFileSync(join(at, 'version'), version)
  writeFileSync(join(at, 'electron'), '')
  return join(at, 'electron')
}

describe("Electron's program", () => {
  it('is not there with the package alone', () => {
    expect(findElectron(root, undefined)).toEqual({ kind: 'absent' })
  })

  it.each(['45.4.1', 'v45.4.1\n'])('is there once its archive of version %j was unpacked', (version) => {
    writeFileSync(join(folder, 'path.txt'), 'electron')
    const binary = unpack(join(folder, 'dist'), version)
    expect(findElectron(root, undefined)).toEqual({ kind: 'there', binary })
  })

  it('is not there when it was unpacked in part', () => {
    const binary = unpack(join(folder, 'dist'), '45.4.1')
    expect(findElectron(root, undefined)).toEqual({ kind: 'absent' }) // path.txt is written last
    writeFileSync(join(folder, 'path.txt'), 'electron')
    rmSync(binary)
    expect(findElectron(root, undefined)).toEqual({ kind: 'absent' })
  })

  it('is not there when it is of another version than its package, and is fetched again', () => {
    writeFileSync(join(folder, 'path.txt'), 'electron')
    unpack(join(folder, 'dist'), '45.4.0')
    expect(findElectron(root, undefined)).toEqual({ kind: 'absent' })
  })
})

describe('a program that BEDPLATE_ELECTRON names', () => {
  it('is taken before the one of the project, and may be of another minor version', () => {
    writeFileSync(join(folder, 'path.txt'), 'electron')
    unpack(join(folder, 'dist'), '45.4.1')
    const binary = unpack(join(root, 'elsewhere'), '45.9.0')
    expect(findElectron(root, binary)).toEqual({ kind: 'there', binary })
  })

  it('has its version three folders above on macOS', () => {
    const bundle = join(root, 'elsewhere/Electron.app/Contents/MacOS')
    mkdirSync(bundle, { recursive: true })
    writeFileSync(join(bundle, 'Electron'), '')
    writeFileSync(join(root, 'elsewhere/version'), '45.4.1')
    expect(findElectron(root, join(bundle, 'Electron'))).toMatchObject({ kind: 'there' })
  })

  it.each([
    ['is nowhere', () => join(root, 'none'), /names .*none, where there is nothing$/],
    ['is a folder', () => root, /which is not a program$/],
    [
      'is something else',
      () => {
        writeFileSync(join(root, 'tool'), '#!/bin/sh\n')
        return join(root, 'tool')
      },
      /which is not Electron: no file “version” lies with it$/,
    ],
    [
      'is of another major version',
      () => unpack(join(root, 'old'), '28.0.0'),
      /which is Electron 28\.0\.0, and Bedplate needs 45\.4\.1$/,
    ],
  ])('that %s is reported, and nothing else is looked for', (_, named, why) => {
    const found = findElectron(root, named())
    expect(found.kind === 'unfit' && textIn(en, en.phrases, found.why)).toMatch(why)
  })

  it('is none when the variable is empty', () => {
    expect(findElectron(root, '')).toEqual({ kind: 'absent' })
  })
})
