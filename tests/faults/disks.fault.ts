import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { sentenceOf } from '../../core/problem/index.ts'
import {
  backupFolder,
  backupsIn,
  copyBackup,
  openStore,
  recordName,
  restoreRecord,
} from '../../electron/store/index.ts'
import { append, startOn } from './adding.ts'
import { chance } from './chance.ts'
import { acknowledged, childOf, confirming } from './child.ts'
import { makeReadOnly, onDisk } from './disk.ts'
import { found, type Fault, type Found } from './fault.ts'
import { lacksOf } from './kept.ts'
import { noStrace } from './trace.ts'

const going = new AbortController().signal

/** A record's whole life on a disk: made, confirmed into, killed, opened again, backed up, restored. */
async function lifeOn(disk: string, seed: number): Promise<Found> {
  const random = chance(seed + 51)
  const folder = join(disk, 'data')
  const confirmed = new Map<string, number>()
  const wrong: string[] = []
  for (let kill = 0; kill < 3; kill += 1) {
    const child = childOf([process.execPath, confirming, folder])
    const after = 5 + Math.floor(random() * 30)
    await child.until((lines) => lines.length > after)
    await child.kill()
    for (const [build, seq] of acknowledged(child.lines)) confirmed.set(build, seq)
    wrong.push(...(await lacksOf(folder, confirmed)).lacks)
  }
  const opened = await openStore(folder, () => new Date())
  if (!opened.ok) return found({}, [sentenceOf(opened.problem)])
  const place = { folder: backupFolder(folder), at: new Date(), after: 0, rotate: true, signal: going }
  const made = await opened.value.backUp(place)
  const second = join(disk, 'second')
  mkdirSync(second)
  if (!made.ok || made.value === null) wrong.push('no backup was made')
  else if (!(await copyBackup(made.value, second)).ok) wrong.push('no second copy was made')
  opened.value.close()
  const [backup] = backupsIn(second)
  const restored = await restoreRecord(folder, backup?.file ?? '', new Date())
  if (!restored.ok) wrong.push(sentenceOf(restored.problem))
  const kept = await lacksOf(folder, confirmed)
  const left = readdirSync(folder).filter((name) => name.startsWith('new-'))
  if (left.length > 0) wrong.push(`left behind: ${left.join()}`)
  return found({ kills: 3, entries: kept.entries, backups: backupsIn(second).length }, [
    ...wrong,
    ...kept.lacks,
  ])
}

const life = 'a record is made, confirmed into, killed, opened, backed up and restored as on any other disk'

export const faults: readonly Fault[] = [
  { name: 'FAT disk', must: life, run: (seed) => onDisk('fat', (disk) => lifeOn(disk, seed)) },
  {
    name: 'case-insensitive disk',
    must: `${life}; under its name in other letters it is the same record`,
    run: (seed) =>
      onDisk('case-insensitive', async (disk): Promise<Found> => {
        const lived = await lifeOn(disk, seed)
        if (!('holds' in lived) || !lived.holds) return lived
        const same = await lacksOf(join(disk, 'DATA'), new Map())
        const isSame = same.lacks.length === 0 && same.entries === lived.counts.entries
        return found({ ...lived.counts, folders: readdirSync(disk).length }, [
          ...(isSame ? [] : [`under the name in capitals ${same.entries} entries: ${same.lacks.join()}`]),
        ])
      }),
  },
  {
    name: 'disk that becomes full',
    must: '“not saved” is said, nothing that was said is lost, and it goes on when there is room again',
    run: () =>
      onDisk('small', async (disk): Promise<Found> => {
        const folder = join(disk, 'data')
        const store = await startOn(folder)
        store.close()
        const ballast = join(disk, 'ballast')
        for (let kilobytes = 64; kilobytes >= 4; kilobytes /= 2)
          for (;;)
            try {
              writeFileSync(ballast, Buffer.alloc(kilobytes * 1024), { flag: 'a' })
              if (kilobytes === 4) continue
            } catch {
              break
            }
        // What is left is nothing: the start itself has to say so, or to go on with the room that the record has.
        const full = await openStore(folder, () => new Date())
        let [after, refused] = [1, 0]
        const wrong: string[] = []
        if (full.ok) {
          for (let tries = 0; tries < 200; tries += 1)
            if (append(full.value, after)) after += 1
            else refused += 1
          full.value.close()
        } else if (full.problem.code !== 'record-not-saved') wrong.push(sentenceOf(full.problem))
        else refused += 1
        if (refused === 0) wrong.push('nothing was refused, so the disk was not full')
        rmSync(ballast)
        const again = await openStore(folder, () => new Date())
        if (!again.ok) return found({ refused }, [sentenceOf(again.problem)])
        const there = again.value.entries(again.value.lastBuild() ?? '').length
        if (there < after) wrong.push(`${there} of ${after} entries are there`)
        if (!append(again.value, there)) wrong.push('it does not go on although there is room')
        again.value.close()
        return found({ confirmedWhileFull: after - 1, refused, entries: there }, wrong)
      }),
  },
  {
    name: 'read-only disk',
    must: 'the start says why and what to do, and nothing is written',
    run: () =>
      onDisk('bound', async (disk): Promise<Found> => {
        const wrong: string[] = []
        const closed = join(disk, 'closed')
        ;(await startOn(closed)).close()
        const before = readFileSync(join(closed, recordName))
        const why = makeReadOnly(disk)
        if (why !== null) return { skipped: why }
        for (const folder of [closed, join(disk, 'new')]) {
          const opened = await openStore(folder, () => new Date())
          if (opened.ok) {
            wrong.push(`${folder} was opened`)
            opened.value.close()
          } else if (!sentenceOf(opened.problem).includes('can only be read'))
            wrong.push(sentenceOf(opened.problem))
        }
        if (!readFileSync(join(closed, recordName)).equals(before)) wrong.push('the record was touched')
        if (existsSync(join(disk, 'new'))) wrong.push('a folder was made')
        return found({ starts: 2 }, wrong)
      }),
  },
  {
    name: 'disk without rights',
    must: 'a disk that refuses to close a file to others, as FAT does, keeps a record all the same',
    async run(): Promise<Found> {
      const lacking = noStrace()
      if (lacking !== null) return { skipped: lacking }
      return onDisk('small', async (disk): Promise<Found> => {
        const folder = join(disk, 'data')
        const inject = ['-e', 'trace=chmod,fchmod,fchmodat', '-e', 'inject=chmod,fchmod,fchmodat:error=EPERM']
        const child = childOf([
          'strace',
          '-f',
          '-qq',
          '-o',
          '/dev/null',
          ...inject,
          process.execPath,
          confirming,
          folder,
        ])
        await child.until((lines) => lines.length > 20)
        await child.kill()
        const kept = await lacksOf(folder, acknowledged(child.lines))
        return found({ confirmed: child.lines.length, entries: kept.entries }, kept.lacks)
      })
    },
  },
]
