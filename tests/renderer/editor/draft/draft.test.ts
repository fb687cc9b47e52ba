import { describe, expect, it } from 'vitest'
import type { Client, OpenedDraft } from '../../../../core/contract/index.ts'
import { OpenedDraftState } from '../../../../renderer/editor/draft/draft.svelte.ts'
import { undoText } from '../../../../core/drafts/index.ts'
import { en } from '../../../../core/words/index.ts'
import { folder, store } from '../../../electron/bench.ts'
import { asking } from '../../../electron/requests/asking.ts'

const what = { code: 'removed', facts: { what: 'a bead' } } as never
const at = { person: () => 'Ana Ruiz', language: () => 'en' as const }

/** A draft on a real record, opened in as many windows as are asked for. */
async function windows(count: number, { follows = false, kept = (): void => undefined } = {}) {
  const { ask, get } = asking(await store(folder()))
  const client: Client = {
    async request(name, input) {
      const answer = await ask(name, input)
      kept()
      return answer
    },
  }
  const begun: OpenedDraft = await get('drafts.begin', {
    ...{ person: 'Ana Ruiz', name: 'Heron 4', from: 'Heron workshop manual' },
    origin: { kind: 'copy', engine: 'skerry-3', revision: 0 },
  })
  // As on a bench: each hears what the others edit.
  const opened: OpenedDraftState[] = []
  for (let each = 0; each < count; each += 1) {
    const others = () => opened.filter((_, index) => index !== each)
    const edited = follows ? () => others().forEach((other) => void other.reload()) : () => undefined
    opened.push(new OpenedDraftState(client, begun, { ...at, edited }))
  }
  return opened
}

describe('a draft in a window', () => {
  it('shows an edit once it is kept, with what the audit says of it, and undoes it', async () => {
    const [draft] = await windows(1)
    expect(draft!.findings.map(({ problem }) => problem.code)).toEqual([
      'source-copied-from-demo',
      'source-unchecked',
    ])
    const edited = draft!.edit(what, (document) => void (document.case.pitch = '40 mm'))
    expect(draft!.document.case.pitch).toBe('96 mm')
    expect(await edited).toBe(true)
    expect(draft!.document.case.pitch).toBe('40 mm')
    expect(draft!.findings[0]).toMatchObject({
      weight: 'fault',
      problem: { code: 'bores-overlap', path: 'case.pitch' },
    })
    expect(draft!.undoable).toEqual(what)
    await draft!.edit(null, (document) => void (document.fasteners[1]!.number = '77'))
    expect(undoText(en, draft!.undoable!)).toBe('Undo: fastener “77”, number')
    await draft!.undo()
    await draft!.undo()
    expect([draft!.document.case.pitch, draft!.undoable, draft!.redoable]).toEqual(['96 mm', null, what])
    await draft!.redo()
    expect(draft!.document.case.pitch).toBe('40 mm')
  })

  it('works out what an edit leads to while it is kept, and shows it once it is', async () => {
    const seen: unknown[] = []
    const [draft] = await windows(1, {
      kept: () => seen.push([draft!.document.case.pitch, draft!.ahead?.document.case.pitch]),
    })
    await draft!.edit(what, (document) => void (document.case.pitch = '40 mm'))
    await draft!.edit(what, (document) => void (document.case.pitch = '40'))
    expect(seen).toEqual([
      ['96 mm', '40 mm'],
      ['40 mm', undefined],
    ])
    expect([draft!.document.case.pitch, draft!.ahead]).toEqual(['40 mm', null])
    expect(draft!.findings[0]).toMatchObject({ problem: { code: 'bores-overlap' } })
  })

  it('makes edits one after the other, each on the document that the one before left', async () => {
    const [draft] = await windows(1)
    await Promise.all(
      [1, 2, 3].map((more) =>
        draft!.edit(what, (document) => void (document.revision = `${document.revision as string}${more}`)),
      ),
    )
    expect(draft!.document.revision).toBe('1123')
  })

  it('refuses what could not be read, says why, and is as it was', async () => {
    const [draft] = await windows(1)
    expect(await draft!.edit(what, (document) => void (document.case.bore = '84'))).toBe(false)
    expect(draft!.problem).toMatchObject({ code: 'draft-value-unfit', path: 'case.bore' })
    expect(draft!.document.case.bore).toBe('84 mm')
    expect(await draft!.edit(what, () => undefined)).toBe(true)
    expect(draft!.undoable).toBeNull()
  })

  it('follows what another window edits, which then can be undone in either', async () => {
    const [first, second] = await windows(2, { follows: true })
    await first!.edit(what, (document) => void (document.case.bore = '71 mm'))
    await expect.poll(() => second!.document.case.bore).toBe('71 mm')
    expect(await second!.undo()).toBe(true)
    await expect.poll(() => first!.document.case.bore).toBe('84 mm')
    expect(first!.redoable).toEqual(what)
  })

  it('that another window has edited is read again, and the late edit is not made over the first', async () => {
    const [first, second] = await windows(2)
    await first!.edit(what, (document) => void (document.case.bore = '71 mm'))
    expect(await second!.edit(what, (document) => void (document.case.bore = '72 mm'))).toBe(false)
    expect(second!.problem).toMatchObject({ code: 'draft-moved-on' })
    expect(second!.document.case.bore).toBe('71 mm')
    expect(await second!.edit(what, (document) => void (document.case.bore = '72 mm'))).toBe(true)
    await first!.reload()
    expect(first!.document.case.bore).toBe('72 mm')
    const before = first!.document
    await first!.reload()
    expect(first!.document).toBe(before)
  })
})
