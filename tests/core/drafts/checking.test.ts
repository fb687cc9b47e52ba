import { describe, expect, it } from 'vitest'
import { numbersOf, audit } from '../../../core/audit/index.ts'
import {
  beginDraft,
  changesBetween,
  checkOf,
  checkState,
  decideDraft,
  documentOf as documentOfDraft,
  evolveDraft,
  pageOf,
  revisionOf,
  typistsIn,
  valuesToCheck,
  withAccepted,
  withChecked,
  withoutAccepted,
  withPage,
  withTypists,
  type Answer,
  type Draft,
  type SpecDocument,
} from '../../../core/drafts/index.ts'
import { specOf } from '../engine/demo.ts'
import { documentOf, entered } from './document-of-demo.ts'

const bo = { by: 'Bo Lind', on: '2026-04-01' }
const ada = { by: 'ada brook ', on: '2026-04-01' }
/** Nothing was typed since the draft was begun. */
const nobody = new Map<string, string>()
const same: Answer = { how: 'same' }

function checked(document: SpecDocument, path: string, answer: Answer = same): SpecDocument {
  const outcome = withChecked(document, { path }, answer, bo, nobody)
  if (!outcome.ok) throw new Error(outcome.problem.code)
  return outcome.value
}
const all = (document: SpecDocument) =>
  valuesToCheck(document).reduce((now, { path }) => checked(now, path), document)
const checkedBy = ({ source }: SpecDocument) => (source.kind === 'entered' ? source.checkedBy : null)

/** The document after an edit that a draft took. */
function edited(document: SpecDocument, change: (document: SpecDocument) => SpecDocument): SpecDocument {
  const draft: Draft = beginDraft(document)
  const patches = [...changesBetween(document, change(document))]
  const act = { type: 'edit', edit: { what: { code: 'pasted', facts: { count: 1 } }, patches } } as const
  const event = decideDraft(draft, act, bo.by)
  if (!event.ok) throw new Error(event.problem.code)
  return documentOfDraft(evolveDraft(draft, { event: event.value, person: bo.by }))
}

describe('a second-person check', () => {
  it('is not for who entered the numbers, nor of a demo', () => {
    expect(withChecked(entered, { path: 'case.bore' }, same, ada, nobody)).toMatchObject({
      problem: { code: 'check-by-who-entered' },
    })
    expect(withChecked(documentOf('skerry-3'), { path: 'case.bore' }, same, bo, nobody)).toMatchObject({
      problem: { code: 'check-of-a-demo' },
    })
  })

  it('is not for who corrected the value either, and then is for who entered the others', () => {
    let draft = beginDraft(entered)
    const act = (by: string, change: (document: SpecDocument) => SpecDocument) => {
      const patches = [...changesBetween(documentOfDraft(draft), change(documentOfDraft(draft)))]
      const edit = { what: { code: 'pasted', facts: { count: 1 } }, patches } as const
      const event = decideDraft(draft, { type: 'edit', edit }, by)
      if (event.ok) draft = evolveDraft(draft, { event: event.value, person: by })
      return event.ok ? null : event.problem.code
    }
    const checkBy = ({ by, on }: typeof bo, path: string) =>
      act(by, (document) => ({
        ...document,
        checks: [...(document.checks ?? []), { path, by, on, ...same }],
      }))

    expect(
      act(bo.by, (document) => ({ ...document, case: { ...document.case, bore: '88.5 mm' } })),
    ).toBeNull()
    expect(typistsIn(draft)).toEqual(new Map([['case.bore', bo.by]]))
    const offered = ({ by, on }: typeof bo, path: string) =>
      withChecked(documentOfDraft(draft), { path }, same, { by, on }, typistsIn(draft)).ok
    expect([offered(bo, 'case.bore'), offered(ada, 'case.bore')]).toEqual([false, true])
    expect([offered(bo, 'case.pitch'), offered(ada, 'case.pitch')]).toEqual([true, false])
    // Nor where a window does not ask: what is kept is decided by the host.
    expect(checkBy(bo, 'case.bore')).toBe('check-by-who-entered')
    expect(checkBy(ada, 'case.pitch')).toBe('check-by-who-entered')
    expect(checkBy(ada, 'case.bore')).toBeNull()
    expect(checkBy(bo, 'case.pitch')).toBeNull()
    // Put back by an undo, it is as it was entered.
    for (let undo = 0; undo < 3; undo += 1) {
      const undone = decideDraft(draft, { type: 'undo' }, bo.by)
      if (undone.ok) draft = evolveDraft(draft, { event: undone.value, person: bo.by })
    }
    expect(typistsIn(draft)).toEqual(nobody)
  })

  it('makes the spec checked once every value is the same, and not before', () => {
    const values = valuesToCheck(entered)
    const [last, ...rest] = values.toReversed()
    const almost = rest.reduce((now, { path }) => checked(now, path), entered)
    expect(checkedBy(almost)).toBeUndefined()
    expect(checkState(almost).left).toEqual([last])
    const whole = checked(almost, last!.path)
    expect(checkedBy(whole)).toBe('Bo Lind')
    expect(audit(specOf(whole as never)).map(({ problem }) => problem.code)).not.toContain('source-unchecked')
  })

  it('says where the manual reads otherwise, until the value is corrected', () => {
    const other = checked(all(entered), 'case.bore', { how: 'other', found: '71 mm' })
    expect(checkedBy(other)).toBeUndefined()
    expect(audit(specOf(other as never)).map(({ problem }) => problem.code)).toContain(
      'value-reads-otherwise',
    )
    const corrected = edited(other, (now) => ({ ...now, case: { ...now.case, bore: '71 mm' } }))
    expect(checkOf(corrected, { path: 'case.bore' })).toBeNull()
    expect(checkState(corrected).left.map(({ path }) => path)).toEqual(['case.bore'])
  })

  it('is lost with a change of its value alone, and the spec is unchecked then', () => {
    const whole = all(entered)
    const after = edited(whole, (now) => ({ ...now, case: { ...now.case, bore: '70.5 mm' } }))
    expect(checkedBy(after)).toBeUndefined()
    expect(checkState(after).left.map(({ path }) => path)).toEqual(['case.bore'])
    const named = edited(whole, (now) => ({ ...now, summary: 'Another sentence' }))
    expect(checkedBy(named)).toBe('Bo Lind')
  })

  it('is asked of a value that is new', () => {
    const after = edited(all(entered), (now) => ({
      ...now,
      fastenerGroups: now.fastenerGroups.map((group, at) => (at === 0 ? { ...group, shank: '7 mm' } : group)),
    }))
    expect(checkedBy(after)).toBeUndefined()
    expect(checkState(after).left.map(({ path }) => path)).toEqual(['fastenerGroups[0].shank'])
  })
})

