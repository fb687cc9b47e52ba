import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { electronBinary, fetchElectron, wasTried } from '../../../electron/launch/electron-binary.ts'

let root: string
let folder: string

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'electron-'))
  folder = join(root, 'node_modules/electron')
  mkdirSync(folder, { recursive: true })
  install('1.0.0', 'process.exit(1)')
})
afterEach(() => rmSync(root, { recursive: true }))

function install(version: string, installer: string): void {
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ version }))
  writeFileSync(join(folder, 'install.js'), installer)
}

const unpacks = `
  const fs = require('node:fs')
  fs.writeFileSync(__dirname + '/path.txt', 'electron')
  fs.mkdirSync(__dirname + '/dist')
  fs.writeFileSync(__dirname + '/dist/electron', '')
`

describe("Electron's program", () => {
  it('is not there with the package alone', () => {
    expect(electronBinary(root)).toBeUndefined()
    expect(wasTried(root)).toBe(false)
  })

  it('is there once it was fetched', async () => {
    install('1.0.0', unpacks)
    expect(await fetchElectron(root)).toBe(true)
    expect(electronBinary(root)).toBe(join(folder, 'dist/electron'))
  })

  it('is not there when it was unpacked in part', async () => {
    install('1.0.0', unpacks)
    await fetchElectron(root)
    rmSync(join(folder, 'dist'), { recursive: true })
    expect(electronBinary(root)).toBeUndefined()
  })

  it('is tried for once only, until another version is wanted', async () => {
    expect(await fetchElectron(root)).toBe(false)
    expect(wasTried(root)).toBe(true)
    install('1.0.1', 'process.exit(1)')
    expect(wasTried(root)).toBe(false)
  })
})
