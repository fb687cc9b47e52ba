import { describe, expect, it } from 'vitest'
import type { Input, Output } from '../../../core/contract/index.ts'
import {
  documentIn,
  documentOf,
  patchesBy,
  replayDraft,
  type DraftAct,
  type OpenDocument,
} from '../../../core/drafts/index.ts'
import { folder, store } from '../bench.ts'
import { asking, engines } from './asking.ts'

const what = { code: 'removed', facts: {} } as never
const copy: Input<'drafts.begin'> = {
  ...{ person: 'Ana Ruiz', name: 'Heron 4', from: 'Heron workshop manual, 2nd edition' },
  origin: { kind: 'copy', engine: 'skerry-3', revision: 0 },
}
const bare: Input<'drafts.begin'> = {
  ...copy,
  origin: {
    kind: 'bare',
    parameters: {
      ...{ family: 'caps', cylinders: 4, bankAngle: '0 °', bore: '82 mm', pitch: '90 mm', mains: 5 },
      ...{ mainDiameter: '58 mm', mainWidth: '24 mm', thrustMain: 3, rods: null },
    },
  },
}

const documentAt = ({ base, entries }: Output<'drafts.open'>) =>
  documentOf(replayDraft(documentIn(base), entries))

async function bench(inFolder = folder()) {
  const record = await store(inFolder)
  const host = asking(record)
  const edit = async (
    opened: Output<'drafts.open'>,
    recipe: (document: OpenDocument) => void,
    after?: number,
    person = 'Ana Ruiz',
  ) => {
    const act: DraftAct = {
      type: 'edit',
      edit: { what, patches: [...patchesBy(documentAt(opened), recipe)] },
    }
    return host.ask('drafts.act', {
      ...{ draft: opened.line.id, person, act },
      after: after ?? opened.line.entries,
    })
  }
  return { ...host, record, edit, inFolder }
}

