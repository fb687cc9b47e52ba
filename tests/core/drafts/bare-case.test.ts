import { describe, expect, it } from 'vitest'
import { audit } from '../../../core/audit/index.ts'
import {
  bareCase,
  copyOf,
  documentIn,
  documentText,
  idFrom,
  type AllWords,
  type BareParameters,
} from '../../../core/drafts/index.ts'
import { families, readSpec } from '../../../core/engine/index.ts'
import { inMillimetres } from '../../../core/quantity/index.ts'
import { languages, loadWords } from '../../../core/words/index.ts'
import { demoText } from '../engine/demo.ts'

const words = Object.fromEntries(
  await Promise.all(languages.map(async (each) => [each, await loadWords(each)] as const)),
) as AllWords
const beginning = {
  id: 'heron-4',
  name: 'Heron 4',
  person: 'Ana Ruiz',
  from: 'Heron workshop manual',
  on: '2026-03-02',
}
const four: BareParameters = {
  ...{ family: 'split-horizontal', cylinders: 4, bankAngle: '0 °', bore: '82 mm', pitch: '90 mm', mains: 5 },
  ...{
    mainDiameter: '58 mm',
    mainWidth: '24 mm',
    thrustMain: 3,
    rods: { diameter: '50 mm', width: '26 mm' },
  },
}

function grown(change: Partial<BareParameters> = {}) {
  const made = bareCase(words, beginning, { ...four, ...change })
  if (!made.ok) throw new Error(made.problem.code)
  const read = readSpec(documentText(made.value))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.spec
}

describe('a bare case', () => {
  it('of four cylinders in line has its saddles between the bores, and the washers where it was said', () => {
    const { case: grownCase } = grown()
    // The first saddle half a pitch from the nose, a bore half a pitch behind each.
    expect(grownCase.saddles.map(({ at }) => inMillimetres(at))).toEqual([45, 135, 225, 315, 405])
    expect(grownCase.rods.map(({ at }) => inMillimetres(at))).toEqual([90, 180, 270, 360])
    expect(grownCase.saddles.map(({ thrust }) => thrust)).toEqual([false, false, true, false, false])
  })

  it('of a V has two rods side by side between two saddles', () => {
    const { case: grownCase } = grown({ cylinders: 8, bankAngle: '90 °', pitch: '106 mm' })
    expect(grownCase.saddles.map(({ at }) => inMillimetres(at))).toEqual([53, 159, 265, 371, 477])
    expect(grownCase.rods.slice(0, 1).map(({ at }) => inMillimetres(at))).toEqual([93])
    expect(grownCase.rods.slice(4, 5).map(({ at }) => inMillimetres(at))).toEqual([119])
  })

  it.each(families)(
    'of the family %s is read, has no fault of place, and no number that nobody gave',
    (family) => {
      const spec = grown({ family })
      const placed = audit(spec).filter(
        ({ problem: { path }, weight }) => weight === 'fault' && path.startsWith('case'),
      )
      expect(placed).toEqual([])
      expect([spec.fits, spec.fasteners, spec.fastenerGroups, spec.procedures, spec.endFloat]).toEqual([
        [],
        [],
        [],
        [],
        undefined,
      ])
    },
  )

  it('keeps what was typed as it was typed, in inches too', () => {
    expect(bareCase(words, beginning, { ...four, mainDiameter: '2.2835 in' })).toMatchObject({
      value: { case: { saddles: [{ diameter: '2.2835 in' }, {}, {}, {}, {}] } },
    })
  })

  it('is refused by the name of the measure that is wrong', () => {
    expect(bareCase(words, beginning, { ...four, pitch: '0 mm' })).toMatchObject({
      problem: { code: 'bare-size-not-above-zero', path: 'pitch' },
    })
    expect(bareCase(words, beginning, { ...four, thrustMain: 6 })).toMatchObject({
      problem: { code: 'bare-thrust-main' },
    })
    expect(bareCase(words, beginning, { ...four, mainWidth: '24' })).toMatchObject({
      problem: { path: 'mainWidth' },
    })
  })
})

describe('a copy of a demo', () => {
  it('says that its numbers are invented until somebody says otherwise', () => {
    const copy = readSpec(documentText(copyOf(documentIn(demoText('skerry-3')), beginning)))
    if (!copy.ok) throw new Error(JSON.stringify(copy.problems))
    expect(copy.spec).toMatchObject({
      id: 'heron-4',
      name: 'Heron 4',
      source: { kind: 'entered', enteredBy: 'Ana Ruiz' },
    })
    expect(audit(copy.spec).map(({ problem: { code } }) => code)).toEqual([
      'source-copied-from-demo',
      'source-unchecked',
    ])
  })
})

describe('an id made of a name', () => {
  it.each([
    ['Heron 4', 'heron-4'],
    ['Bjørnøya Øst, große Pumpe', 'bj-rn-ya-st-gro-e-pumpe'],
    ['Grúa portuaria', 'grua-portuaria'],
    ['constructor', 'engine-constructor'],
    ['…', 'engine'],
  ])('of “%s” is %s', (name, id) => {
    expect(idFrom(name, new Set())).toBe(id)
  })

  it('is counted on where there is one like it', () => {
    expect(idFrom('Heron 4', new Set(['heron-4', 'heron-4-2']))).toBe('heron-4-3')
  })
})
