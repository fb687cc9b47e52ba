import { copyFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { openStore, recordName } from '../../electron/store/index.ts'
import { chance } from './chance.ts'
import { childOf, confirming } from './child.ts'
import { found } from './fault.ts'
import type { Fault } from './fault.ts'
import { withFolder } from './folder.ts'

const headerBytes = 32
const frameHeaderBytes = 24
const walOf = (folder: string): string => join(folder, `${recordName}-wal`)

/** Where each commit of a write-ahead log ends, by SQLite's file format: its last frame tells the size of the file. */
function commitEnds(wal: Buffer): readonly number[] {
  const frameBytes = frameHeaderBytes + wal.readUInt32BE(8)
  const salt = wal.subarray(16, 24)
  const ends: number[] = []
  for (let at = headerBytes; at + frameBytes <= wal.length; at += frameBytes) {
    if (!wal.subarray(at + 8, at + 16).equals(salt)) break
    if (wal.readUInt32BE(at + 4) !== 0) ends.push(at + frameBytes)
  }
  return ends
}

/** How many entries the record holds in all when its log is this one. */
async function entriesWith(file: string, wal: Buffer): Promise<number | string> {
  return withFolder(async (folder) => {
    copyFileSync(file, join(folder, recordName))
    writeFileSync(walOf(folder), wal)
    const opened = await openStore(folder, () => new Date())
    if (!opened.ok) return opened.problem.code
    const store = opened.value
    const entries = store.builds().reduce((count, { id }) => count + store.entries(id).length, 0)
    store.close()
    return entries
  })
}

export const faults: readonly Fault[] = [
  {
    name: 'torn write-ahead log',
    must: 'exactly the commits whose last frame is whole',
    run: (seed) =>
      withFolder(async (folder) => {
        const begun = await openStore(folder, () => new Date())
        if (begun.ok) begun.value.close()
        const child = childOf([process.execPath, confirming, folder])
        await child.until((lines) => lines.length > 25)
        await child.kill()
        if (!existsSync(walOf(folder))) throw new Error('the killed host left no log')
        const file = join(folder, recordName)
        const wal = readFileSync(walOf(folder))
        const ends = commitEnds(wal)
        const wrong: string[] = []
        const expect = async (what: string, image: Buffer, wholeUntil: number): Promise<void> => {
          const commits = ends.filter((end) => end <= wholeUntil).length
          const entries = await entriesWith(file, image)
          if (entries !== commits) wrong.push(`${what}: ${entries} entries after ${commits} commits`)
        }
        const end = ends.at(-1) ?? 0
        const cuts = 150
        for (let cut = 0; cut <= cuts; cut += 1) {
          const length = Math.round((end / cuts) * cut)
          await expect(`cut at ${length}`, wal.subarray(0, length), length)
        }
        const random = chance(seed + 3)
        const flips = 200
        for (let flip = 0; flip < flips; flip += 1) {
          const at = Math.floor(random() * end)
          const image = Buffer.from(wal)
          image.writeUInt8(image.readUInt8(at) ^ (1 << Math.floor(random() * 8)), at)
          await expect(`bit at ${at}`, image, at < headerBytes ? 0 : at)
        }
        return found({ commits: ends.length, cuts, flips }, wrong)
      }),
  },
]
