import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { backupFolder, photoHash, recordName } from '../../../electron/store/index.ts'
import { jpegOf, pictureFile } from '../../photos/files.ts'
import { alter } from '../alter.ts'
import { gears, base64, bench, type Bench, photographed, add, verified } from './photographed.ts'

const rowsIn = (inFolder: string, file = recordName) => {
  const db = new Database(join(inFolder, file), { readonly: true })
  try {
    return db.prepare<[], { sha256: string; bytes: Buffer }>('SELECT sha256, bytes FROM photo').all()
  } finally {
    db.close()
  }
}

describe('a photo that is added', () => {
  it('is on disk with its entry, which names its hash, size and kind', async () => {
    const here = await bench()
    const build = await photographed(here)
    const { events } = await here.get('builds.open', { build })
    const photo = {
      ...{ sha256: photoHash(gears), mediaType: 'image/jpeg', widthPx: 320, heightPx: 240 },
      sizeBytes: gears.length,
    }
    expect(events.at(-1)?.event).toMatchObject({ type: 'photo-added', step: 'case-marks', photo })
    expect(base64(gears)).toBe((await here.get('photos.read', { build, entry: 2 })).base64)
    here.record.close()
    expect(rowsIn(here.inFolder)).toEqual([{ sha256: photo.sha256, bytes: Buffer.from(gears) }])
  })

  it('twice, at two steps, is kept once', async () => {
    const here = await bench()
    const build = await photographed(here)
    await add(here, build, 2, gears, 'crank-marks')
    expect(await here.get('photos.read', { build, entry: 3 })).toEqual({ base64: base64(gears) })
    here.record.close()
    expect(rowsIn(here.inFolder)).toHaveLength(1)
  })

  it('leaves nothing behind where its entry is refused', async () => {
    const here = await bench()
    const { line } = await here.begin()
    const given = { build: line.id, person: 'Ana Ruiz', caption: '', part: null, base64: base64(gears) }
    const late = await here.ask('photos.add', { ...given, after: 9, step: 'case-marks' })
    const nowhere = await here.ask('photos.add', { ...given, after: 1, step: 'flywheel' })
    expect([late, nowhere]).toMatchObject([
      { problem: { code: 'build-moved-on' } },
      { problem: { code: 'step-unknown' } },
    ])
    here.record.close()
    expect(rowsIn(here.inFolder)).toEqual([])
  })

  it.each([
    ['a text', new Uint8Array(Buffer.from('24 N·m'))],
    ['another kind of picture', pictureFile('gears.png')],
    ['a photo with the place where it was taken', jpegOf({ annotation: 'Exif\0\0II*\0' })],
    ['a photo that was not scaled', jpegOf({ widthPx: 4000, heightPx: 3000 })],
  ])('is refused where it is %s', async (_, bytes) => {
    const here = await bench()
    const { line } = await here.begin()
    const given = {
      build: line.id,
      after: 1,
      person: 'Ana Ruiz',
      step: 'case-marks',
      caption: '',
      part: null,
    }
    const answer = await here.ask('photos.add', { ...given, base64: base64(bytes) })
    expect(answer).toMatchObject({ problem: { code: 'photo-not-prepared' } })
    expect(here.record.entries(line.id)).toHaveLength(1)
  })

  it('is never an entry without its bytes', async () => {
    const here = await bench()
    const { line } = await here.begin()
    const photo = {
      ...({ sha256: photoHash(gears), mediaType: 'image/jpeg', widthPx: 320, heightPx: 240 } as const),
      sizeBytes: gears.length,
    }
    const command = { type: 'add-photo', step: 'case-marks', caption: '', part: null, photo } as const
    expect(await here.act(line.id, 1, command)).toMatchObject({ problem: { code: 'photo-without-bytes' } })
  })
})

const damage = "UPDATE photo SET bytes = CAST(replace(CAST(bytes AS TEXT), 'JFIF', 'JFIG') AS BLOB)"

const flip = "UPDATE photo SET bytes = CAST(substr(bytes, 1, 200) || x'00' || substr(bytes, 202) AS BLOB)"

const loss = 'DELETE FROM photo'