describe('the next revision', () => {
  const notes = { from: 'Shop notes', on: '2026-05-02' }
  /** Revision 1 as Ada entered it, with a bore that Cy corrected, all of it compared by Bo. */
  const first = all(
    withTypists(
      { ...entered, case: { ...entered.case, bore: '85 mm' } },
      new Map([['case.bore', 'Cy Moss']]),
    ),
  )
  const next = (from: string) => revisionOf(first, { ...notes, from, person: 'Bo Lind', revision: 2 })
  const typists = (draft: Draft) => Object.fromEntries(typistsIn(draft))
  const edit = (draft: Draft, person: string, change: (document: SpecDocument) => SpecDocument): Draft => {
    const patches = [...changesBetween(documentOfDraft(draft), change(documentOfDraft(draft)))]
    const act = { type: 'edit', edit: { what: { code: 'pasted', facts: { count: 1 } }, patches } } as const
    const event = decideDraft(draft, act, person)
    if (!event.ok) throw new Error(event.problem.code)
    return evolveDraft(draft, { event: event.value, person })
  }
  const pitchOf = (pitch: string) => (document: SpecDocument) => ({
    ...document,
    case: { ...document.case, pitch },
  })

  it('keeps who entered and who checked each value, for whoever begins it', () => {
    const begun = beginDraft(next('Shop notes'))
    expect(begun.base.source).toMatchObject({
      enteredBy: 'Ada Brook',
      checkedBy: 'Bo Lind',
      on: '2026-05-02',
    })
    expect(checkState(begun.base).left).toEqual([])
    expect(typists(begun)).toEqual({ 'case.bore': 'Cy Moss' })
  })

  it('is checked as a whole by nobody yet where it follows another edition, and each value keeps its check', () => {
    const { base } = beginDraft(next('Shop notes, 2nd edition'))
    expect(checkedBy(base)).toBeUndefined()
    expect(checkOf(base, { path: 'case.bore' })).toMatchObject({ by: 'Bo Lind', how: 'same' })
  })

  it('has a changed value typed by who changed it, without a check, and nothing else', () => {
    const draft = edit(beginDraft(next('Shop notes')), 'Bo Lind', pitchOf('97 mm'))
    expect(typists(draft)).toEqual({ 'case.bore': 'Cy Moss', 'case.pitch': 'Bo Lind' })
    const document = documentOfDraft(draft)
    expect(checkedBy(document)).toBeUndefined()
    expect(checkState(document).left.map(({ path }) => path)).toEqual(['case.pitch'])
    const asked = (by: string) =>
      withChecked(document, { path: 'case.pitch' }, same, { by, on: '2026-05-03' }, typistsIn(draft)).ok
    expect([asked('Bo Lind'), asked('Ada Brook')]).toEqual([false, true])
  })

  it('says in the revision after it who typed what in this one', () => {
    const draft = edit(beginDraft(next('Shop notes')), 'Bo Lind', pitchOf('97 mm'))
    const second = withTypists(documentOfDraft(draft), typistsIn(draft))
    expect(second.typedBy).toEqual([
      { path: 'case.bore', by: 'Cy Moss' },
      { path: 'case.pitch', by: 'Bo Lind' },
    ])
    const third = beginDraft(revisionOf(second, { ...notes, person: 'Cy Moss', revision: 3 }))
    expect(typists(third)).toEqual({ 'case.bore': 'Cy Moss', 'case.pitch': 'Bo Lind' })
    // Ada, who entered the spec, takes a value back to hers: nobody else typed it then.
    const mended = edit(third, 'Ada Brook', pitchOf('96 mm'))
    expect(withTypists(documentOfDraft(mended), typistsIn(mended)).typedBy).toEqual([
      { path: 'case.bore', by: 'Cy Moss' },
    ])
  })

  it('keeps who typed and who checked an entry that moves up as the one before it is taken out', () => {
    const group = { ...entered.fastenerGroups[0]!, id: 'spare', name: 'Spare', grip: '31 mm' }
    const groups = [group, ...entered.fastenerGroups]
    const path = `fastenerGroups[${groups.length - 1}].grip`
    const document = all({ ...entered, fastenerGroups: groups, typedBy: [{ path, by: 'Cy Moss' }] })
    const begun = beginDraft(revisionOf(document, { ...notes, person: 'Bo Lind', revision: 2 }))
    const draft = edit(begun, 'Bo Lind', (now) => ({ ...now, fastenerGroups: now.fastenerGroups.slice(1) }))
    const moved = `fastenerGroups[${groups.length - 2}].grip`
    expect(typists(draft)).toEqual({ [moved]: 'Cy Moss' })
    expect(documentOfDraft(draft).typedBy).toEqual([{ path: moved, by: 'Cy Moss' }])
    expect(checkState(documentOfDraft(draft)).left).toEqual([])
  })

  it('of a draft that an earlier version began is typed by who began it, as that version had it', () => {
    const old: SpecDocument = { ...entered, source: { ...notes, kind: 'entered', enteredBy: 'Bo Lind' } }
    const draft = edit(beginDraft(old), 'Ada Brook', pitchOf('97 mm'))
    expect(typists(draft)).toEqual({ 'case.pitch': 'Ada Brook' })
    const asked = withChecked(old, { path: 'case.bore' }, same, bo, typistsIn(draft))
    expect(asked).toMatchObject({ problem: { code: 'check-by-who-entered' } })
  })
})

