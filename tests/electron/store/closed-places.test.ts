import { spawnSync } from 'node:child_process'
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { copyWhole } from '../../../electron/store/backups/copy.ts'
import { openStore } from '../../../electron/store/index.ts'
import { clock, folder, startBuild, store, value } from '../bench.ts'

const opening = join(import.meta.dirname, 'open-once.ts')
/** By POSIX nobody's number; any that is not root's would do. */
const nobody = 65_534

/** What an ordinary user is told who starts on this folder, or restores a backup into it: this user, or where that is root, nobody. */
function refusalFor(dataFolder: string, ...backup: string[]): string {
  const asOther = process.getuid?.() === 0 ? { uid: nobody, gid: nobody } : {}
  const { stdout, stderr } = spawnSync(process.execPath, [opening, dataFolder, ...backup], {
    encoding: 'utf8',
    ...asOther,
  })
  return stdout === '' ? stderr : stdout.trim()
}

/** A folder that an ordinary user may reach and write in. */
function ordinaryFolder(): string {
  const made = mkdtempSync(join(tmpdir(), 'bedplate-place-'))
  onTestFinished(() => rmSync(made, { recursive: true, force: true }))
  chmodSync(made, 0o777)
  return made
}

async function refusal(dataFolder: string): Promise<string> {
  const opened = await openStore(dataFolder, clock())
  if (!opened.ok) return sentenceOf(opened.problem)
  opened.value.close()
  return 'it was opened'
}

describe('a data folder', () => {
  it('that may be written is opened by an ordinary user, or this file would test nothing', () => {
    expect(refusalFor(join(ordinaryFolder(), 'data'))).toBe('open')
  })

  it('in a folder without the right to write is refused with what to do, and nothing is made or changed', () => {
    const place = join(ordinaryFolder(), 'locked')
    mkdirSync(place, { mode: 0o555 })
    for (const dataFolder of [place, join(place, 'data')]) {
      expect(refusalFor(dataFolder)).toBe(
        `Bedplate cannot write in its data folder ${dataFolder}. Give this user the right to write there. Or choose another folder with --data.`,
      )
    }
    expect(statSync(place).mode & 0o777).toBe(0o555)
    expect(readdirSync(place)).toEqual([])
  })

  it('that was closed after a record was begun in it is refused too', () => {
    const place = join(ordinaryFolder(), 'data')
    expect(refusalFor(place)).toBe('open')
    spawnSync('chmod', ['-R', 'a-w', place])
    onTestFinished(() => void spawnSync('chmod', ['-R', 'u+w', place]))
    expect(refusalFor(place)).toContain('Give this user the right to write there.')
  })

  it('that is closed takes no backup in place of its record', async () => {
    const inFolder = folder()
    const record = await store(inFolder)
    startBuild(record)
    const around = ordinaryFolder()
    const place = { folder: around, at: new Date(), after: 0, rotate: false }
    const backup = value(await record.backUp({ ...place, signal: new AbortController().signal }))!.file
    chmodSync(backup, 0o644)
    const [closed, open] = [join(around, 'closed'), join(around, 'open')]
    mkdirSync(closed, { mode: 0o555 })
    expect(refusalFor(closed, backup)).toContain(`No backup was put in ${closed}`)
    expect(readdirSync(closed)).toEqual([])
    expect(refusalFor(open, backup)).toBe('restored')
  })

  it('behind a link that leads nowhere is refused, and the place it leads to is not made', async () => {
    const place = folder()
    const [link, away] = [join(place, 'link'), join(place, 'stick')]
    symlinkSync(away, link)
    for (const dataFolder of [link, join(link, 'data')])
      expect(await refusal(dataFolder)).toContain('A link on the way to it leads nowhere')
    expect(existsSync(away)).toBe(false)
    mkdirSync(away)
    expect(await refusal(join(link, 'data'))).toBe('it was opened')
  })

  it('behind a link that leads to itself is refused', async () => {
    const link = join(folder(), 'link')
    symlinkSync('link', link)
    expect(await refusal(link)).toContain('A link on the way to it leads nowhere')
  })

  it('with a name longer than the system takes is refused', async () => {
    expect(await refusal(join(folder(), 'a'.repeat(300)))).toContain('longer than the system takes')
  })

  it.skipIf(process.platform !== 'linux')(
    'where folders cannot be made is refused, and not tried for ever',
    async () => {
      expect(await refusal('/proc/bedplate/data')).toContain(
        'cannot write in its data folder /proc/bedplate/data',
      )
    },
  )
})

describe('a disk that gives back less than it says a file has', () => {
  const short = '/sys/kernel/mm/transparent_hugepage/enabled' // of 4096 bytes by its size, and of some 30 when it is read

  it.skipIf(!existsSync(short))('is reported, and not asked for the rest for ever', () => {
    expect(() => copyWhole(short, join(folder(), 'copy'))).toThrow(/^\d+ of 4096 bytes could be read$/)
  })

  it('is none where a file is whole: the copy has the same bytes', () => {
    const place = folder()
    const bytes = Buffer.alloc(2_500_000, 'shell')
    writeFileSync(join(place, 'file'), bytes)
    copyWhole(join(place, 'file'), join(place, 'copy'))
    expect(readFileSync(join(place, 'copy')).equals(bytes)).toBe(true)
  })
})