describe('a draft', () => {
  it('is begun from a copy of a demo, with a name and an id of its own, and says whose numbers it has', async () => {
    const { get } = await bench()
    const opened = await get('drafts.begin', copy)
    expect(opened.line).toMatchObject({
      engine: 'heron-4',
      name: 'Heron 4',
      revision: 1,
      faults: 0,
      doubts: 2,
    })
    expect(documentAt(opened).source).toMatchObject({ kind: 'entered', copiedFromDemo: 'skerry-3' })
    const again = await get('drafts.begin', copy)
    expect(again.line.engine).toBe('heron-4-2')
  })

  it('is begun from a family, says what is missing, and starts no build', async () => {
    const { get, ask } = await bench()
    const { line } = await get('drafts.begin', bare)
    expect(line).toMatchObject({ family: 'caps', state: 'open' })
    expect(line.faults).toBeGreaterThan(0)
    expect(await ask('drafts.publish', { draft: line.id, after: 0, person: 'Ana Ruiz' })).toMatchObject({
      problem: { code: 'draft-faulty', facts: { faults: line.faults } },
    })
    const start = { engine: line.engine, name: 'One', serial: '', person: 'Ana Ruiz' }
    expect(await ask('builds.start', start)).toMatchObject({ problem: { code: 'engine-unknown' } })
  })

  it('is not begun without a name, a manual or an engine that is there', async () => {
    const { ask } = await bench()
    const codes = await Promise.all(
      [
        { ...copy, name: ' ' },
        { ...copy, from: ' ' },
        { ...copy, person: '' },
        { ...copy, origin: { kind: 'copy', engine: 'skerry-3', revision: 4 } } as const,
        { ...copy, origin: { kind: 'revision', engine: 'skerry-3' } } as const,
      ].map(async (input) => {
        const answer = await ask('drafts.begin', input)
        return answer.ok ? 'begun' : answer.problem.code
      }),
    )
    expect(codes).toEqual([
      'engine-name-missing',
      'engine-manual-missing',
      'person-missing',
      'library-engine-unknown',
      'library-engine-unknown',
    ])
  })

  it('has every edit on disk that was confirmed: it is the same after a restart, and undone there', async () => {
    const first = await bench()
    const opened = await first.get('drafts.begin', copy)
    expect(await first.edit(opened, (document) => void (document.case.bore = '71 mm'))).toMatchObject({
      ok: true,
    })
    first.record.close()
    const second = await bench(first.inFolder)
    const draft = opened.line.id
    expect(documentAt(await second.get('drafts.open', { draft })).case.bore).toBe('71 mm')
    await second.get('drafts.act', { draft, after: 1, person: 'Ana Ruiz', act: { type: 'undo' } })
    second.record.close()
    const third = await bench(first.inFolder)
    expect(documentAt(await third.get('drafts.open', { draft }))).toEqual(documentAt(opened))
    await third.get('drafts.act', { draft, after: 2, person: 'Ana Ruiz', act: { type: 'redo' } })
    expect(documentAt(await third.get('drafts.open', { draft })).case.bore).toBe('71 mm')
  })

  it('in two windows is not written over: the second hears of it, and finds the first edit', async () => {
    const { get, edit } = await bench()
    const opened = await get('drafts.begin', copy)
    await edit(opened, (document) => void (document.case.bore = '71 mm'))
    const late = await edit(opened, (document) => void (document.case.pitch = '97 mm'))
    expect(late).toMatchObject({ problem: { code: 'draft-moved-on', facts: { last: 1 } } })
    const now = documentAt(await get('drafts.open', { draft: opened.line.id }))
    expect([now.case.bore, now.case.pitch]).toEqual(['71 mm', '96 mm'])
  })

  it('that is discarded can be brought back, and is not edited meanwhile', async () => {
    const { get, edit, ask } = await bench()
    const opened = await get('drafts.begin', copy)
    const draft = opened.line.id
    const act = (type: 'discard' | 'bring-back', after: number) =>
      ask('drafts.act', { draft, after, person: 'Ana Ruiz', act: { type } })
    await act('discard', 0)
    expect(await edit(opened, (document) => void (document.case.bore = '71 mm'), 1)).toMatchObject({
      problem: { code: 'draft-closed' },
    })
    expect(await get('drafts.list', {})).toMatchObject([{ state: 'discarded' }])
    expect(await act('bring-back', 1)).toMatchObject({ ok: true })
  })

  it('takes nothing that is no edit, and nothing is changed by it', async () => {
    const { get, ask, bugs } = await bench()
    const { line } = await get('drafts.begin', copy)
    for (const patches of [
      [],
      [{ op: 'remove', path: '/steps' }],
      [{ op: 'replace', path: '/case/bore', value: { __proto__: 1 } }],
      [{ op: 'add', path: 'steps', value: 1 }],
      [{ op: 'move', from: '/a', path: '/b' }],
      [{ op: 'replace', path: '/fasteners/0/id', value: '\ud800' }],
    ]) {
      const act = { type: 'edit', edit: { what, patches } } as unknown as DraftAct
      const answer = await ask('drafts.act', { draft: line.id, after: 0, person: 'Ana Ruiz', act })
      expect(answer.ok, JSON.stringify(patches)).toBe(false)
    }
    expect(bugs).toEqual([])
    expect((await get('drafts.open', { draft: line.id })).entries).toEqual([])
  })

  it.each([
    ['an event that is not known here', { type: 'split' }],
    [
      'a patch that does not fit',
      { type: 'edited', edit: { what, patches: [{ op: 'remove', path: '/zz' }] } },
    ],
    ['an undo of nothing', { type: 'undone' }],
  ])('with %s is kept, and neither opened nor written on; the others are listed', async (_, event) => {
    const { get, record, inFolder } = await bench()
    const { line } = await get('drafts.begin', copy)
    const other = await get('drafts.begin', { ...copy, name: 'Heron 5' })
    const kept = { seq: 1, at_utc: '2026-11-29T10:00:00.000Z', person: 'Ana Ruiz' }
    record.drafts.append(line.id, { ...kept, event_json: JSON.stringify(event) })
    record.close()

    const again = await bench(inFolder)
    expect((await again.get('drafts.list', {})).map(({ id }) => id)).toEqual([other.line.id, line.id])
    const facts = { draft: line.id, after: 0, person: 'Ana Ruiz' }
    for (const answer of [
      await again.ask('drafts.open', { draft: line.id }),
      await again.ask('drafts.act', { ...facts, act: { type: 'discard' } }),
      await again.ask('drafts.publish', facts),
    ])
      expect(answer).toMatchObject({ ok: false, problem: { code: 'draft-of-another-version' } })
    expect(again.record.drafts.entries(line.id)).toHaveLength(1)
  })
})