describe('the page of a part', () => {
  const page = { page: '7-12', document: '' }
  const noted = withPage(entered, 'procedures[1]', page, bo)

  it('holds for all that is in the part, unless what is in it has its own', () => {
    const both = withPage(noted, 'procedures[1].passes[0]', { page: '7-13', document: 'Bulletin 4' }, bo)
    expect(pageOf(both, 'procedures[1].passes[2].target')?.page).toBe('7-12')
    expect(pageOf(both, 'procedures[1].passes[0].target')).toMatchObject({
      page: '7-13',
      document: 'Bulletin 4',
    })
    expect(pageOf(both, 'procedures[10]')).toBeNull()
  })

  it('stays where something in the part changes, moves with the part, and goes with it', () => {
    const renamed = edited(noted, (now) => ({
      ...now,
      procedures: now.procedures.map((each, at) => (at === 1 ? { ...each, name: 'Another' } : each)),
    }))
    expect(pageOf(renamed, 'procedures[1]')?.page).toBe('7-12')
    const [first, second] = entered.procedures
    const without = (gone: string) =>
      edited(noted, (now) => ({
        ...now,
        procedures: now.procedures.filter(({ id }) => id !== gone),
        steps: now.steps
          .filter((step) => step.kind !== 'run-procedure' || step.procedure !== gone)
          .map((step) => ({ ...step, after: [] })),
        parts: [],
        case: { ...now.case, faces: now.case.faces.map(({ gasket: _, ...face }) => face) },
        cautions: now.cautions.filter(({ steps }) => steps === undefined),
      }))
    expect(pageOf(without(first!.id), 'procedures[0]')?.page).toBe('7-12')
    expect(without(second!.id).pages ?? []).toEqual([])
  })

  it('is taken out by an empty one', () => {
    expect(withPage(noted, 'procedures[1]', { page: ' ', document: '' }, bo)).not.toHaveProperty('pages')
  })
})

describe('an acceptance', () => {
  it('keeps the numbers that it is of, and is taken back', () => {
    const doubt = audit(specOf({ ...entered, cautions: entered.cautions.slice(1) }))[0]!.problem
    const why = { reason: 'It hangs on the wall', ...bo }
    const accepted = withAccepted(withAccepted(entered, doubt, why), doubt, why)
    expect(accepted.accepted).toEqual([
      { code: doubt.code, path: doubt.path, numbers: [...numbersOf(doubt)], ...why },
    ])
    expect(withoutAccepted(accepted, doubt)).not.toHaveProperty('accepted')
  })
})
