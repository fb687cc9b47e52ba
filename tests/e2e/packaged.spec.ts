import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { builtinModules } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from '@playwright/test'
import { platforms } from '../../electron/packaging/configuration.ts'
import { packedFiles } from '../../electron/packaging/packed-files.ts'
import { thirdParty } from '../../electron/packaging/third-party.ts'
import { ChromiumSurface } from '../electron-stand-in/page/chromium.ts'
import { StandIn } from '../electron-stand-in/page/stand-in.ts'
import { en } from '../../core/words/index.ts'
import { withDataFolder } from './hosts/host.ts'

const root = join(import.meta.dirname, '../..')

/** What main imports when it is loaded, by the words of its own bundle. */
const imported = [
  ...readFileSync(join(root, 'dist/desktop/main.js'), 'utf8').matchAll(/^import\b.*?\bfrom "([^"]+)";$/gm),
]
  .map(([, name = '']) => name)
  .filter((name) => name !== 'electron' && !builtinModules.includes(name.replace(/^node:/, '')))

test('everything that main loads lies in the package, and nothing of tests, gallery or development', () => {
  expect(platforms).toHaveLength(3)
  for (const platform of platforms) {
    const files = packedFiles(root, platform)
    for (const file of [
      'dist/desktop/main.js',
      'dist/desktop/preload.cjs',
      'dist/renderer/index.html',
      'assets/icon.png',
      'specs/skerry-3.json',
    ])
      expect(files, platform).toContain(file)
    expect(
      files.filter((file) =>
        /gallery|\.test\.|\.spec\.|\.svelte$|(^|\/)(tests?|playwright|vitest|vite|typescript|electron)\//.test(
          file.replace('node_modules/zod/src', ''),
        ),
      ),
    ).toEqual([])
  }
})

/** A folder that holds the packed files of Linux and nothing else, while it is used. */
async function withPackedFiles(use: (folder: string) => Promise<void> | void): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'packaged-'))
  try {
    for (const file of packedFiles(root, 'linux')) cpSync(join(root, file), join(folder, file))
    await use(folder)
  } finally {
    rmSync(folder, { recursive: true })
  }
}

test('the program starts from the packed files alone, and its window shows the engines that it brings', async ({
  page,
}) => {
  await withPackedFiles((folder) =>
    withDataFolder(async (data) => {
      const surface = new ChromiumSurface(page)
      const standIn = await StandIn.on(surface)
      try {
        const exported = join(data, 'picture.bedplate')
        writeFileSync(exported, 'GIF89a')
        const state = { XDG_STATE_HOME: join(data, 'state') }
        const { output } = await standIn.startPacked(folder, ['--data', data, exported], state)
        await expect(page.getByRole('heading', { name: en.engines.startOn }), output()).toBeVisible()
        await expect(page.getByRole('button', { name: /Skerry 3/ })).toBeVisible()
        // A packed program has no folder among its words: the first one is a file already.
        await expect(page.getByRole('alert')).toContainText('picture.bedplate: ')
      } finally {
        await standIn.close()
      }
    }),
  )
})

test('the packages of main load from a folder that holds the packed files alone', async () => {
  expect(imported).toContain('better-sqlite3')
  await withPackedFiles((folder) => {
    const script = `for (const name of ${JSON.stringify(imported)}) await import(name)
      const { default: Database } = await import('better-sqlite3')
      console.log(String(new Database(':memory:').prepare('SELECT 7').pluck().get()))`
    const words = ['--input-type=module', '--eval', script]
    const { stdout, stderr } = spawnSync(process.execPath, words, { cwd: folder, encoding: 'utf8' })
    expect(stderr).toBe('')
    expect(stdout).toBe('7\n')
  })
})

test('the licences of all that is shipped are named, fonts and what the window is made of too', () => {
  const text = thirdParty(root, packedFiles(root, 'linux'))
  for (const name of [
    'better-sqlite3',
    'zod',
    'uuid',
    'canonicalize',
    'papaparse',
    'postgres',
    'konva',
    'svelte',
    'uqr',
    '@fontsource/atkinson-hyperlegible-next',
    'Atkinson Hyperlegible (OFL-1.1)',
  ])
    expect(text).toContain(name)
  expect(text).not.toContain(en.packaging.noLicenceText)
})
