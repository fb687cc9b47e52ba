import { SvelteMap } from 'svelte/reactivity'
import { describe, expect, it } from 'vitest'
import type { Client } from '../../../../core/contract/index.ts'
import { checkOf, isBlind, type CheckedValue } from '../../../../core/drafts/index.ts'
import { CheckWork } from '../../../../renderer/editor/check/check-work.svelte.ts'
import { DraftOnDisk } from '../../../../renderer/editor/draft/draft-on-disk.svelte.ts'
import { OpenedDraftState } from '../../../../renderer/editor/draft/draft.svelte.ts'
import { EditorDesk } from '../../../../renderer/editor/editor-desk.svelte.ts'
import { folder, store } from '../../../electron/bench.ts'
import { asking } from '../../../electron/requests/asking.ts'
import { besideDraft } from '../draft/beside-draft.ts'

const ana = 'Ana Ruiz'
const bo = 'Bo Lind'

/** A draft on a real record at which one person after another is, as the page has it. */
async function atOneBench() {
  const { ask, get } = asking(await store(folder()))
  const client: Client = { request: (name, input) => ask(name, input) }
  const begun = await get('drafts.begin', {
    ...{ person: ana, name: 'Heron 1', from: 'Heron workshop manual' },
    origin: { kind: 'copy', engine: 'fen-1', revision: 0 },
  })
  const bench = new SvelteMap([['person', ana]])
  const person = () => bench.get('person')!
  const opened = new OpenedDraftState(client, begun, { person, language: () => 'en' })
  const desk = new EditorDesk(() => draft)
  const draft = new DraftOnDisk(opened, opened.spec!, besideDraft(client, opened.id))
  const check = new CheckWork(desk, { person, today: () => '2026-04-01' })
  const comes = (name: string) => void bench.set('person', name)
  return { desk, check, comes, get, id: begun.line.id }
}
const answerOf = (value: CheckedValue) => ({ how: isBlind(value) ? 'typed' : 'same' }) as const

describe('a spec that one person enters and another one compares', () => {
  it('is checked once the other found all of it the same, corrected by the first; nobody checks what they typed last', async () => {
    const { desk, check, comes, get, id } = await atOneBench()
    const source = () => (desk.document.source.kind === 'entered' ? desk.document.source : null)
    expect(check.isAllOwn).toBe(true)
    expect(check.now).toBeNull()

    comes(bo)
    expect(check.isAllOwn).toBe(false)
    const bore = check.now!
    expect(bore.path).toBe('case.bore')
    // A later one comes first, until there is no other.
    check.leave(bore)
    const second = check.now!
    expect(second.path).not.toBe('case.bore')
    expect(await check.answer(second, answerOf(second))).toBeNull()
    check.ask(bore)
    expect(check.now).toEqual(bore)
    expect(await check.answer(bore, { how: 'other', found: '96 mm' })).toBeNull()
    expect(desk.findings.map(({ problem }) => problem.code)).toContain('value-reads-otherwise')

    comes(ana)
    expect(await check.answer(bore, { how: 'same' })).toMatchObject({ code: 'check-by-who-entered' })
    expect(await desk.set(['case', 'bore'], '96 mm')).toBeNull()
    const corrected = check.state.values.find(({ path }) => path === 'case.bore')!
    expect(checkOf(desk.document, corrected)).toBeNull()
    expect(check.isOwn(corrected)).toBe(true)

    comes(bo)
    let unseen = 0
    for (let now = check.now; now !== null; now = check.now) {
      if (check.isUnseen(now)) unseen += 1
      expect(await check.answer(now, answerOf(now))).toBeNull()
    }
    expect(unseen).toBeGreaterThan(3)
    expect(check.state.left).toEqual([])
    expect(source()?.checkedBy).toBe(bo)
    expect((await get('drafts.list', {}))[0]).toMatchObject({ id, isChecked: true })

    // Who checked types one now: it is the first person's to compare.
    expect(await desk.set(['case', 'bore'], '95 mm')).toBeNull()
    expect(source()?.checkedBy).toBeUndefined()
    expect(check.isAllOwn).toBe(true)
    comes(ana)
    expect(check.now?.path).toBe('case.bore')
    expect(await check.answer(check.now!, { how: 'same' })).toBeNull()
    expect(source()?.checkedBy).toBe(`${bo}, ${ana}`)
  })
})
