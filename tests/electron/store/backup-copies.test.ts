import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { backupsIn, copyBackup } from '../../../electron/store/index.ts'
import { folder, value } from '../bench.ts'
import { going, backUp, twoBuilds } from './backing-up.ts'

describe('the second copy of a backup', () => {
  it('is the same bytes under the same name', async () => {
    const { record, backups } = await twoBuilds()
    const second = folder()
    const made = value(await backUp(record, backups, going))
    if (made === null) throw new Error('no backup was made')
    value(await copyBackup(made, second))
    expect(readdirSync(second)).toEqual([made.name])
    expect(readFileSync(join(second, made.name))).toEqual(readFileSync(made.file))
  })

  it('clears away what a power cut left of an earlier copy of this bench, and nobody else’s', async () => {
    const { record, backups } = await twoBuilds()
    const made = value(await backUp(record, backups, going))!
    const shared = folder()
    const half = join(shared, `${made.name.replace(made.head, '0'.repeat(16))}.part`)
    const others = [
      join(shared, `${made.name.replace(record.bench, '0'.repeat(12))}.part`),
      join(shared, 'film.part'),
    ]
    for (const each of [half, ...others]) writeFileSync(each, 'half')
    value(await copyBackup(made, shared))
    expect(existsSync(half)).toBe(false)
    expect(others.filter((each) => existsSync(each))).toEqual(others)
  })

  it('on a disk that is not there is reported, and nothing is left of it', async () => {
    const { record, backups } = await twoBuilds()
    const made = value(await backUp(record, backups, going))
    if (made === null) throw new Error('no backup was made')
    const missingFolder = join(folder(), 'stick')
    const outcome = await copyBackup(made, missingFolder)
    expect(outcome).toMatchObject({ ok: false, problem: { facts: { reason: 'gone' } } })
    expect(existsSync(missingFolder)).toBe(false)
  })
})

describe('several benches that share a second folder', () => {
  it('keep their own backups, however many the others make', async () => {
    const shared = folder()
    const [first, second] = [await twoBuilds(), await twoBuilds()]
    const own = value(await backUp(first.record, first.backups, going))
    if (own !== null) value(await copyBackup(own, shared))
    for (let made = 0; made < 15; made += 1) {
      const other = value(await backUp(second.record, second.backups, going))
      if (other !== null) value(await copyBackup(other, shared))
    }
    const there = backupsIn(shared)
    expect(there.filter((each) => each.bench === first.record.bench)).toHaveLength(1)
    expect(there.filter((each) => each.bench === second.record.bench)).toHaveLength(12)
  })

  it('never take away what an earlier version put there without a name of its bench', async () => {
    const shared = folder()
    const old = 'bedplate-20240419T081502Z-1-1-f00dfeedf00dfeed.sqlite'
    writeFileSync(join(shared, old), '')
    const { record, backups } = await twoBuilds()
    for (let made = 0; made < 15; made += 1) {
      const other = value(await backUp(record, backups, going))
      if (other !== null) value(await copyBackup(other, shared))
    }
    expect(readdirSync(shared)).toContain(old)
  })
})
