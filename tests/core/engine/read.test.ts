import { describe, expect, it } from 'vitest'
import { readSpec } from '../../../core/engine/index.ts'
import type { Language } from '../../../core/words/index.ts'
import { demoDraft, demoText, named, nth, readAfter, readLines, type Draft } from './demo.ts'

/** The same draft without its types, for what the types forbid. */
function loose(draft: object): Record<string, unknown> {
  return draft as Record<string, unknown>
}

describe('reading a spec', () => {
  it('gives quantities for the texts of the file', () => {
    const reading = readSpec(demoText('skerry-3'))
    if (!reading.ok) throw new Error('a demo must read')
    expect(nth(reading.spec.case.saddles, 1).at).toBe(148_000_000)
    expect(named(reading.spec.fits, 'mains').clearance).toMatchObject({ least: 20_000, most: 50_000 })
    expect(nth(named(reading.spec.procedures, 'rods').passes, 1)).toMatchObject({
      target: 15,
      least: 14,
      most: 16,
    })
  })

  it('takes lengths in inches and torques in lbf·ft', () => {
    expect(
      readAfter('skerry-3', (spec) => {
        spec.case.bore = '3.3071 in'
        Object.assign(nth(named(spec.procedures, 'rods').passes, 1), {
          target: '11 lbf·ft',
          least: '10 ft-lb',
          most: '12 ft-lb',
        })
      }),
    ).toEqual([])
  })

  it('reads a file that an editor saved with a byte order mark', () => {
    expect(readLines(`\uFEFF${demoText('skerry-3')}`)).toEqual([])
  })
})

describe('a text that was read before', () => {
  const draft = demoDraft('skerry-3')
  nth(draft.steps, 0).name = { en: 'Note marks', de: 'Zeichen notieren' }
  const text = JSON.stringify(draft)
  const nameIn = (written: string, language: Language) => {
    const reading = readSpec(written, language)
    return reading.ok && nth(reading.spec.steps, 0).name
  }

  it('is the same spec, in each language its own, and another text is another spec', () => {
    for (const _ of ['first', 'again']) {
      expect(nameIn(text, 'de')).toBe('Zeichen notieren')
      expect(nameIn(text, 'en')).toBe('Note marks')
      expect(nameIn(text.replace('Note marks', 'Read marks'), 'en')).toBe('Read marks')
    }
    expect(readSpec(text)).toBe(readSpec(text))
  })

  it('is read again where many others came between', () => {
    const before = readSpec(text)
    for (let other = 0; other < 20; other += 1) readSpec(text + ' '.repeat(1 + other))
    expect(readSpec(text)).not.toBe(before)
    expect(readSpec(text)).toEqual(before)
  })

  it('has its faults again', () => {
    const faulty = text.replace('"bedplateSpec":1', '"bedplateSpec":2')
    expect(readLines(faulty)).toEqual(readLines(faulty))
    expect(readLines(faulty)).toHaveLength(1)
  })
})

describe('a file that is not JSON', () => {
  it.each([
    ['', 'line=1, column=1, wanted=value'],
    ['Skerry 3', 'line=1, column=1, found=Skerry, wanted=value'],
    ['{\n  "id": "a",\n}', 'line=3, column=1, found=}, wanted=key'],
    ['{\n  "id" "a"\n}', 'line=2, column=8, found="a", wanted=colon'],
    ['{ "id": "a" "name": "b" }', 'line=1, column=13, found="name", wanted=comma-or-brace'],
    ['[1 2]', 'line=1, column=4, found=2, wanted=comma-or-bracket'],
    ['{ "at": [1, 2 }', 'line=1, column=15, found=}, wanted=comma-or-bracket'],
    ['{ "id": ', 'line=1, column=9, wanted=value'],
    ["{ 'id': 1 }", "line=1, column=3, found=', wanted=key-or-end"],
    ['{ "id": NaN }', 'line=1, column=9, found=NaN, wanted=value'],
    ['{ "id": Infinity }', 'line=1, column=9, found=Infinity, wanted=value'],
    ['{ "id": 012 }', 'line=1, column=10, found=12, wanted=comma-or-brace'],
    ['{} {}', 'line=1, column=4, found={, wanted=nothing'],
    ['{ "id": "a\nb" }', 'line=1, column=9, found="a, wanted=value'],
  ])('%j is reported with its line and column', (text, words) => {
    expect(readLines(text)).toEqual([expect.stringContaining(`spec-not-json: ${words}`)])
  })

  it('is reported where it breaks off, anywhere in a real one', () => {
    const text = demoText('skerry-3')
    const cut = text.indexOf('"fasteners"')
    const line = text.slice(0, cut).split('\n').length
    expect(readLines(text.slice(0, cut))).toEqual([
      expect.stringContaining(`line=${line}, column=3, wanted=key`),
    ])
  })

  it('may not give one key twice, where JSON itself would silently take the last', () => {
    expect(readLines('{\n "target": "24 N·m",\n "target": "42 N·m" }')).toEqual([
      'spec-key-twice: line=3, column=2, found="target", key="target"',
    ])
  })

  it('is refused when it is nested a million deep, or longer than five million characters', () => {
    expect(readLines('['.repeat(1_000_000))).toEqual([expect.stringMatching(/^spec-too-deep/)])
    expect(readLines(' '.repeat(5_000_001))).toEqual([expect.stringMatching(/^spec-too-large/)])
  })

  it('takes one string of nearly five million characters without choking', () => {
    expect(readLines(`{"id":"${'x\\n'.repeat(1_600_000)}"}`)).toEqual([
      expect.stringMatching(/^spec-part-missing bedplateSpec/),
    ])
  })
})

