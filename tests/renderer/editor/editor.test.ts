import { describe, expect, it } from 'vitest'
import type { Client, OpenedDraft } from '../../../core/contract/index.ts'
import { newPass, type Thing } from '../../../core/drafts/index.ts'
import type { Problem } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { DraftOnDisk } from '../../../renderer/editor/draft/draft-on-disk.svelte.ts'
import { OpenedDraftState } from '../../../renderer/editor/draft/draft.svelte.ts'
import { EditorDesk } from '../../../renderer/editor/editor-desk.svelte.ts'
import { followFinding } from '../../../renderer/editor/findings/follow-finding.ts'
import { PathWork } from '../../../renderer/editor/actions/path-work.svelte.ts'
import { OrderWork } from '../../../renderer/editor/orders/order-work.svelte.ts'
import { PlaceWork } from '../../../renderer/editor/actions/place-work.svelte.ts'
import { folder, store } from '../../electron/bench.ts'
import { asking } from '../../electron/requests/asking.ts'
import { besideDraft } from './draft/beside-draft.ts'

const here = { person: () => 'Ana Ruiz', language: () => 'en' as const }

/** The editor on a draft of a real record: a copy of a demo engine. */
async function editor() {
  const { ask, get } = asking(await store(folder()))
  const client: Client = { request: (name, input) => ask(name, input) }
  const begun: OpenedDraft = await get('drafts.begin', {
    ...{ person: 'Ana Ruiz', name: 'Heron 4', from: 'Heron workshop manual' },
    origin: { kind: 'copy', engine: 'fen-1', revision: 0 },
  })
  const opened = new OpenedDraftState(client, begun, here)
  const draft = new DraftOnDisk(opened, opened.spec!, besideDraft(client, opened.id))
  const again = async () => {
    const found = await OpenedDraftState.open(client, opened.id, here)
    if (!found.ok) throw new Error(found.problem.code)
    return found.value.document
  }
  const desk = new EditorDesk(() => draft)
  return { desk, draft, again, get, order: new OrderWork(desk) }
}
const mm = 1_000_000
const group = { kind: 'fastener', group: 'case-bolts', where: 'at M1' } as const
/** Every edit goes to the record and back; each is awaited by another one that changes nothing. */
const settled = (desk: EditorDesk) =>
  desk.draft.change({ code: 'moved', facts: { count: 0 } }, (document) => ({ ok: true, value: document }))

