import { cpSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync, truncateSync } from 'node:fs'
import { join } from 'node:path'
import { openStore, recordName, restoreRecord, backupsIn, copyBackup } from '../../electron/store/index.ts'
import { append, startOn } from './adding.ts'
import { chance } from './chance.ts'
import { found, type Fault } from './fault.ts'
import { withFolder } from './folder.ts'
import { lacksOf } from './kept.ts'

const going = new AbortController().signal

/** What takes the files away from under a running host. */
const removals: readonly ((folder: string) => void)[] = [
  (folder) => rmSync(join(folder, recordName)),
  (folder) => rmSync(join(folder, `${recordName}-wal`)),
  (folder) => renameSync(folder, `${folder}.away`),
  (folder) => truncateSync(join(folder, `${recordName}-wal`), 0),
  (folder) => truncateSync(join(folder, recordName), 0),
  (folder) => {
    const file = join(folder, recordName)
    cpSync(file, `${file}.copy`)
    renameSync(`${file}.copy`, file)
  },
]

export const faults: readonly Fault[] = [
  {
    name: 'file vanishes',
    must: 'nothing is confirmed after it, and a copy of what was confirmed can be written',
    async run(seed) {
      const random = chance(seed + 11)
      const wrong: string[] = []
      const counts = { removals: 0, confirmedBefore: 0, confirmedAfter: 0, copied: 0 }
      for (let round = 0; round < removals.length; round += 1)
        await withFolder(async (around) => {
          const folder = join(around, 'data')
          mkdirSync(folder)
          const store = await startOn(folder)
          const before = 1 + Math.floor(random() * 40)
          for (let seq = 1; seq <= before; seq += 1) append(store, seq)
          counts.confirmedBefore += before + 1
          const way = round % removals.length
          removals[way]!(folder)
          counts.removals += 1
          for (let press = 0; press < 20; press += 1)
            if (append(store, before + 1)) counts.confirmedAfter += 1
          const elsewhere = join(around, 'copy')
          const place = { folder: elsewhere, at: new Date(), after: 0, rotate: false, signal: going }
          const copy = await store.backUp(place)
          if (copy.ok && copy.value?.entries === before + 1) counts.copied += 1
          store.close()
        })
      if (counts.confirmedAfter > 0) wrong.push(`${counts.confirmedAfter} confirmed into nothing`)
      return found(counts, wrong)
    },
  },
  {
    name: 'restore storm',
    must: 'every file that was in the place of the record is kept, however fast backups are put in place',
    run: (seed) =>
      withFolder(async (around) => {
        const random = chance(seed + 12)
        const folder = join(around, 'data')
        mkdirSync(folder)
        const first = await startOn(folder)
        const place = {
          folder: join(folder, 'backups'),
          at: new Date(),
          after: 0,
          rotate: true,
          signal: going,
        }
        await first.backUp(place)
        first.close()
        const [backup] = backupsIn(place.folder)
        const lasts: number[] = []
        const at = new Date()
        for (let round = 0; round < 12; round += 1) {
          const opened = await openStore(folder, () => at)
          if (!opened.ok) throw new Error(opened.problem.code)
          const more = 1 + Math.floor(random() * 5)
          for (let seq = 1; seq <= more; seq += 1) append(opened.value, seq)
          opened.value.close()
          lasts.push(more + 1)
          await restoreRecord(folder, backup?.file ?? '', at)
        }
        const kept: number[] = []
        for (const name of readdirSync(folder).filter((each) => each.startsWith('kept-')))
          await withFolder(async (look) => {
            cpSync(join(folder, name), join(look, recordName))
            kept.push((await lacksOf(look, new Map())).entries)
          })
        const same = kept.toSorted().join() === lasts.toSorted().join()
        return found(
          { restores: lasts.length, kept: kept.length },
          same ? [] : [`kept ${kept.join()} of ${lasts.join()}`],
        )
      }),
  },
  {
    name: 'shared second folder',
    must: 'no bench takes another’s backups away',
    run: () =>
      withFolder(async (around) => {
        const shared = join(around, 'shared')
        mkdirSync(shared)
        const benches = 3
        const own = new Set<string>()
        for (let bench = 0; bench < benches; bench += 1) {
          const folder = join(around, `bench-${bench}`)
          mkdirSync(folder)
          const store = await startOn(folder)
          own.add(store.bench)
          for (let made = 0; made < 15; made += 1) {
            const place = {
              folder: join(folder, 'backups'),
              at: new Date(),
              after: 0,
              rotate: true,
              signal: going,
            }
            const backup = await store.backUp(place)
            if (backup.ok && backup.value !== null) await copyBackup(backup.value, shared)
          }
          store.close()
        }
        const counts = [...own].map((id) => backupsIn(shared).filter(({ bench }) => bench === id).length)
        const wrong = counts.every((count) => count === 12) ? [] : [`they have ${counts.join()}`]
        return found({ benches, backups: counts.reduce((a, b) => a + b, 0) }, wrong)
      }),
  },
  {
    name: 'half-restored',
    must: 'a power cut at any moment of a restore leaves the record, or one that is told to be missing; never an empty one',
    run: () =>
      withFolder(async (around) => {
        const folder = join(around, 'data')
        mkdirSync(folder)
        const store = await startOn(folder)
        const place = {
          folder: join(folder, 'backups'),
          at: new Date(),
          after: 0,
          rotate: true,
          signal: going,
        }
        await store.backUp(place)
        store.close()
        // The moment between the two renames: the present file is aside, the backup not yet in its place.
        renameSync(join(folder, recordName), join(folder, 'kept-20260302T073000Z-x.sqlite'))
        const opened = await openStore(folder, () => new Date())
        const isTold = !opened.ok && opened.problem.code === 'record-missing'
        if (opened.ok) opened.value.close()
        const isThere = existsSync(join(folder, recordName))
        return found({ moments: 1 }, [
          ...(isTold ? [] : ['it was not told']),
          ...(isThere ? ['an empty record was begun'] : []),
        ])
      }),
  },
]
