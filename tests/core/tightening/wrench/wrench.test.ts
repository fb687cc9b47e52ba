import { describe, expect, it } from 'vitest'
import { adviceIn } from '../../../../core/engine/index.ts'
import { textIn } from '../../../../core/problem/index.ts'
import { newtonMetres, torqueOf } from '../../../../core/quantity/index.ts'
import {
  nearestMark,
  permittedDeviation,
  scaleShare,
  usableRange,
  wrench,
} from '../../../../core/tightening/index.ts'
import { en } from '../../../../core/words/index.ts'
import { valueOf, setupOf, medium, written } from '../wrench-rack.ts'
import { lineOf } from '../../../problem-line.ts'

/** What is said about a wrench that cannot be, each fault with its place. */
function faultsOf(change: object): readonly string[] {
  const read = wrench.safeParse({ ...written, ...change })
  return read.success
    ? []
    : read.error.issues.map(({ path, message }) => `${path.join('.')}: ${lineIn(message)}`)
}

function lineIn(message: string): string {
  const advice = adviceIn(message)
  if (advice === null) return message
  return 'path' in advice ? lineOf(advice) : textIn(en, en.phrases, advice)
}

describe('a wrench as it is written down', () => {
  it('is a name, the ends of its scale, and its marks', () => {
    const read = wrench.parse({
      id: 'beam',
      name: 'Beam wrench',
      range: { least: '20 lbf·ft', most: '100 lbf·ft' },
      scale: { unit: 'lbf·ft', step: 1 },
    })
    expect(read.range.most).toBeCloseTo(135.58, 2)
    expect(read.adapters).toEqual([])
  })

  it.each([
    [
      'a reversed range',
      { range: { least: '100 N·m', most: '20 N·m' } },
      'range: wrench-range-reversed: least=100 N·m, most=20 N·m',
    ],
    [
      'a range of nothing',
      { range: { least: '20 N·m', most: '20 N·m' } },
      'range: wrench-range-reversed: least=20 N·m, most=20 N·m',
    ],
    [
      'a stated least at its end',
      { statedMinimum: '100 N·m' },
      'statedMinimum: wrench-minimum-past-range: minimum=100 N·m, most=100 N·m',
    ],
    [
      'steps past its end',
      { scale: { unit: 'lbf·ft', step: 100 } },
      'scale.step: wrench-step-past-range: step=100 lbf·ft, ',
    ],
    ['steps of nothing', { scale: { unit: 'N·m', step: 0 } }, 'scale.step: give a step above zero'],
    [
      'a class its type has not',
      { made: { type: 'I', class: 'G' } },
      'made.class: wrench-class-unknown: type=I, class=G, known=A B C D E',
    ],
    ['a scale in no unit of torque', { scale: { unit: 'N', step: 1 } }, 'scale.unit'],
    [
      'a range without its unit',
      { range: { least: '20', most: '100 N·m' } },
      'range.least: unit-missing: typed=20, ',
    ],
    [
      'a day that is none',
      { calibration: { on: '2026-02-30', cycles: 0 } },
      'calibration.on: write the date',
    ],
  ])('is refused with %s', (_, change, message) => {
    const faults = faultsOf(change)
    expect(faults).toHaveLength(1)
    expect(faults[0]).toContain(message)
  })

  it('is refused with an adapter longer than the wrench, and with one just as long', () => {
    const adapters = (offset: string) => [
      { id: 'short', name: 'Short foot', offset: '40 mm', angle: '0 °' },
      { id: 'long', name: 'Long foot', offset, angle: '0 °' },
    ]
    for (const offset of ['400 mm', '700 mm'])
      expect(faultsOf({ length: '400 mm', adapters: adapters(offset) })).toEqual([
        `adapters.1.offset: adapter-too-long: adapter=Long foot, offset=${offset}, length=400 mm`,
      ])
    expect(faultsOf({ length: '400 mm', adapters: adapters('399 mm') })).toEqual([])
  })
})

describe('the part of a scale that may be used', () => {
  it.each([
    ['from its lowest mark, where that is a fifth', medium({}), 20],
    [
      'from a fifth, where the scale begins below it',
      medium({ range: { least: '5 N·m', most: '100 N·m' } }),
      20,
    ],
    [
      'from its lowest mark, where that is above a fifth',
      medium({ range: { least: '40 N·m', most: '100 N·m' } }),
      40,
    ],
    [
      'from its stated minimum, where that is below a fifth',
      medium({ range: { least: '5 N·m', most: '100 N·m' }, statedMinimum: '10 N·m' }),
      10,
    ],
    ['from its stated minimum, where that is above', medium({ statedMinimum: '30 N·m' }), 30],
    ['from its lowest mark, whatever is stated', medium({ statedMinimum: '10 N·m' }), 20],
  ])('is %s', (_, read, from) => {
    expect(usableRange(read)).toEqual({ from, upTo: 100 })
  })
})

