import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mentionsOf, searchWords, typedWords, type BuildEvent } from '../../../core/builds/index.ts'
import { namesInAllLanguages, readSpec } from '../../../core/engine/index.ts'
import { engineFile, shippedFile } from '../../engine-files.ts'
import { checkProperty } from '../../property.ts'

function demo(file: string) {
  const text = readFileSync(file, 'utf8')
  const read = readSpec(text)
  if (!read.ok) throw new Error('the spec cannot be read')
  return { text, spec: read.spec }
}

const short = demo(engineFile('skerry-3'))
const skerry = short.spec
/** With places that are measured. */
const moor = demo(shippedFile('moor-flat-4'))

function saidOf(event: BuildEvent, { spec, text } = short): string[] {
  return mentionsOf(spec, namesInAllLanguages(text), { person: 'Ana Ruiz', event }).map(
    ({ kind, word }) => `${kind} ${word}`,
  )
}

const version = 1

describe('the words that are searched for', () => {
  it.each([
    ['Ferry, port engine', ['ferry', 'port', 'engine']],
    ['F-201', ['f', '201', 'f201']],
    ['Søren Å. Łukasz', ['søren', 'a', 'łukasz']],
    ['ÖLPUMPE Ölpumpe', ['olpumpe']],
    ['  ', []],
    ['№ 7', ['no', '7']],
  ])('of “%s”', (text, words) => {
    expect(searchWords(text)).toEqual(words)
  })

  it.each([
    ['F-201', ['f201']],
    ['port F-2', ['port', 'f2']],
    ['Ferry, – port', ['ferry', 'port']],
  ])('where “%s” is typed', (text, words) => {
    expect(typedWords(text)).toEqual(words)
  })

  it('are found again by themselves, whatever was typed', () => {
    checkProperty(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        for (const word of searchWords(text)) expect(searchWords(word)).toContain(word)
        for (const word of typedWords(text)) expect(searchWords(text)).toContain(word)
      }),
    )
  })
})

describe('what an entry adds to the words of its build', () => {
  it('is engine, name and serial number at the start', () => {
    const start = { spec: 'skerry-3', specRevision: 'A', specSha256: 'a'.repeat(64) }
    const mentions = saidOf({
      type: 'build-started',
      version: 1,
      ...start,
      name: 'Lower lock',
      serial: 'F-201',
    })
    expect(mentions).toEqual(
      expect.arrayContaining(['person ana', 'engine skerry', 'name lock', 'serial f201', 'serial 201']),
    )
  })

  const pull = {
    type: 'fastener-pulled',
    version: 1,
    procedure: 'rods',
    pull: 1,
    pass: 0,
    fastener: skerry.fasteners[0]?.id ?? null,
    reading: null,
    outOfOrder: null,
  } as const

  it('is the person alone for a pull that went well', () => {
    expect(saidOf({ ...pull, verdict: 'within' })).toEqual(['person ana', 'person ruiz'])
  })

  it('is what was wrong, and with which fastener, for one that did not', () => {
    const number = skerry.fasteners[0]?.number.toLowerCase()
    expect(saidOf({ ...pull, verdict: 'over' })).toEqual(
      expect.arrayContaining(['flag over', `flag ${number}`]),
    )
  })

  it('is each grade of shell once', () => {
    const choices = (['upper', 'lower'] as const).map((half) => ({
      position: 'M1',
      half,
      grade: 'C',
      by: 'chart' as const,
      reason: null,
    }))
    const mentions = saidOf({ type: 'shells-chosen', version: 1, step: 's', fit: 'f', choices })
    expect(mentions.filter((each) => each === 'part c')).toHaveLength(1)
  })

  it('is what a step is called in each language of the spec', () => {
    const mentions = saidOf({ type: 'part-fitted', version: 1, step: 'lay-crank' })
    // “Lay crank”, “Welle einlegen”, “Poner cigüeñal”
    for (const word of ['crank', 'welle', 'ciguenal']) expect(mentions).toContain(`part ${word}`)
    const skipped = saidOf({ type: 'step-skipped', version: 1, step: 'end-float', reason: 'Measured before' })
    for (const word of ['float', 'axialspiel', 'axial']) expect(skipped).toContain(`flag ${word}`)
  })

  it('is what a measured place is called in each language of the spec, though the entry has it in the first', () => {
    const place = { version, step: 'skirts', measure: 'clearance', at: 'Barrel 2' } as const
    const reading = { typed: '0.41', length_nm: 410_000 }
    const outside = saidOf({ type: 'limit-measured', ...place, reading, verdict: 'outside' }, moor)
    const replaced = saidOf({ type: 'measured-part-replaced', ...place, reason: 'Worn' }, moor)
    // “Barrel 2”, “Zylinder 2”, “Cilindro 2”
    for (const mentions of [outside, replaced])
      for (const word of ['barrel', 'zylinder', 'cilindro', '2']) expect(mentions).toContain(`flag ${word}`)
  })

  it('is what an undersize and a washer are called in each language of the spec', () => {
    const declared = saidOf({
      type: 'undersize-declared',
      ...{ version, step: 's', fit: 'mains', positions: ['M1'], undersize: '0.25 under' },
    })
    const choice = { position: 'M1', half: 'upper', grade: 'C', by: 'chart', reason: null } as const
    const chosen = saidOf({
      type: 'shells-chosen',
      ...{ version, step: 's', fit: 'mains', choices: [{ ...choice, undersize: '0.25 under' }] },
    })
    // “0.25 under”, “Untermaß 0,25”, “submedida 0,25”
    for (const mentions of [declared, chosen])
      for (const word of ['under', 'untermaß', 'submedida', '025']) expect(mentions).toContain(`part ${word}`)
    const washer = { name: 'Dünn', thickness_nm: 2_300_000 }
    const checked = saidOf({
      type: 'check-answered',
      ...{ version, step: 'end-float', verdict: 'good', reading: null, note: '', washersByTable: washer },
    })
    expect(checked).toContain('part dunn')
  })

  it('is what was wrong in every language of the program', () => {
    const skipped = saidOf({ type: 'step-skipped', version, step: 'end-float', reason: 'Measured before' })
    for (const word of ['skipped', 'ubersprungen', 'omitido']) expect(skipped).toContain(`flag ${word}`)
    const over = saidOf({ ...pull, verdict: 'over' })
    for (const word of ['over', 'viel', 'demasiado']) expect(over).toContain(`flag ${word}`)
  })

  it('is the id of a step that the spec does not have, and of a text that is no spec', () => {
    expect(saidOf({ type: 'part-fitted', version: 1, step: 'gone-step' })).toContain('part gone')
    expect(namesInAllLanguages('{"steps": 7}').byId('steps', 'lay-crank')).toEqual([])
    expect(namesInAllLanguages('no spec').byId('parts', 'x')).toEqual([])
    expect(namesInAllLanguages('no spec').byKey('Barrel 1')).toEqual(['Barrel 1'])
  })

  it('is who looked, where a second person did', () => {
    const mentions = saidOf({
      type: 'step-confirmed',
      version: 1,
      step: 's',
      procedure: null,
      second: 'Berit',
    })
    expect(mentions).toContain('person berit')
  })
})