describe('a spec of the wrong shape', () => {
  it('that is no spec, or one of another version, is told so and no more', () => {
    expect(readLines('{}')).toEqual(['spec-part-missing bedplateSpec: should=version-of-spec, version=1'])
    expect(readAfter('skerry-3', (spec) => (loose(spec)['bedplateSpec'] = 2))).toEqual([
      'spec-part-wrong bedplateSpec: kind=value, json=2, should=version-of-spec, version=1',
    ])
    expect(readLines('null')).toEqual([
      'spec-part-wrong: kind=value, json=null, should=write-kind, kind=object',
    ])
    expect(readLines('[]')).toEqual(['spec-part-wrong: kind=list, length=0, should=write-kind, kind=object'])
  })

  it('names what is missing, what is unknown and what is wrong, all at once', () => {
    const lines = readAfter('skerry-3', (spec) => {
      delete loose(spec)['summary']
      loose(spec)['colour'] = 'green'
      loose(spec)['revision'] = 7
    })
    expect(lines).toEqual([
      'spec-part-missing summary: should=write-kind, kind=string',
      'spec-part-wrong revision: kind=value, json=7, should=write-kind, kind=string',
      'spec-keys-unknown: keys=colour',
    ])
  })

  const wrong: readonly (readonly [string, (spec: Draft) => void, string])[] = [
    [
      'a length without a unit',
      (spec) => (spec.case.bore = '84'),
      'case.bore: kind=text, text=84, should=unit-missing, typed=84, units=mm in µm thou',
    ],
    [
      'a length as a number',
      (spec) => Object.assign(spec.case, { bore: 84 }),
      'case.bore: kind=value, json=84, should=value-with-unit, example=63.5 mm',
    ],
    [
      'a size below zero',
      (spec) => (nth(spec.case.saddles, 1).width = '-22 mm'),
      'case.saddles[1].width: kind=text, text=-22 mm, should=size-above-zero',
    ],
    [
      'a length that no engine has',
      (spec) => (nth(spec.case.saddles, 1).at = '148000000 mm'),
      'case.saddles[1].at: kind=text, text=148000000 mm, should=length-within, metres=100',
    ],
    [
      'a place with one number',
      (spec) => Object.assign(named(spec.fasteners, 'case-5'), { at: ['340 mm'] }),
      'fasteners[4].at: kind=list, length=1, should=two-lengths',
    ],
    [
      'a torque of nothing',
      (spec) => Object.assign(nth(named(spec.procedures, 'case').passes, 1), { target: '0 N·m' }),
      'procedures[1].passes[1].target: kind=text, text=0 N·m, should=torque-above-zero',
    ],
    [
      'a kind of step that there is not',
      (spec) => Object.assign(nth(spec.steps, 0), { kind: 'pray' }),
      'steps[0].kind: kind=text, text=pray, should=write-one-of, values=note-marks choose-shells fit-shells fit-part lay-bead run-procedure measure-limits measure-rings fit-rings lubricate clean orient align fit-places note photo turn count check',
    ],
    [
      'no cylinders',
      (spec) => (spec.case.cylinders = 0),
      'case.cylinders: kind=value, json=0, should=cylinders-none',
    ],
    [
      'half a cylinder',
      (spec) => (spec.case.cylinders = 2.5),
      'case.cylinders: kind=value, json=2.5, should=write-kind, kind=int',
    ],
    [
      'a mark with a space',
      (spec) => (nth(named(spec.fits, 'mains').housing.marks, 0).mark = '1 2'),
      'fits[0].housing.marks[0].mark: kind=text, text=1 2, should=mark-characters',
    ],
    [
      'a date the other way round',
      (spec) =>
        (spec.source = { kind: 'entered', from: 'Shop notes', enteredBy: 'Ada Brook', on: '31.3.2026' }),
      'source.on: kind=text, text=31.3.2026, should=write-date',
    ],
    [
      'an id that every object has',
      (spec) => (nth(spec.beads, 0).id = 'constructor'),
      'beads[0].id: kind=text, text=constructor, should=id-of-javascript',
    ],
  ]
  it.each(wrong)('%s', (_, change, words) => {
    expect(readAfter('skerry-3', change)).toContainEqual(expect.stringContaining(`spec-part-wrong ${words}`))
  })

  it('may not reach into the prototype', () => {
    const text = demoText('skerry-3').replace('{', '{ "__proto__": { "name": "x" },')
    expect(readLines(text)).toEqual([expect.stringContaining('spec-keys-unknown: keys=__proto__')])
    expect('name' in {}).toBe(false)
  })

  it('has no word of the parser’s own in any sentence', () => {
    const lines = readAfter('tarn-4', (spec) => {
      for (const key of Object.keys(spec)) if (key !== 'bedplateSpec') loose(spec)[key] = null
    })
    expect(lines).toHaveLength(18)
    expect(lines.join('\n')).not.toMatch(/invalid|expected|received|regex|undefined|strict/i)
  })

  it('stops listing after a hundred problems and says how many more there are', () => {
    const lines = readAfter('skerry-3', (spec) => {
      for (const fastener of spec.fasteners) Object.assign(fastener, { at: 1, number: 1, group: 1 })
    })
    expect(lines).toHaveLength(101)
    expect(lines.at(-1)).toBe('spec-more-problems: count=32')
  })
})
