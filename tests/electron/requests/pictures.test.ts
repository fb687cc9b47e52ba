import { describe, expect, it } from 'vitest'
import type { Input, Output } from '../../../core/contract/index.ts'
import { pictureFile } from '../../photos/files.ts'
import { alter } from '../alter.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'

const gears = Buffer.from(pictureFile('gears.jpg')).toString('base64')
const look: Input<'pictures.put'>['look'] = {
  pins: [
    { px: { x: 0, y: 120 }, at: { x: 0, y: 0 } },
    { px: { x: 320, y: 120 }, at: { x: 160_000_000, y: 0 } },
  ],
  opacity: 70,
  shown: true,
}

async function bench(inFolder = folder()) {
  const record = await store(inFolder)
  const host = asking(record)
  const begun = () =>
    host.get('drafts.begin', {
      ...{ person: 'Ana Ruiz', name: 'Heron 4', from: 'Heron workshop manual' },
      origin: { kind: 'copy', engine: 'skerry-3', revision: 0 },
    })
  return { inFolder, record, begun, ...host }
}

describe('a manual’s picture under a drawing', () => {
  it('is there after a restart, one for each face, and as it was placed last', async () => {
    const first = await bench()
    const { line } = await first.begun()
    await first.get('pictures.put', { draft: line.id, face: 'joint', look, base64: gears })
    await first.get('pictures.put', { draft: line.id, face: 'rear', look, base64: gears })
    const placed = { ...look, opacity: 30, shown: false }
    await first.get('pictures.place', { draft: line.id, face: 'joint', look: placed })
    first.record.close()

    const again = await bench(first.inFolder)
    const listed = await again.get('pictures.list', { draft: line.id })
    expect(listed.map(({ face, widthPx, look: { opacity } }) => [face, widthPx, opacity])).toEqual([
      ['joint', 320, 30],
      ['rear', 320, 70],
    ])
    expect(await again.get('pictures.read', { draft: line.id, face: 'joint' })).toEqual({ base64: gears })
  })

  it('goes neither into the draft nor into the file of the spec, and is gone when that is published', async () => {
    const { begun, get, ask, record } = await bench()
    const { line } = await begun()
    await get('pictures.put', { draft: line.id, face: 'joint', look, base64: gears })
    const opened: Output<'drafts.open'> = await get('drafts.open', { draft: line.id })
    expect(opened.entries).toEqual([])
    const published = await get('drafts.publish', { draft: line.id, after: 0, person: 'Ana Ruiz' })
    const { text } = await get('library.export', { engine: published.engine, revision: 1 })
    expect(text).not.toContain(gears.slice(100, 160))
    expect(record.pictures.of(line.id)).toEqual([])
    const read = await ask('pictures.read', { draft: line.id, face: 'joint' })
    expect(read).toMatchObject({ ok: false, problem: { code: 'picture-missing' } })
  })

  it('is refused where it is none, and reported where it is damaged; what is there stays', async () => {
    const first = await bench()
    const { line } = await first.begun()
    const ofFace = { draft: line.id, face: 'joint' }
    await first.get('pictures.put', { ...ofFace, look, base64: gears })
    const none = await first.ask('pictures.put', {
      ...ofFace,
      look,
      base64: Buffer.from('no picture').toString('base64'),
    })
    expect(none).toMatchObject({ ok: false, problem: { code: 'photo-not-prepared' } })
    expect(await first.get('pictures.read', ofFace)).toEqual({ base64: gears })

    first.record.close()
    alter(first.inFolder, "UPDATE draft_picture SET bytes = x'ffd8ffd9'")
    const { ask, get } = await bench(first.inFolder)
    expect(await ask('pictures.read', ofFace)).toMatchObject({
      ok: false,
      problem: { code: 'picture-damaged' },
    })
    await get('pictures.remove', ofFace)
    expect(await get('pictures.list', { draft: line.id })).toEqual([])
    expect(await ask('pictures.place', { ...ofFace, look })).toMatchObject({
      ok: false,
      problem: { code: 'picture-missing' },
    })
  })
})