describe('a photo that is damaged or missing', () => {
  it.each([
    ['damaged', flip, 'The photo of step 1 is damaged: its bytes are not those recorded.'],
    ['damaged in its head', damage, 'The photo of step 1 is damaged: its bytes are not those recorded.'],
    ['missing', loss, 'The photo of step 1 is missing: its bytes are not in the record.'],
  ])(
    '(%s) is told at its place, by the doctor and by verifying; the build is not touched',
    async (_, change, says) => {
      const before = await bench()
      const build = await photographed(before)
      before.record.close()
      alter(before.inFolder, change)
      const here = await bench(before.inFolder)

      const read = await here.ask('photos.read', { build, entry: 2 })
      expect(read.ok ? '' : sentenceOf(read.problem)).toContain(says)
      const { breaks } = await verified(here)
      expect(breaks.map(({ problem }) => sentenceOf(problem))).toEqual([expect.stringContaining(says)])
      expect((await here.get('host.doctor', {})).find(({ subject }) => subject === 'photos')).toMatchObject({
        state: 'bad',
        says: { code: 'photos-not-there', facts: { photos: 1 } },
      })

      const { readOnly, events } = await here.get('builds.open', { build })
      expect([readOnly, events.length]).toEqual([null, 2])
      expect(
        (await here.act(build, 2, { type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' })).ok,
      ).toBe(true)
    },
  )

  it('is put right when the same photo comes again, by hand or with an export', async () => {
    const before = await bench()
    const build = await photographed(before)
    const { text } = await before.get('builds.export', { build })
    before.record.close()
    for (const change of [flip, loss]) {
      alter(before.inFolder, change)
      const here = await bench(before.inFolder)
      expect((await here.ask('photos.read', { build, entry: 2 })).ok).toBe(false)
      expect(await here.get('builds.import', { text })).toMatchObject({ kind: 'known' })
      expect(await here.get('photos.read', { build, entry: 2 })).toEqual({ base64: base64(gears) })
      expect((await verified(here)).breaks).toEqual([])
      here.record.close()
    }
  })

  it('does not mark a backup as broken, and does not keep one from being restored', async () => {
    const before = await bench()
    await photographed(before)
    before.record.close()
    alter(before.inFolder, flip)
    const here = await bench(before.inFolder)
    const { backups } = await here.get('backups.make', {})
    expect(backups).toMatchObject([{ broken: 0, entries: 2 }])
  })
})

describe('photos of sound builds', () => {
  it('are in every backup, byte for byte', async () => {
    const here = await bench()
    await photographed(here)
    const { backups } = await here.get('backups.make', {})
    expect(rowsIn(backupFolder(here.inFolder), backups[0]!.name)).toEqual([
      { sha256: photoHash(gears), bytes: Buffer.from(gears) },
    ])
  })

  it('are counted by the doctor, who says nothing of them where there are none', async () => {
    const here = await bench()
    const ofPhotos = async () =>
      (await here.get('host.doctor', {})).filter(({ subject }) => subject === 'photos')
    await here.begin()
    expect(await ofPhotos()).toEqual([])
    const { id } = (await here.get('builds.list', {}))[0]!
    await add(here, id, 1, gears)
    expect(await ofPhotos()).toMatchObject([{ state: 'good', says: { facts: { photos: 1, megabytes: 1 } } }])
  })
})

describe('a photo that is withdrawn', () => {
  const reason = 'It shows a face'
  const withdraw = (here: Bench, build: string, after: number) =>
    here.act(build, after, { type: 'withdraw-photo', entry: 2, reason })

  it('is not read, nor given out, from then on; its entry and its hash stay, and the chain holds', async () => {
    const here = await bench()
    const build = await photographed(here)
    await add(here, build, 2, jpegOf(), 'crank-marks')
    expect((await withdraw(here, build, 3)).ok).toBe(true)
    expect(await here.ask('photos.read', { build, entry: 2 })).toMatchObject({
      problem: { code: 'photo-withdrawn' },
    })
    const { text } = await here.get('builds.export', { build })
    expect(text).toContain(photoHash(gears))
    expect(text).not.toContain(base64(gears))
    expect(text).toContain(base64(jpegOf()))
    expect((await verified(here)).breaks).toEqual([])
  })

  it('is missing nowhere: neither by import, nor by the doctor, nor by verifying', async () => {
    const here = await bench()
    const build = await photographed(here)
    await withdraw(here, build, 2)
    const { text } = await here.get('builds.export', { build })
    const there = await bench()
    const taken = await there.get('builds.import', { text })
    expect('photosLost' in taken).toBe(false)
    expect(await there.record.photos.count()).toMatchObject({ damaged: 0, missing: 0 })
    expect((await verified(there)).breaks).toEqual([])
    expect((await there.get('builds.export', { build })).text).toBe(text)
  })

  it('is withdrawn once, with a reason', async () => {
    const here = await bench()
    const build = await photographed(here)
    const bare = await here.act(build, 2, { type: 'withdraw-photo', entry: 2, reason: ' ' })
    expect(bare).toMatchObject({ problem: { code: 'reason-missing' } })
    await withdraw(here, build, 2)
    expect(await withdraw(here, build, 3)).toMatchObject({ problem: { code: 'photo-withdrawn' } })
    const unknown = await here.act(build, 3, { type: 'withdraw-photo', entry: 1, reason })
    expect(unknown).toMatchObject({ problem: { code: 'photo-unknown' } })
  })
})
