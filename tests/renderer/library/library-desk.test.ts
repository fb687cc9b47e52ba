import { describe, expect, it } from 'vitest'
import type { Client, LibraryLine } from '../../../core/contract/index.ts'
import { inUnitOfBore, usualBare } from '../../../renderer/library/bare-form.ts'
import { LibraryDesk } from '../../../renderer/library/library-desk.svelte.ts'
import { foundIn } from '../../../renderer/library/library-search.ts'
import { folder, store } from '../../electron/bench.ts'
import { asking } from '../../electron/requests/asking.ts'

async function deskOnRecord() {
  const { ask } = asking(await store(folder()))
  const client: Client = { request: (name, input) => ask(name, input) }
  const desk = new LibraryDesk(
    client,
    () => Promise.resolve('Ana Ruiz'),
    () => 'en',
  )
  await desk.load()
  return desk
}
const copy = { kind: 'copy', engine: 'skerry-3', revision: 0 } as const

describe('the library page', () => {
  it('begins a draft, publishes it, and tells of both', async () => {
    const desk = await deskOnRecord()
    const shipped = desk.lines!.length
    expect(await desk.begin(copy, 'Heron 4', '')).toMatchObject({
      problem: { code: 'engine-manual-missing', path: 'from' },
    })
    expect(await desk.begin(copy, 'Heron 4', 'Heron workshop manual')).toMatchObject({ ok: true })
    expect(desk.drafts).toMatchObject([{ name: 'Heron 4', faults: 0, isChecked: false }])
    await desk.publish(desk.drafts[0]!)
    expect(desk.last).toMatchObject({ kind: 'published', line: { name: 'Heron 4', revision: 1 } })
    expect([desk.drafts.length, desk.lines!.length]).toEqual([0, shipped + 1])
  })

  it('brings a discarded draft back', async () => {
    const desk = await deskOnRecord()
    await desk.begin(copy, 'Heron 4', 'Heron workshop manual')
    await desk.discard(desk.drafts[0]!)
    expect(desk.drafts).toEqual([])
    expect(desk.last).toMatchObject({ kind: 'discarded' })
    if (desk.last?.kind === 'discarded') await desk.bringBack(desk.last.line)
    expect([desk.drafts.length, desk.problem]).toEqual([1, null])
  })

  it('takes a file in, says what became of it, and keeps what is there where it is none', async () => {
    const [here, elsewhere] = [await deskOnRecord(), await deskOnRecord()]
    await here.begin(copy, 'Heron 4', 'Heron workshop manual')
    await here.publish(here.drafts[0]!)
    const saved = await here.export('heron-4', 1)
    if (!saved.ok) throw new Error('not saved')
    await elsewhere.import(new File([saved.value.text], saved.value.fileName))
    expect(elsewhere.last).toMatchObject({ kind: 'imported', result: { kind: 'added' } })
    await elsewhere.import(new File(['{}'], 'notes.json'))
    expect(elsewhere.problem).toMatchObject({ code: 'spec-file-foreign' })
    expect(elsewhere.lines!.filter(({ engine }) => engine === 'heron-4')).toHaveLength(1)
  })
})

describe('the measures of a new engine', () => {
  it('are in the unit of the bore where a bare number is typed, and stay as they are where that has none', () => {
    const typed = { ...usualBare(), pitch: '3.5', mainDiameter: '56 mm', mainWidth: '', bankAngle: '90' }
    const rods = { diameter: '1.9', width: '1 in' }
    expect(inUnitOfBore({ ...typed, bore: '2.83 in', rods })).toMatchObject({
      ...{ bore: '2.83 in', pitch: '3.5 in', mainDiameter: '56 mm', mainWidth: '', bankAngle: '90°' },
      rods: { diameter: '1.9 in', width: '1 in' },
    })
    expect(inUnitOfBore({ ...typed, bore: '72' })).toMatchObject({ bore: '72', pitch: '3.5', rods: null })
  })
})

describe('the search of the library', () => {
  const line = (name: string, family: LibraryLine['family'], checkedBy: string | null): LibraryLine => ({
    ...{
      engine: name.toLowerCase(),
      name,
      family,
      cylinders: 4,
      revision: 1,
      revisionName: '1',
      demo: false,
    },
    ...{
      publishedBy: 'A',
      publishedAt: '2026-03-02T07:30:00.000Z',
      enteredBy: 'Åse Lind',
      checkedBy,
      builds: 0,
    },
  })
  const lines = [line('Grúa', 'caps', null), line('Heron', 'tunnel', 'Ana Ruiz')]
  const names = (typed: string, family: LibraryLine['family'] | null = null) =>
    foundIn(lines, typed, family, (each) => (each === 'caps' ? 'bearing caps' : each)).map(({ name }) => name)

  it('finds by name without accents, by family in words, and by who checked', () => {
    expect(names('grua')).toEqual(['Grúa'])
    expect(names('ase')).toEqual(['Grúa', 'Heron'])
    expect(names('ruiz her')).toEqual(['Heron'])
    expect(names('caps')).toEqual(['Grúa'])
    expect(names('', 'tunnel')).toEqual(['Heron'])
    expect(names('osprey')).toEqual([])
    const demo = { ...line('Fen ditch pump', 'caps', null), alsoCalled: ['Fen Grabenpumpe'] }
    expect(foundIn([demo], 'grabenp', null, String)).toEqual([demo])
  })
})