describe('the library', () => {
  /** A copy of a demo, published. */
  async function published() {
    const host = await bench()
    const opened = await host.get('drafts.begin', copy)
    const line = await host.get('drafts.publish', { draft: opened.line.id, after: 0, person: 'Ana Ruiz' })
    return { ...host, opened, line }
  }

  it('has what was published, unchecked where nobody checked it, and builds begin from it', async () => {
    const { get, begin, line, opened } = await published()
    expect(line).toMatchObject({
      engine: 'heron-4',
      revision: 1,
      checkedBy: null,
      enteredBy: 'Ana Ruiz',
      builds: 0,
    })
    expect(await get('drafts.list', {})).toEqual([])
    const listed = await get('engines.list', {})
    expect(listed.find(({ id }) => id === 'heron-4')).toMatchObject({
      demo: false,
      faults: [],
      doubts: [{ code: 'source-copied-from-demo' }, { code: 'source-unchecked' }],
    })
    await begin()
    const build = await get('builds.start', {
      engine: 'heron-4',
      name: 'Pump 4',
      serial: '',
      person: 'Ana Ruiz',
    })
    expect(documentIn(build.specText)).toEqual(documentAt(opened))
    const lines = await get('library.list', {})
    const [fen] = (await get('library.list', { language: 'de' })).filter(({ engine }) => engine === 'fen-1')
    expect(fen).toMatchObject({
      name: 'Fen 1 Grabenpumpe',
      alsoCalled: ['Fen 1 ditch pump', 'Bomba de acequia Fen 1'],
    })
    expect(lines.filter(({ builds }) => builds > 0).map(({ engine, builds }) => [engine, builds])).toEqual([
      ['heron-4', 1],
      ['skerry-3', 1],
    ])
  })

  it('gives a new revision to new builds alone', async () => {
    const { get, edit } = await published()
    const start = { engine: 'heron-4', name: 'Pump 4', serial: '', person: 'Ana Ruiz' }
    const before = await get('builds.start', start)
    const next = await get('drafts.begin', {
      ...copy,
      name: '',
      origin: { kind: 'revision', engine: 'heron-4' },
    })
    expect(next.line).toMatchObject({ engine: 'heron-4', revision: 2, name: 'Heron 4' })
    await edit(next, (document) => void (document.case.bore = '71 mm'), 0, 'Bo Lind')
    await get('drafts.publish', { draft: next.line.id, after: 1, person: 'Bo Lind' })
    const { line, specText } = await get('builds.open', { build: before.line.id })
    expect(documentIn(specText)).toMatchObject({ revision: '1', case: { bore: '84 mm' } })
    expect(line.entries).toBe(1)
    const after = await get('builds.start', start)
    expect(documentIn(after.specText)).toMatchObject({
      ...{ revision: '2', case: { bore: '71 mm' }, source: { enteredBy: 'Ana Ruiz' } },
      typedBy: [{ path: 'case.bore', by: 'Bo Lind' }],
    })
    expect(
      (await get('library.revisions', { engine: 'heron-4' })).map(({ revision, builds }) => [
        revision,
        builds,
      ]),
    ).toEqual([
      [2, 1],
      [1, 1],
    ])
  })

  it('takes one draft as the next revision, and tells the other', async () => {
    const { get, ask } = await published()
    const origin = { kind: 'revision', engine: 'heron-4' } as const
    const [one, other] = [
      await get('drafts.begin', { ...copy, origin }),
      await get('drafts.begin', { ...copy, origin }),
    ]
    await get('drafts.publish', { draft: one.line.id, after: 0, person: 'Ana Ruiz' })
    const late = await ask('drafts.publish', { draft: other.line.id, after: 0, person: 'Ana Ruiz' })
    expect(late).toMatchObject({ problem: { code: 'draft-overtaken', facts: { revision: 2 } } })
    expect(await get('drafts.list', {})).toMatchObject([{ id: other.line.id, state: 'open' }])
  })

  it('is reported when a published draft is edited', async () => {
    const { edit, opened } = await published()
    expect(await edit(opened, (document) => void (document.case.bore = '71 mm'), 1)).toMatchObject({
      problem: { code: 'draft-closed', facts: { state: 'published' } },
    })
  })

  it('goes into a file and comes out of it word for word, at another bench', async () => {
    const { get } = await published()
    const { fileName, text } = await get('library.export', { engine: 'heron-4', revision: 1 })
    expect(fileName).toBe('heron-4-1.bedplate-spec')
    const elsewhere = await bench()
    const taken = await elsewhere.get('library.import', { text, person: 'Bo Lind' })
    expect(taken).toMatchObject({
      kind: 'added',
      line: { engine: 'heron-4', revision: 1, publishedBy: 'Bo Lind' },
    })
    const read = { engine: 'heron-4', revision: 1 }
    expect(await elsewhere.get('library.read', read)).toEqual(await get('library.read', read))
    expect((await elsewhere.get('library.export', read)).text).toBe(text)
    expect(await elsewhere.get('library.import', { text, person: 'Bo Lind' })).toMatchObject({
      kind: 'known',
    })
  })

  it('takes in every demo engine to the byte where the program comes without it', async () => {
    const record = await store(folder())
    const without = asking(record, { engines: [] })
    const here = await bench()
    for (const { id } of engines) {
      const { text } = await here.get('library.export', { engine: id, revision: 0 })
      await without.get('library.import', { text, person: 'Bo Lind' })
      const out = await without.get('library.export', { engine: id, revision: 1 })
      expect(out.text, id).toBe(text)
      expect(await here.get('library.import', { text, person: 'Bo Lind' })).toMatchObject({ kind: 'known' })
    }
  })

  it('is there after a restart', async () => {
    const { record, inFolder } = await published()
    record.close()
    const again = await bench(inFolder)
    expect((await again.get('library.list', {}))[0]).toMatchObject({ engine: 'heron-4', revision: 1 })
  })
})
