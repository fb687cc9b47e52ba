import { describe, expect, it } from 'vitest'
import { photoHash } from '../../../../electron/store/index.ts'
import { jpegOf } from '../../../photos/files.ts'
import { gears, base64, bench, photographed, add, verified } from '../photographed.ts'

describe('an export with photos', () => {
  it('shows them in another record, verified, and is given out there again byte for byte', async () => {
    const here = await bench()
    const build = await photographed(here)
    await add(here, build, 2, jpegOf(), 'crank-marks')
    const { text } = await here.get('builds.export', { build })
    expect(JSON.parse(text.split('\n')[0]!)).toMatchObject({ bedplateBuild: 2, entries: 3, photos: 2 })

    const there = await bench()
    const taken = await there.get('builds.import', { text })
    expect(taken).toMatchObject({ kind: 'added', line: { entries: 3 } })
    expect('photosLost' in taken).toBe(false)
    expect(await there.get('photos.read', { build, entry: 2 })).toEqual({ base64: base64(gears) })
    expect(await there.get('photos.read', { build, entry: 3 })).toEqual({ base64: base64(jpegOf()) })
    expect((await verified(there)).breaks).toEqual([])
    expect((await there.get('builds.export', { build })).text).toBe(text)
  })

  it('whose photo was altered, cut off or left out is taken in without it, and says so', async () => {
    const here = await bench()
    const build = await photographed(here)
    const { text } = await here.get('builds.export', { build })
    const lines = text.split('\n')
    const other = JSON.stringify({ bytes: base64(jpegOf()), photo: photoHash(gears) })
    const withLine = (...line: readonly string[]) => [...lines.slice(0, 4), ...line, ''].join('\n')
    const damaged = [
      text.replace('/9j/', '/9k/'),
      text.slice(0, -2000),
      withLine(),
      withLine(other),
      withLine('{}'),
      withLine(JSON.stringify({ bytes: null, photo: photoHash(gears) })),
    ]
    for (const each of damaged) {
      const there = await bench()
      const taken = await there.get('builds.import', { text: each })
      expect(taken).toMatchObject({ kind: 'added', photosLost: 1, line: { entries: 2 } })
      const read = await there.ask('photos.read', { build, entry: 2 })
      expect(read).toMatchObject({ problem: { code: 'photo-missing', facts: { step: 1 } } })
      expect(await there.get('builds.import', { text })).toMatchObject({ kind: 'known' })
      expect((await there.ask('photos.read', { build, entry: 2 })).ok).toBe(true)
    }
  })

  it('with an altered entry, or a line that belongs to nothing, is refused as before', async () => {
    const here = await bench()
    const build = await photographed(here)
    const { text } = await here.get('builds.export', { build })
    const there = await bench()
    for (const each of [text.replace('"caption":"Marks"', '"caption":"Mark"'), `${text}{}\n`])
      expect(await there.ask('builds.import', { text: each })).toMatchObject({
        problem: { code: 'import-altered' },
      })
    expect(await there.get('builds.list', {})).toEqual([])
  })
})