describe('the nearest mark', () => {
  const mark = (wrench: Parameters<typeof nearestMark>[0], torque: number) =>
    nearestMark(wrench, newtonMetres(torque))

  it('is the nearest, the upper one of two as near', () => {
    const half = medium({ scale: { unit: 'N·m', step: 0.5 } })
    expect(mark(half, 24.2)).toBe(24)
    expect(mark(half, 24.25)).toBe(24.5)
    expect(mark(half, 24.3)).toBe(24.5)
  })

  it('is the torque itself on a mark, whatever binary makes of tenths', () => {
    const tenths = medium({ scale: { unit: 'N·m', step: 0.1 } })
    for (const torque of [20, 20.1, 20.3, 33.3, 99.9, 100]) expect(mark(tenths, torque)).toBe(torque)
  })

  it('lies in the unit of the scale', () => {
    const feet = medium({ scale: { unit: 'lbf·ft', step: 1 } })
    expect(mark(feet, 24)).toBeCloseTo(torqueOf(18, 'lbf·ft'), 12) // 24 N·m is 17.7 lbf·ft
  })

  it('stays within the usable part: 21 N·m with marks at every 5 from 20 is 20 until 21 is the least', () => {
    const fives = { scale: { unit: 'N·m', step: 5 } } as const
    expect(mark(medium(fives), 21)).toBe(20)
    expect(mark(medium({ ...fives, statedMinimum: '21 N·m' }), 21)).toBe(25)
  })

  it('is none, where no mark lies in the usable part', () => {
    const sixties = medium({ scale: { unit: 'N·m', step: 60 }, statedMinimum: '70 N·m' })
    expect(mark(sixties, 80)).toBeNull()
  })
})

describe('the permitted deviation, ISO 6789-1', () => {
  const small = { least: '2 N·m', most: '10 N·m' }
  it.each([
    ['type II class A above 10 N·m', medium({}), 0.04],
    ['type II class A up to 10 N·m', medium({ range: small }), 0.06],
    ['type II class A just above 10 N·m', medium({ range: { least: '2 N·m', most: '10.1 N·m' } }), 0.04],
    ['a bar that bends, of any size', medium({ made: { type: 'I', class: 'A' } }), 0.06],
    ['a dial above 10 N·m', medium({ made: { type: 'I', class: 'B' } }), 0.04],
    ['a wrench of which the class is not known', medium({ made: undefined }), 0.06],
  ])('of %s', (_, read, share) => {
    expect(permittedDeviation(read)).toBe(share)
  })
})

describe('what the scale shows with an adapter', () => {
  const share = (offset: string, angle: string) =>
    valueOf(scaleShare(setupOf(medium({ length: '300 mm' }), { offset, angle })))

  it('is less with one straight on: 300 mm and 100 mm more make three quarters', () => {
    expect(share('100 mm', '0 °')).toBeCloseTo(0.75, 12)
  })

  it('is the torque itself with one square to the handle', () => {
    expect(share('100 mm', '90 °')).toBe(1)
  })

  it('is more with one turned back: 300 mm less 100 mm make one and a half', () => {
    expect(share('100 mm', '180 °')).toBeCloseTo(1.5, 12)
  })

  it('counts half of one that stands at 60°', () => {
    expect(share('100 mm', '60 °')).toBeCloseTo(300 / 350, 12)
  })

  it('cannot be given without the length of the wrench, except square to the handle', () => {
    const unmeasured = medium({})
    const refused = scaleShare(setupOf(unmeasured, { offset: '100 mm', angle: '0 °' }))
    expect(refused.ok ? null : lineOf(refused.problem)).toContain(
      'wrench-length-missing: name=Medium click wrench, adapter=Crow foot',
    )
    expect(valueOf(scaleShare(setupOf(unmeasured, { offset: '100 mm', angle: '90 °' })))).toBe(1)
  })

  it('is refused for one as long as the wrench', () => {
    const refused = scaleShare(setupOf(medium({ length: '300 mm' }), { offset: '300 mm', angle: '180 °' }))
    expect(refused.ok ? null : refused.problem.code).toBe('adapter-too-long')
  })
})
