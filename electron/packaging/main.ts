import { spawnSync } from 'node:child_process'
import { existsSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { en } from '../../core/words/index.ts'
import { isStale } from '../launch/freshness.ts'
import { builderVersion, configuration, publisherOf, type Platform } from './configuration.ts'
import { packedFiles } from './packed-files.ts'
import { thirdParty } from './third-party.ts'

// `npm run package`: builds what is stale, writes the licences and the configuration, and has electron-builder make the
// packages of this platform. electron-builder is no dependency: it is large, and of no use to those who only run Bedplate.
const root = join(import.meta.dirname, '../..')
const platform: Platform =
  process.platform === 'darwin' ? 'mac' : process.platform === 'win32' ? 'win' : 'linux'

if (build()) makePackages()
else process.exitCode = 1

function build(): boolean {
  const stale = (['renderer', 'desktop'] as const).filter((target) => isStale(root, target))
  if (stale.length === 0) return true
  console.error(en.packaging.building({ targets: stale }))
  return (
    spawnSync(process.execPath, [join(root, 'electron/launch/build.ts'), ...stale], {
      stdio: ['ignore', 2, 2],
    }).status === 0
  )
}

function makePackages(): void {
  writeFileSync(join(root, 'dist/THIRD-PARTY.txt'), thirdParty(root, packedFiles(root, platform)))
  const { extraMetadata, missing } = publisherOf(process.env)
  const complete = { ...configuration, extraMetadata }
  writeFileSync(join(root, 'dist/electron-builder.json'), JSON.stringify(complete, null, 2))
  if (missing.length > 0) console.error(en.packaging.noPublisher({ missing }))
  const files = packedFiles(root, platform)
  const bytes = files.map((file) => statSync(join(root, file)).size).reduce((sum, size) => sum + size, 0)
  console.error(en.packaging.size({ files: files.length, megabytes: bytes / 1e6 }))
  const unpacked = join(root, 'node_modules/electron/dist')
  const words = [
    '--yes',
    `electron-builder@${builderVersion}`,
    '--config',
    'dist/electron-builder.json',
    '--publish',
    'never',
    ...(existsSync(join(unpacked, 'version')) ? [`-c.electronDist=${unpacked}`] : []),
  ]
  console.error(`npx ${words.join(' ')}`)
  const { status } = spawnSync('npx', words, {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  })
  if (status === 0) return console.error(en.packaging.done({ folder: configuration.directories.output }))
  console.error(en.packaging.failed({ builder: builderVersion, platform }))
  process.exitCode = 1
}
