import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import {
  bearingAt,
  buildSheet,
  checkNote,
  descriptionOf,
  washersCalled,
} from '../../../../core/builds/index.ts'
import { readDocument, type EngineSpec, type SpecDocument } from '../../../../core/engine/index.ts'
import { sentenceIn } from '../../../../core/problem/index.ts'
import { en, loadWords } from '../../../../core/words/index.ts'
import { engineFile } from '../../../engine-files.ts'
import { choosing as step, marked, readings } from '../main-shells.ts'
import { Workshop } from '../workshop.ts'

const de = await loadWords('de')
const file = JSON.parse(readFileSync(engineFile('skerry-3'), 'utf8')) as SpecDocument

/** Its washers of 2.55 mm are called in two languages as well. */
function skerryIn(language: 'en' | 'de'): EngineSpec {
  const document = structuredClone(file)
  document.endFloat!.washers![1]!.name = { en: 'first oversize', de: 'erstes Übermaß' }
  const read = readDocument(document, language)
  if (!read.ok) throw new Error('the spec cannot be read')
  return read.spec
}

const german = skerryIn('de')
const mains = german.fits.find(({ id }) => id === 'mains')!
const declared = (undersize: string) => ({
  type: 'declare-undersize' as const,
  ...{ step, positions: ['M2'], undersize },
})

describe('an undersize that a spec names in several languages', () => {
  it('has its name on a German sheet and drawing, and its key in the entry', () => {
    const shop = marked()
    const [event] = shop.does(declared(mains.undersizes[0]!.name.key))
    expect(event).toMatchObject({ type: 'undersize-declared', undersize: '0.25 under' })
    const { rows } = buildSheet(german, shop.entries).fits[0]!
    expect(rows[1]!.measured.undersize).toBe('Untermaß 0,25')
    const units = { torque: 'N·m', length: 'mm' } as const
    const build = { words: de, spec: german, state: shop.state, entries: shop.entries, units }
    expect(descriptionOf(build, 'journal/M2')?.lines.map(({ text }) => text)).toContain(
      'Geschliffen auf Untermaß 0,25',
    )
  })

  it('is found by the key of a record in any language, its walls thicker by half', () => {
    const shop = marked()
    shop.does(declared('0.50 under'))
    const { undersize, fit } = bearingAt(shop.state, mains, 'M2')
    expect(undersize).toBe('0.50 under')
    // 1.484 mm of the thinnest grade and half of 0.50 mm.
    expect(fit.grades[0]!.wall!.over).toBe(1_734_000)
  })

  it('is not declared by what it is called: the name is refused, and those that there are stand in the language', () => {
    const shop = new Workshop(german)
    shop.does({ type: 'note-marks', step: 'case-marks', typed: '1 2 3 2' })
    shop.does({ type: 'note-marks', step: 'crank-marks', typed: 'H G F G' })
    expect(shop.refuses(declared('Untermaß 0,25'))).toContain('Untermaß 0,50')
    shop.does(declared('0.25 under'))
  })

  it('is called so where the journal measures another size', () => {
    const shop = marked()
    shop.does(declared('0.25 under'))
    shop.does(readings('M2', 'journal', '51.991'))
    const dispute = bearingAt(shop.state, mains, 'M2').sizeDispute!
    expect(dispute.declared).toBe('0.25 under')
    expect(sentenceIn(de, dispute.problem)).toContain('Untermaß 0,25')
  })
})

describe('a thrust washer that a spec names in several languages', () => {
  const answer = {
    ...{ note: '', fittedWashers: 'first oversize' },
    washersByTable: { name: 'first oversize', thickness_nm: 2_550_000 },
  }

  it('has its name on a German sheet, and its key in the entry', () => {
    const shop = new Workshop(skerryIn('en'))
    shop.worksUpTo('end-float')
    const [event] = shop.does({
      type: 'answer-check',
      step: 'end-float',
      good: false,
      reading: '0.25',
      ...answer,
    })
    expect(event).toMatchObject(answer)
    const [check] = buildSheet(german, shop.entries).checks
    expect(checkNote(de, check!)).toContain('erstes Übermaß')
    expect(checkNote(de, check!)).not.toContain('first')
  })

  it('is called so in a pair that was chosen by thickness; one that the spec lacks keeps the name of its record', () => {
    const washer = (name: string) => ({ name, thickness_nm: 2_550_000 })
    const thrustPair = { first: washer('first oversize'), second: washer('gone'), float_nm: 160_000 }
    const called = washersCalled(german, { thrustPair, measuredWith: ['gone', 'first oversize'] })
    expect([called.thrustPair.first.name, called.thrustPair.second.name]).toEqual(['erstes Übermaß', 'gone'])
    expect(called.measuredWith).toEqual(['gone', 'erstes Übermaß'])
  })
})

describe('a name that a spec has once', () => {
  it('is its own key, so that records from before read as they did', () => {
    const document = structuredClone(file)
    for (const each of document.fits[0]!.undersizes!) each.name = `${each.undersize} less`
    const read = readDocument(document, 'de')
    if (!read.ok) throw new Error('the spec cannot be read')
    expect(read.spec.fits[0]!.undersizes[0]!.name).toEqual({ key: '0.25 mm less', text: '0.25 mm less' })
    expect(checkNote(en, washersCalled(read.spec, { note: '', fittedWashers: 'A' }))).toContain('A')
  })
})
