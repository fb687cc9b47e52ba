import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  beginDraft,
  changesBetween,
  decideDraft,
  documentIn,
  documentOf,
  evolveDraft,
  patched,
  patchesBy,
  redoable,
  replayDraft,
  undoable,
  type Draft,
  type DraftAct,
  type DraftEvent,
  type Json,
  type OpenDocument,
} from '../../../core/drafts/index.ts'
import { checkProperty } from '../../property.ts'
import { runs } from '../../runs.ts'
import { changed, damaged, misprinted, placesIn } from '../engine/damaged.ts'
import { demoDraft, demoText } from '../engine/demo.ts'

const what = { code: 'removed', facts: { what: { code: 'angleInAll', facts: {} } } } as never

const ada = 'Ada Brook'
const ofAda = (event: DraftEvent) => ({ event, person: ada })

function edit(draft: Draft, recipe: (document: OpenDocument) => void): DraftAct {
  return { type: 'edit', edit: { what, patches: [...patchesBy(documentOf(draft), recipe)] } }
}

function acted(draft: Draft, act: DraftAct): Draft {
  const event = decideDraft(draft, act, ada)
  if (!event.ok) throw new Error(event.problem.code)
  return evolveDraft(draft, { event: event.value, person: ada })
}

const named = (name: string) => (document: OpenDocument) => void (document.name = name)
const begun = () => beginDraft(documentIn(demoText('skerry-3')))
/** With a manual, whose numbers another person entered. */
const entered = (): Draft => {
  const source = { kind: 'entered', from: 'Shop notes', enteredBy: 'Bo Lind', on: '2026-03-01' } as const
  return beginDraft({ ...documentIn(demoText('skerry-3')), source })
}

describe('patches', () => {
  it('between two documents make the second of the first, whatever the two are', () => {
    checkProperty(
      fc.property(fc.jsonValue(), fc.jsonValue(), (before, after) => {
        fc.pre(changesBetween(before as Json, after as Json).every(({ path }) => path !== ''))
        expect(patched(before as Json, changesBetween(before as Json, after as Json))).toEqual(after)
      }),
      { numRuns: runs(300, 2000) },
    )
  })

  it('between a spec and the same one damaged are few, and leave the rest the very same objects', () => {
    const spec = demoDraft('skerry-3') as unknown as Json
    checkProperty(
      fc.property(fc.constantFrom(...placesIn(spec as never).slice(1)), (path) => {
        const after = changed(spec as never, path, '1 mm') as Json
        const patches = changesBetween(spec, after)
        expect(patches.length).toBeLessThan(4)
        const made = patched(spec, patches) as Record<string, Json>
        expect(made).toEqual(after)
        for (const [key, part] of Object.entries(spec as Record<string, Json>))
          if (key !== path[0]) expect(made[key]).toBe(part)
      }),
      { numRuns: runs(60, 300) },
    )
  })

  it('of a list that has one entry more or less are one', () => {
    const draft = begun()
    const less = patchesBy(documentOf(draft), (document) => void document.fasteners.splice(3, 1))
    expect(less).toEqual([{ op: 'remove', path: '/fasteners/3' }])
    const more = patchesBy(documentOf(draft), ({ steps }) => void steps.splice(2, 0, steps.at(-1)!))
    expect(more).toMatchObject([{ op: 'add', path: '/steps/2' }])
  })

  it('that do not fit change nothing', () => {
    for (const patch of [
      { op: 'remove', path: '/crank/throws/99' },
      { op: 'replace', path: '/nothing', value: 1 },
      { op: 'add', path: '/id/first', value: 1 },
      { op: 'add', path: '/steps/-', value: 1 },
      { op: 'replace', path: '/__proto__/polluted', value: 1 },
    ] as const)
      expect(patched(documentOf(begun()) as Json, [patch]), patch.path).toBeNull()
    expect('polluted' in {}).toBe(false)
  })
})

