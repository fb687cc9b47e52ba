import { describe, expect, it } from 'vitest'
import type { Client } from '../../../../core/contract/index.ts'
import { PictureWork } from '../../../../renderer/editor/picture/picture-work.svelte.ts'
import { DraftOnDisk } from '../../../../renderer/editor/draft/draft-on-disk.svelte.ts'
import { OpenedDraftState } from '../../../../renderer/editor/draft/draft.svelte.ts'
import { EditorDesk } from '../../../../renderer/editor/editor-desk.svelte.ts'
import { folder, store } from '../../../electron/bench.ts'
import { asking } from '../../../electron/requests/asking.ts'
import { pictureFile } from '../../../photos/files.ts'
import { besideDraft } from '../draft/beside-draft.ts'

const gears = Buffer.from(pictureFile('gears.jpg')).toString('base64')
/** The drawing is 100 mm wide here, the nose at the left. */
const ground = { mirrored: false, left: { x: 0, y: 0 }, right: { x: 100e6, y: 0 } }

async function editor() {
  const { ask, get } = asking(await store(folder()))
  const client: Client = { request: (name, input) => ask(name, input) }
  const begun = await get('drafts.begin', {
    ...{ person: 'Ana Ruiz', name: 'Heron 4', from: 'Heron workshop manual' },
    origin: { kind: 'copy', engine: 'fen-1', revision: 0 },
  })
  const at = { person: () => 'Ana Ruiz', language: () => 'en' as const }
  const opened = new OpenedDraftState(client, begun, at)
  /** Windows on one draft, which look at the same face: each hears of what any of them did. */
  const windows: PictureWork[] = []
  const followed: Promise<unknown>[] = []
  const others = {
    announce: () => windows.forEach((each) => followed.push(each.follow())),
    follow: () => () => undefined,
  }
  const beside = besideDraft(client, begun.line.id, others)
  const desk = new EditorDesk(() => new DraftOnDisk(opened, opened.spec!, beside))
  function again() {
    const work = new PictureWork(
      desk,
      () => ground,
      () => Promise.reject(new Error('no canvas here')),
    )
    windows.push(work)
    return work
  }
  return { desk, work: again(), again, openDraft: opened, settled: () => Promise.all(followed) }
}

describe('the work on a picture', () => {
  it('puts it across the drawing, one for each face, and has it again after the page was loaded again', async () => {
    const { desk, work, again } = await editor()
    expect(await work.put(gears, { widthPx: 320, heightPx: 240 })).toBe(true)
    expect(work.current!.look.pins.map(({ at }) => at)).toEqual([ground.left, ground.right])
    const other = desk.document.case.faces[1]!.id
    desk.look(other)
    expect(work.current).toBeNull()
    const loaded = again()
    await loaded.load()
    expect(loaded.current).toBeNull()
    desk.look(desk.document.case.faces[0]!.id)
    expect(loaded.current!.look).toEqual(work.current!.look)
  })

  it('places it by two points that were chosen on it and their distance, and asks for no more points then', async () => {
    const { work } = await editor()
    await work.put(gears, { widthPx: 320, heightPx: 240 })
    work.beginPoints()
    for (const x of [64, 192]) {
      work.moveCross({ x, y: 120 })
      work.setPoint()
    }
    expect(work.choosing).toBe(false)
    // 128 px of 320 are 40 mm of 100: the truth is 80 mm, so that the picture becomes twice as large about point 1, at 20 mm.
    await work.placeByDistance(80e6, 'as-it-lies')
    expect(work.points).toBeNull()
    expect(work.current!.look.pins.map(({ at }) => at)).toEqual([
      { x: 20e6, y: 0 },
      { x: 100e6, y: 0 },
    ])
  })

  it('keeps two points that say nothing, with a sentence, and the picture as it lies', async () => {
    const { work } = await editor()
    await work.put(gears, { widthPx: 320, heightPx: 240 })
    const before = work.current
    work.beginPoints()
    work.setPoint()
    work.setPoint()
    expect(await work.placeByDistance(80e6, 'along')).toBe(false)
    expect(work.problem?.code).toBe('picture-points-near')
    expect(work.current).toEqual(before)
  })

  it('shows what another window does with it', async () => {
    const { work, again, settled } = await editor()
    const other = again()
    await work.put(gears, { widthPx: 320, heightPx: 240 })
    await settled()
    expect(other.current!.look).toEqual(work.current!.look)
    await Promise.all([other.fade(30), work.move({ x: 1e6, y: 0 })])
    await settled()
    expect(other.current).toEqual(work.current)
    await other.remove()
    await settled()
    expect(work.current).toBeNull()
    expect(await work.fade(40)).toBe(true)
  })

  it('moves it while it is held, and keeps it where it is let go', async () => {
    const { work, again, openDraft } = await editor()
    await work.put(gears, { widthPx: 320, heightPx: 240 })
    work.hold({ x: 5e6, y: 1e6 })
    expect(work.current!.look.pins[0].at).toEqual({ x: 5e6, y: 1e6 })
    await work.letGo(true)
    const loaded = again()
    await loaded.load()
    expect(loaded.current!.look.pins[0].at).toEqual({ x: 5e6, y: 1e6 })
    expect(openDraft.undoable).toBeNull()
    await loaded.remove()
    expect(loaded.current).toBeNull()
  })
})
