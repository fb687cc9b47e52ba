import { describe, expect, it } from 'vitest'
import { readSpec } from '../../../core/engine/index.ts'
import { sentenceIn } from '../../../core/problem/index.ts'
import { en, loadWords } from '../../../core/words/index.ts'
import { auditLines, demoDraft, named, nth, readAfter, type Draft } from './demo.ts'

function translatedDraft(): Draft {
  const draft = demoDraft('skerry-3')
  nth(draft.steps, 0).name = { en: 'Note marks', de: 'Zeichen notieren' }
  nth(draft.case.faces, 0).name = { es: 'Plano de unión', de: 'Trennfläche' }
  draft.cautions[0]!.text = { en: 'Mind the crank.', es: 'Cuidado con el cigüeñal.' }
  return draft
}

/** The same with one step more, in which something is measured at these places. */
function readyDraft(at: readonly unknown[]): Draft {
  const draft = demoDraft('skerry-3')
  const measure = { id: 'bores', name: 'Bore', what: 'other', at, where: 'Across.', new: { most: '85 mm' } }
  draft.steps = [
    ...draft.steps.filter((step) => !('measures' in step)),
    { id: 'measured', name: 'Measured', kind: 'measure-limits', measures: [measure] } as never,
  ]
  return draft
}

function readIn(language: 'en' | 'de' | 'es') {
  const read = readSpec(JSON.stringify(translatedDraft()), language)
  if (!read.ok) throw new Error(read.problems.map(({ code }) => code).join())
  const { steps, case: engineCase, cautions } = read.spec
  return [nth(steps, 0).name, nth(engineCase.faces, 0).name, nth(cautions, 0).text]
}

describe('a spec with texts in several languages', () => {
  it.each([
    ['en', ['Note marks', 'Trennfläche', 'Mind the crank.']],
    ['de', ['Zeichen notieren', 'Trennfläche', 'Mind the crank.']],
    ['es', ['Note marks', 'Plano de unión', 'Cuidado con el cigüeñal.']],
  ] as const)('is read in %s, and in a language that it has where it lacks that one', (language, texts) => {
    expect(readIn(language)).toEqual(texts)
  })

  it('is the same engine in each', () => {
    const text = JSON.stringify(translatedDraft())
    const [one, other] = (['en', 'es'] as const).map((language) => readSpec(text, language))
    if (!one?.ok || !other?.ok) throw new Error('both are read')
    expect(other.spec.fasteners.map(({ id, at }) => [id, at])).toEqual(
      one.spec.fasteners.map(({ id, at }) => [id, at]),
    )
    expect(auditLines(one.spec)).toEqual(auditLines(other.spec))
  })

  it.each<[string, unknown, string]>([
    [
      'an empty text',
      { en: 'Mains', de: ' ' },
      'spec-part-wrong fits[0].name.de: kind=text, text= , should=name-empty',
    ],
    [
      'something else than a text',
      { en: 'Mains', de: 3 },
      'spec-part-wrong fits[0].name.de: kind=value, json=3, should=write-kind, kind=string',
    ],
    [
      'a language that is not known',
      { en: 'Mains', fr: 'Paliers' },
      'spec-keys-unknown fits[0].name: keys=fr',
    ],
    ['no language at all', {}, 'spec-part-wrong fits[0].name: kind=group, should=languages-none'],
    ['a number', 4, 'spec-part-wrong fits[0].name: kind=value, json=4, should=write-kind, kind=string'],
    ['a list', ['Mains'], 'spec-part-wrong fits[0].name: '],
    ['nothing', undefined, 'spec-part-missing fits[0].name: '],
  ])('is refused with its place where a name is %s', (_, name, start) => {
    const lines = readAfter('skerry-3', (spec) => Object.assign(nth(spec.fits, 0), { name }))
    expect(lines).toHaveLength(1)
    expect(lines[0]).toContain(start)
  })

  it.each([
    [
      'de',
      '„de“: gefunden „ “. Einen Namen eintragen.',
      '„fr“ gibt es an dieser Stelle in keinem Datenblatt',
    ],
    ['es', '«de»: se encuentra « ». Escribir un nombre.', 'tiene «fr», que ninguna ficha lleva ahí'],
  ] as const)('is refused with its place in %s too', async (language, empty, unknown) => {
    const words = await loadWords(language)
    const saidOf = (name: unknown) => {
      const read = readSpec(JSON.stringify({ ...demoDraft('fen-1'), name }))
      return read.ok ? '' : read.problems.map((problem) => sentenceIn(words, problem)).join('\n')
    }
    expect(saidOf({ en: 'Mains', de: ' ' })).toContain(empty)
    expect(saidOf({ en: 'Mains', fr: 'Paliers' })).toContain(unknown)
    expect(saidOf({ en: 'Mains', de: 3 })).toMatch(/„de“: gefunden 3|«de»: se encuentra 3/)
  })

  it('has places by which entries refer to them, called as people read them, and the same in each language', () => {
    const text = JSON.stringify(
      readyDraft([{ en: 'Bore 1', de: 'Zylinder 1' }, { de: 'Zylinder 2', es: 'Cilindro 2' }, 'Bore 3']),
    )
    const placesIn = (language: 'en' | 'de' | 'es') => {
      const read = readSpec(text, language)
      if (!read.ok) throw new Error(read.problems.map((problem) => sentenceIn(en, problem)).join())
      return read.spec.steps.flatMap((step) => ('measures' in step ? step.measures[0]!.at : []))
    }
    const keys = ['Bore 1', 'Zylinder 2', 'Bore 3']
    const called = (...texts: string[]) => texts.map((each, index) => ({ key: keys[index], text: each }))
    expect(placesIn('en')).toEqual(called('Bore 1', 'Zylinder 2', 'Bore 3'))
    expect(placesIn('de')).toEqual(called('Zylinder 1', 'Zylinder 2', 'Bore 3'))
    expect(placesIn('es')).toEqual(called('Bore 1', 'Cilindro 2', 'Bore 3'))
  })

  it('has ids and values only once', () => {
    expect(
      readAfter('skerry-3', (spec) => {
        Object.assign(named(spec.fits, 'mains'), { id: { en: 'mains' } })
        Object.assign(spec.case, { bore: { en: '76 mm', de: '78 mm' } })
      }).map((line) => line.split(':')[0]),
    ).toEqual(expect.arrayContaining(['spec-part-wrong case.bore', 'spec-part-wrong fits[0].id']))
  })
})