describe('a draft', () => {
  it('undoes and does again, and says what', () => {
    const first = acted(begun(), edit(begun(), named('Heron 3')))
    const second = acted(first, edit(first, named('Heron 4')))
    const back = acted(second, { type: 'undo' })
    expect(documentOf(back).name).toBe('Heron 3')
    expect(undoable(back)).toEqual(what)
    expect(redoable(back)).toEqual(what)
    expect(documentOf(acted(back, { type: 'redo' })).name).toBe('Heron 4')
    const start = acted(back, { type: 'undo' })
    expect(documentOf(start)).toBe(begun().base === start.base ? documentOf(start) : start.base)
    expect(decideDraft(start, { type: 'undo' }, ada)).toMatchObject({
      problem: { code: 'draft-nothing-to-undo' },
    })
  })

  it('drops what was undone once another edit is made', () => {
    const first = acted(begun(), edit(begun(), named('Heron 3')))
    const back = acted(first, { type: 'undo' })
    const other = acted(back, edit(back, named('Tern 1')))
    expect(redoable(other)).toBeNull()
    expect(decideDraft(other, { type: 'redo' }, ada)).toMatchObject({
      problem: { code: 'draft-nothing-to-redo' },
    })
    expect(documentOf(other).name).toBe('Tern 1')
  })

  it('takes no edit after which it could not be read', () => {
    const draft = begun()
    const without: DraftAct = {
      type: 'edit',
      edit: { what, patches: [{ op: 'remove', path: '/case/bore' }] },
    }
    expect(decideDraft(draft, without, ada)).toMatchObject({
      problem: { code: 'draft-value-unfit', path: 'case.bore' },
    })
    const twice = edit(draft, ({ fasteners }) => void (fasteners[1]!.id = fasteners[0]!.id))
    expect(decideDraft(draft, twice, ada)).toMatchObject({ problem: { code: 'spec-id-twice' } })
  })

  it('that is discarded is edited no more until it is brought back', () => {
    const gone = acted(begun(), { type: 'discard' })
    expect(decideDraft(gone, edit(gone, named('Heron')), ada)).toMatchObject({
      problem: { code: 'draft-closed' },
    })
    expect(decideDraft(acted(gone, { type: 'bring-back' }), { type: 'discard' }, ada)).toMatchObject({
      ok: true,
    })
  })

  it('is what its entries say, and undo after an edit is the document before it, over random edits', () => {
    const before = documentIn(demoText('skerry-3'))
    const acts = fc.array(
      fc.oneof(
        fc.oneof(damaged, misprinted).map((document) => ({ to: document })),
        fc.constantFrom('undo' as const, 'redo' as const),
      ),
      { minLength: 1, maxLength: 12 },
    )
    let undone = 0
    checkProperty(
      fc.property(acts, (list) => {
        const events: DraftEvent[] = []
        let draft = beginDraft(before)
        for (const each of list) {
          const act: DraftAct =
            typeof each === 'string'
              ? { type: each }
              : {
                  type: 'edit',
                  edit: { what, patches: [...changesBetween(documentOf(draft), each.to)] },
                }
          if (act.type === 'edit' && act.edit.patches.some(({ path }) => path === '')) continue
          const event = decideDraft(draft, act, ada)
          if (!event.ok) continue
          const after = evolveDraft(draft, { event: event.value, person: ada })
          if (event.value.type === 'edited') {
            expect(documentOf(acted(after, { type: 'undo' }))).toBe(documentOf(draft))
            undone += 1
          }
          events.push(event.value)
          draft = after
        }
        expect(documentOf(replayDraft(before, events.map(ofAda)))).toEqual(documentOf(draft))
        // As they come back from the record.
        const kept = JSON.parse(JSON.stringify(events)) as DraftEvent[]
        expect(documentOf(replayDraft(before, kept.map(ofAda)))).toEqual(documentOf(draft))
      }),
      { numRuns: runs(20, 100) },
    )
    expect(undone).toBeGreaterThan(10)
  })
})

describe('a note on a value', () => {
  const check = (path: string) => ({ path, by: 'Ana Ruiz', on: '2026-03-02', how: 'same' as const })
  const paths = (draft: Draft) => documentOf(draft).checks?.map(({ path }) => path)
  const checkedDraft = (...checks: readonly string[]) =>
    acted(
      entered(),
      edit(entered(), (document) => void (document.checks = checks.map(check))),
    )

  it('goes when its value is changed, and stays where another one is', () => {
    const draft = checkedDraft('case.bore', 'case.pitch')
    const other = acted(
      draft,
      edit(draft, (document) => void (document.case.bore = '71 mm')),
    )
    expect(paths(other)).toEqual(['case.pitch'])
    expect(paths(acted(other, { type: 'undo' }))).toEqual(['case.bore', 'case.pitch'])
  })

  it('moves with its entry when one before it is added or taken out', () => {
    const draft = checkedDraft('fastenerGroups[0].grip', 'fastenerGroups[1].grip', 'fasteners[2].at')
    const one = documentOf(draft).fastenerGroups[0]!
    const more = acted(
      draft,
      edit(
        draft,
        ({ fastenerGroups }) => void fastenerGroups.unshift({ ...one, id: 'another', grip: '99 mm' }),
      ),
    )
    expect(paths(more)).toEqual(['fastenerGroups[1].grip', 'fastenerGroups[2].grip', 'fasteners[2].at'])
    const less = acted(
      more,
      edit(more, ({ fastenerGroups }) => void fastenerGroups.shift()),
    )
    expect(paths(less)).toEqual(['fastenerGroups[0].grip', 'fastenerGroups[1].grip', 'fasteners[2].at'])
  })

  it('on a part that is taken out goes with it', () => {
    const draft = checkedDraft('cautions[0].text', 'cautions')
    const less = acted(
      draft,
      edit(draft, ({ cautions }) => void cautions.splice(0, 1)),
    )
    expect(paths(less)).toEqual([])
  })
})