describe('the editor on a draft', () => {
  it('takes in a joint: four placed, mirrored, tightened by the pattern and the passes of a manual', async () => {
    const { desk, draft, order, again } = await editor()
    const before = desk.document.fasteners.length

    const made: Thing[] = []
    for (const x of [70, 90, 110, 130]) {
      await desk.place({ x: x * mm, y: 90 * mm }, group)
      made.push(...desk.selected)
    }
    expect(made).toHaveLength(4)
    desk.choose(made)
    desk.mirror()
    await settled(desk)
    expect(desk.document.fasteners).toHaveLength(before + 8)
    expect(desk.selected).toHaveLength(8)
    const numbers = desk.spec.fasteners.flatMap(({ face, number }) => (face === 'joint' ? [number] : []))
    expect(new Set(numbers).size).toBe(numbers.length)

    const { sequence } = order
    const at = desk.document.procedures.findIndex(({ face }) => face === 'joint')
    // However fast the taps come.
    for (const { id } of desk.selected) order.tap(id)
    await settled(desk)
    expect(order.sequence).toHaveLength(sequence.length + 8)
    order.grow('spiral')
    await settled(desk)
    expect(new Set(order.sequence).size).toBe(sequence.length + 8)
    expect(desk.document.procedures[at]!.orders[0]!.pattern).toBe('spiral')

    // A published set: 30 ± 3 lbf·ft, then a mark on the heads, then 90°.
    const { id } = desk.document.procedures[at]!.orders[0]!
    const passes = [
      newPass('torque', id, { value: '30 ± 3 lbf·ft' }),
      newPass('action', id, { instruction: 'Mark the heads.' }),
      newPass('angle', id, { value: '90 °' }),
    ]
    expect(await desk.set(['procedures', at, 'passes'], passes)).toBeNull()
    const [first, , last] = desk.spec.procedures[at]!.passes
    // 30 lbf·ft is 40.67 N·m (1 lbf·ft = 1.355 818 N·m, NIST SP 811), 27 and 33 are 36.61 and 44.74.
    expect(first).toMatchObject({ kind: 'torque' })
    if (first?.kind !== 'torque') throw new Error('no torque pass')
    expect([first.target, first.least, first.most].map((value) => Number(value).toFixed(2))).toEqual([
      ...['40.67', '36.61', '44.74'],
    ])
    expect(last).toMatchObject({ kind: 'angle', target: 90 })
    expect(await again()).toEqual(desk.document)

    const whole = desk.document
    for (let edits = 0; draft.undoable !== null; edits += 1) {
      if (edits > 40) throw new Error('undo comes to no end')
      await draft.undo()
    }
    expect(desk.document.fasteners).toHaveLength(before)
    while (draft.redoable !== null) await draft.redo()
    expect(desk.document).toEqual(whole)
  })

  it('refuses what the spec cannot be, says why and changes nothing', async () => {
    const { desk } = await editor()
    const { document } = desk
    const refused = await desk.set(['fastenerGroups', 0, 'grip'], '54 miles')
    expect(refused?.code).toBe('draft-value-unfit')
    await desk.place({ x: 4000 * mm, y: 0 }, group)
    expect(desk.problem?.code).toBe('draft-off-face')
    desk.choose(desk.things.filter(({ kind }) => kind === 'fastener'))
    desk.takeOut()
    await settled(desk)
    expect(desk.problem?.code).toBe('draft-order-left-empty')
    expect(desk.document).toBe(document)
  })

  it('keeps every tick of a list, however fast they come', async () => {
    const { desk } = await editor()
    const path = ['steps', desk.document.steps.length - 1, 'after']
    const ids = desk.document.steps.map(({ id }) => id)
    await desk.set(path, undefined)
    await Promise.all([ids[1]!, ids[0]!, ids[2]!, ids[1]!].map((id) => desk.tick(path, ids, id)))
    expect(desk.document.steps.at(-1)!.after).toEqual([ids[0], ids[2]])
  })

  it('moves by every press of a key, however fast they come', async () => {
    const { desk } = await editor()
    const [first] = desk.things
    desk.choose([first!])
    for (let presses = 0; presses < 5; presses += 1) desk.stepBy({ x: 1, y: 0 })
    await settled(desk)
    expect(desk.things[0]!.at).toEqual({ x: first!.at.x + 5 * mm, y: first!.at.y })
  })

  it('tells at its place what the audit finds', async () => {
    const { desk } = await editor()
    const [first, second] = desk.things
    await desk.set(['fasteners', 1, 'at'], ['46.5 mm', '44 mm'])
    expect(first!.id).toBe('case-1')
    expect(second!.id).toBe('case-2')
    expect(desk.findingsAt('fasteners[1]').map(({ problem }) => problem.code)).toContain('parts-collide')
  })

  it('leads from a finding to where it is mended, and keeps it beside the work until it is', async () => {
    const { desk, order } = await editor()
    const work = new PlaceWork(desk, () => en)
    const at = desk.document.procedures.findIndex(({ face }) => face === 'joint')
    const { id, orders } = desk.document.procedures[at]!
    const { sequence } = orders[0]!
    await desk.set(['procedures', at, 'orders', 0, 'sequence'], sequence.slice(1))
    const missed = desk.findings.find(({ problem }) => problem.code === 'order-misses')!
    desk.look('another face')
    expect(followFinding({ desk, order, work }, missed.problem)).toBe('drawing')
    expect([desk.face, desk.action, order.named]).toEqual([
      'joint',
      'order',
      { procedure: id, order: orders[0]!.id },
    ])
    expect(desk.followed).toEqual(missed)
    // A pattern goes over the whole group, however far its order is tapped.
    expect(order.grownOver.toSorted()).toEqual(sequence.toSorted())
    order.tap(sequence[0]!)
    await settled(desk)
    expect(desk.followed).toBeNull()
    const said = (code: string, path: string) => ({ code, path, facts: {} }) as unknown as Problem
    expect(followFinding({ desk, order, work }, said('source-unchecked', 'source.checkedBy'))).toBe('check')
    expect(followFinding({ desk, order, work }, said('bearings-without-fit', 'case.saddles'))).toBe('fits')
  })
})

describe('the first points of an outline or a bead', () => {
  it('are beside the draft before they make one, and go on from there', async () => {
    const { desk, draft, get, again } = await editor()
    const path = new PathWork(desk)
    path.beginOutline()
    await path.add({ x: 1_000_000, y: 2_000_000 })
    await path.add({ x: 90_000_000, y: 2_000_000 })
    const { sketch } = await get('preferences.read', {})
    expect(sketch?.sketch.points).toEqual([
      { x: 1_000_000, y: 2_000_000 },
      { x: 90_000_000, y: 2_000_000 },
    ])
    expect(draft.undoable).toBeNull()

    const resumed = new PathWork(desk)
    resumed.resume(sketch!.sketch)
    await resumed.add({ x: 50_000_000, y: 60_000_000 })
    expect((await again()).case.faces[0]!.outline).toHaveLength(3)
    expect((await get('preferences.read', {})).sketch).toBeNull()
  })
})
