import { describe, expect, it } from 'vitest'
import { readSpec } from '../../../core/engine/index.ts'
import { demoText, named, nth, readAfter, readLines, type Draft } from './demo.ts'

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

describe('a file that is not JSON', () => {
  it.each([
    ['', 'line 1, column 1 has nothing more where a value must stand'],
    ['Skerry 3', 'line 1, column 1 has “Skerry” where a value must stand'],
    ['{\n  "id": "a",\n}', 'line 3, column 1 has “}” where a name in quotes must stand'],
    ['{\n  "id" "a"\n}', 'line 2, column 8 has “"a"” where a colon must stand'],
    ['{ "id": "a" "name": "b" }', 'line 1, column 13 has “"name"” where a comma or } must stand'],
    ['[1 2]', 'line 1, column 4 has “2” where a comma or ] must stand'],
    ['{ "at": [1, 2 }', 'line 1, column 15 has “}” where a comma or ] must stand'],
    ['{ "id": ', 'line 1, column 9 has nothing more where a value must stand'],
    ["{ 'id': 1 }", "line 1, column 3 has “'” where a name in quotes or } must stand"],
    ['{ "id": NaN }', 'line 1, column 9 has “NaN” where a value must stand'],
    ['{ "id": Infinity }', 'line 1, column 9 has “Infinity” where a value must stand'],
    ['{ "id": 012 }', 'line 1, column 10 has “12” where a comma or } must stand'],
    ['{} {}', 'line 1, column 4 has “{” where the end of the file must stand'],
    ['{ "id": "a\nb" }', 'line 1, column 9 has “"a” where a value must stand'],
  ])('%j is reported with its line and column', (text, words) => {
    expect(readLines(text)).toEqual([
      expect.stringContaining(`spec-not-json : The file is not JSON: ${words}.`),
    ])
  })

  it('is reported where it breaks off, anywhere in a real one', () => {
    const text = demoText('skerry-3')
    const cut = text.indexOf('"fasteners"')
    const line = text.slice(0, cut).split('\n').length
    expect(readLines(text.slice(0, cut))).toEqual([
      expect.stringContaining(`line ${line}, column 3 has nothing more where a name in quotes must stand`),
    ])
  })

  it('may not give one key twice, where JSON itself would silently take the last', () => {
    expect(readLines('{\n "target": "24 N·m",\n "target": "42 N·m" }')).toEqual([
      'spec-key-twice : Line 3, column 2 gives "target" for the second time in one group. Remove one of the two.',
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
    expect(readLines('{}')).toEqual([
      'spec-part-missing bedplateSpec: “bedplateSpec” is missing. Write 1 in a spec of your own, and open one of a newer program with that: this one reads version 1.',
    ])
    expect(readAfter('skerry-3', (spec) => (loose(spec)['bedplateSpec'] = 2))).toEqual([
      'spec-part-wrong bedplateSpec: “bedplateSpec” is 2. Write 1 in a spec of your own, and open one of a newer program with that: this one reads version 1.',
    ])
    expect(readLines('null')).toEqual(['spec-part-wrong : The file is null. Write a group in { }.'])
    expect(readLines('[]')).toEqual(['spec-part-wrong : The file is a list of 0. Write a group in { }.'])
  })

  it('names what is missing, what is unknown and what is wrong, all at once', () => {
    const lines = readAfter('skerry-3', (spec) => {
      delete loose(spec)['summary']
      loose(spec)['colour'] = 'green'
      loose(spec)['revision'] = 7
    })
    expect(lines).toEqual([
      'spec-part-missing summary: “summary” is missing. Write a text in quotes.',
      'spec-part-wrong revision: “revision” is 7. Write a text in quotes.',
      'spec-keys-unknown : The file has “colour”, which no spec has there. Correct the spelling, or remove it.',
    ])
  })

  const wrong: readonly (readonly [string, (spec: Draft) => void, string])[] = [
    [
      'a length without a unit',
      (spec) => (spec.case.bore = '84'),
      'case.bore: “case”, “bore” is “84”. “84” has no unit. Add one of mm, in, µm, thou.',
    ],
    [
      'a length as a number',
      (spec) => Object.assign(spec.case, { bore: 84 }),
      'case.bore: “case”, “bore” is 84. Write the value with its unit in quotes, for example "63.5 mm".',
    ],
    [
      'a size below zero',
      (spec) => (nth(spec.case.saddles, 1).width = '-22 mm'),
      'case.saddles[1].width: “case”, saddle “M2”, “width” is “-22 mm”. Give a size above zero.',
    ],
    [
      'a length that no engine has',
      (spec) => (nth(spec.case.saddles, 1).at = '148000000 mm'),
      'case.saddles[1].at: “case”, saddle “M2”, “at” is “148000000 mm”. Give a length of at most 100 m.',
    ],
    [
      'a place with one number',
      (spec) => Object.assign(named(spec.fasteners, 'case-5'), { at: ['340 mm'] }),
      'fasteners[4].at: Fastener “case-5”, “at” is a list of 1. Write two lengths, along and across, for example ["120 mm", "-46 mm"].',
    ],
    [
      'a torque of nothing',
      (spec) => Object.assign(nth(named(spec.procedures, 'case').passes, 1), { target: '0 N·m' }),
      'procedures[1].passes[1].target: Procedure “case”, pass 2, “target” is “0 N·m”. Give a torque above zero.',
    ],
    [
      'a kind of step that there is not',
      (spec) => Object.assign(nth(spec.steps, 0), { kind: 'pray' }),
      'steps[0].kind: Step “case-marks”, “kind” is “pray”. Write one of “note-marks”, “choose-shells”',
    ],
    [
      'no cylinders',
      (spec) => (spec.case.cylinders = 0),
      'case.cylinders: “case”, “cylinders” is 0. An engine has at least one cylinder.',
    ],
    [
      'half a cylinder',
      (spec) => (spec.case.cylinders = 2.5),
      'case.cylinders: “case”, “cylinders” is 2.5. Write a whole number.',
    ],
    [
      'a mark with a space',
      (spec) => (nth(named(spec.fits, 'mains').housing.marks, 0).mark = '1 2'),
      'fits[0].housing.marks[0].mark: Fit “mains”, “housing”, mark “1 2”, “mark” is “1 2”. A mark is one to three characters',
    ],
    [
      'a date the other way round',
      (spec) =>
        (spec.source = { kind: 'entered', from: 'Shop notes', enteredBy: 'Ada Brook', on: '31.3.2026' }),
      'source.on: “source”, “on” is “31.3.2026”. Write the date as year, month and day, for example 2026-03-31.',
    ],
    [
      'an id that every object has',
      (spec) => (nth(spec.beads, 0).id = 'constructor'),
      'beads[0].id: Bead “constructor”, “id” is “constructor”. Choose another id',
    ],
  ]
  it.each(wrong)('%s', (_, change, words) => {
    expect(readAfter('skerry-3', change)).toContainEqual(expect.stringContaining(`spec-part-wrong ${words}`))
  })

  it('may not reach into the prototype', () => {
    const text = demoText('skerry-3').replace('{', '{ "__proto__": { "name": "x" },')
    expect(readLines(text)).toEqual([expect.stringContaining('“__proto__”, which no spec has there')])
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
    expect(lines.at(-1)).toBe(
      'spec-more-problems : There are 32 more problems. Put the first ones right and read the file again.',
    )
  })
})
