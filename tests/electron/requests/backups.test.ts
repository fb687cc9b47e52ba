import { mkdirSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { alter } from '../alter.ts'
import { folder, store } from '../bench.ts'
import { finishBuild } from '../mechanic.ts'
import { asking } from './asking.ts'

/** A clock that shows noon of a day until it is set to another. */
function dayClock() {
  let day = '2026-03-02'
  return { now: () => new Date(`${day}T12:00:00Z`), setTo: (next: string) => void (day = next) }
}

describe('backups by themselves', () => {
  it('are made once a day, when the window shows a sign of life', async () => {
    const { now, setTo } = dayClock()
    const { get, begin } = asking(await store(folder()), { now })
    await begin()
    const days: string[] = []
    for (const day of ['2026-03-02', '2026-03-02', '2026-03-03', '2026-03-05', '2026-03-05']) {
      setTo(day)
      await get('host.read', {})
      await expect.poll(async () => (await get('backups.list', {})).running).toBe(false)
      days.push((await get('backups.list', {})).backups[0]?.at.slice(0, 10) ?? '')
    }
    expect(days).toEqual(['2026-03-02', '2026-03-02', '2026-03-03', '2026-03-05', '2026-03-05'])
    expect((await get('backups.list', {})).backups).toHaveLength(3)
  })

  it('are made once a day also beside one that is dated 2039, and by a clock that was set back', async () => {
    const { now, setTo } = dayClock()
    const record = await store(folder())
    const { get, begin } = asking(record, { now })
    await begin()
    const inFolder = join(dirname(record.file), 'backups')
    mkdirSync(inFolder)
    writeFileSync(join(inFolder, 'bedplate-20390101T120000Z-1-1-f00dfeedf00dfeed.sqlite'), '')
    const counts: number[] = []
    for (const day of ['2026-03-02', '2026-03-02', '2039-05-05', '2026-03-03', '2026-03-03', '2026-03-03']) {
      setTo(day)
      await get('host.read', {})
      await expect.poll(async () => (await get('backups.list', {})).running).toBe(false)
      counts.push((await get('backups.list', {})).backups.length)
    }
    expect(counts).toEqual([2, 2, 3, 4, 4, 4])
    expect((await get('backups.list', {})).backups[0]?.at).toBe('2026-03-03T12:00:00Z')
  })

  it('go on although a build is broken: marked, reported, and beside the last sound one', async () => {
    const { now, setTo } = dayClock()
    const record = await store(folder())
    const first = asking(record, { now })
    await first.begin()
    await first.get('backups.make', {})
    await first.stop()
    record.close()
    alter(dirname(record.file), "UPDATE event SET body = replace(body, 'Ferry', 'Fairy')")
    const { get } = asking(await store(dirname(record.file)), { now })
    for (const day of ['2026-03-03', '2026-03-04', '2026-03-05', '2026-03-06', '2026-03-07']) {
      setTo(day)
      await get('host.read', {})
      await expect.poll(async () => (await get('backups.list', {})).running).toBe(false)
    }
    const { backups, trouble } = await get('backups.list', {})
    expect(backups.map(({ at, broken }) => [at.slice(0, 10), broken > 0])).toEqual([
      ['2026-03-07', true],
      ['2026-03-06', true],
      ['2026-03-05', true],
      ['2026-03-02', false],
    ])
    expect(trouble?.code).toBe('backup-carries-broken')
  })

  it('are none of an empty record', async () => {
    const { get } = asking(await store(folder()))
    await get('host.read', {})
    expect(await get('backups.list', {})).toMatchObject({ backups: [], running: false, trouble: null })
  })

  it('are made when a build is finished, with all of it in them', async () => {
    const { get, begin, act } = asking(await store(folder()))
    const { line, specText, events } = await begin()
    const entries = await finishBuild({ build: line.id, specText, events, act })
    await expect.poll(async () => (await get('backups.list', {})).backups.length).toBe(1)
    expect((await get('backups.list', {})).backups[0]).toMatchObject({ builds: 1, entries })
  })
})

describe('a backup that is asked for', () => {
  it('is in the list with its date, its counts and its code when the answer comes', async () => {
    const { get, begin } = asking(await store(folder()))
    await begin()
    const { backups, trouble } = await get('backups.make', {})
    expect(trouble).toBeNull()
    expect(backups).toMatchObject([
      { builds: 1, entries: 1, head: expect.stringMatching(/^[0-9a-f]{16}$/), place: 'data-folder' },
    ])
  })

  it('that cannot be made leaves a sentence in the list, until one can', async () => {
    const record = await store(folder())
    const { get, begin } = asking(record)
    await begin()
    const inTheWay = join(dirname(record.file), 'backups')
    writeFileSync(inTheWay, '')
    expect((await get('backups.make', {})).trouble).toMatchObject({ code: 'backup-not-saved' })
    rmSync(inTheWay)
    expect(await get('backups.make', {})).toMatchObject({ trouble: null, backups: [{ entries: 1 }] })
  })
})

describe('the second folder', () => {
  it('gets each backup too, and is asked when the first has lost it', async () => {
    const record = await store(folder())
    const { get, begin } = asking(record)
    const second = folder()
    await begin()
    await get('backups.keep-in', { folder: second })
    const { backups } = await get('backups.make', {})
    const copies = readdirSync(second).filter((name) => name.endsWith('.sqlite'))
    expect(copies).toEqual(backups.map(({ name }) => name))
    rmSync(join(dirname(record.file), 'backups', backups[0]?.name ?? ''))
    expect((await get('backups.list', {})).backups).toMatchObject([{ place: 'second-folder' }])
  })

  it('that is away is reported, and the backup in the data folder counts', async () => {
    const { get, begin } = asking(await store(folder()))
    const stick = join(folder(), 'stick')
    mkdirSync(stick)
    await begin()
    await get('backups.keep-in', { folder: stick })
    rmSync(stick, { recursive: true })
    const { backups, trouble } = await get('backups.make', {})
    expect(backups).toHaveLength(1)
    expect(sentenceOf(trouble!)).toContain('is the disk or the share connected?')
  })

  it('that several benches share shows this bench’s own first', async () => {
    const second = folder()
    for (let bench = 0; bench < 2; bench += 1) {
      const { get, begin } = asking(await store(folder()))
      await begin()
      await get('backups.keep-in', { folder: second })
      await get('backups.make', {})
      const { backups } = await get('backups.list', {})
      expect(backups.map(({ own, place }) => [own, place])).toEqual([
        [true, 'data-folder'],
        ...Array.from({ length: bench }, () => [false, 'second-folder']),
      ])
    }
  })

  it('is not the data folder by way of a link', async () => {
    const record = await store(folder())
    const { ask } = asking(record)
    const link = join(folder(), 'link')
    for (const to of [dirname(record.file), join(dirname(record.file), 'within')]) {
      mkdirSync(to, { recursive: true })
      symlinkSync(to, link)
      expect(await ask('backups.keep-in', { folder: link })).toMatchObject({
        ok: false,
        problem: { code: 'backup-folder-wrong', facts: { fault: 'own' } },
      })
      rmSync(link)
    }
  })

  it('may have a name that ends in a blank', async () => {
    const { get, begin } = asking(await store(folder()))
    const second = join(folder(), 'copies ')
    mkdirSync(second)
    await begin()
    expect((await get('backups.keep-in', { folder: second })).secondFolder).toBe(second)
    expect((await get('backups.make', {})).trouble).toBeNull()
    expect(readdirSync(second).filter((name) => name.endsWith('.sqlite'))).toHaveLength(1)
  })

  it('can be none again', async () => {
    const { get } = asking(await store(folder()))
    await get('backups.keep-in', { folder: folder() })
    expect((await get('backups.keep-in', { folder: null })).secondFolder).toBeNull()
  })

  it.each([
    ['a part of a path', () => 'stick/backups', 'whole path'],
    ['a folder that is not there', () => join(folder(), 'none'), 'no such folder'],
    ['a file', () => import.meta.filename, 'no such folder'],
    ['the data folder', (file: string) => dirname(file), 'lost with it'],
    ['a folder in the data folder', (file: string) => join(dirname(file), 'backups'), 'lost with it'],
    ['a path with a line in it', () => '/mnt/a\n/etc', 'whole path'],
    ['nothing', () => '', 'whole path'],
  ])('is not %s', async (_, path, words) => {
    const record = await store(folder())
    const { ask, get } = asking(record)
    const answer = await ask('backups.keep-in', { folder: path(record.file) })
    expect(answer).toMatchObject({ ok: false, problem: { path: 'folder' } })
    expect(answer.ok ? '' : sentenceOf(answer.problem)).toContain(words)
    expect((await get('backups.list', {})).secondFolder).toBeNull()
  })
})
