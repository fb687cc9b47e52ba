import { describe, expect, it } from 'vitest'
import { auditAfter, named, nth, type Draft } from '../../engine/demo.ts'

describe('least above most', () => {
  const swapped: readonly (readonly [string, (spec: Draft) => void, string])[] = [
    [
      'of an oil clearance',
      (s) => Object.assign(nth(s.fits, 0).clearance, { least: '50 µm', most: '20 µm' }),
      'fits[0].clearance: least=50 µm, most=20 µm',
    ],
    [
      'of the end float',
      (s) => Object.assign(s.endFloat ?? {}, { least: '0.20 mm', most: '0.08 mm' }),
      'endFloat: least=0.2 mm, most=0.08 mm',
    ],
    [
      'of the float that a washer is for',
      (s) => Object.assign(nth(s.endFloat?.washers, 2), { floatFrom: '0.40 mm', floatTo: '0.30 mm' }),
      'endFloat.washers[2]: least=0.4 mm, most=0.3 mm',
    ],
    [
      'of the rod side clearance',
      (s) => (s.rodSideClearance = { least: '0.3 mm', most: '0.1 mm' }),
      'rodSideClearance: least=0.3 mm, most=0.1 mm',
    ],
    [
      'of a reading',
      (s) => Object.assign(named(s.steps, 'end-float'), { reading: { least: '0.2 mm', most: '0.08 mm' } }),
      'steps[8].reading: least=0.2 mm, most=0.08 mm',
    ],
    [
      'of a torque',
      (s) => Object.assign(nth(named(s.procedures, 'rods').passes, 1), { least: '16 N·m', most: '14 N·m' }),
      'procedures[0].passes[1]: least=16 N·m, most=14 N·m',
    ],
    [
      'of a torque for some',
      (s) =>
        Object.assign(nth(named(s.procedures, 'rods').passes, 1), {
          others: [{ fasteners: ['rod-1'], target: '15 N·m', least: '16 N·m', most: '14 N·m' }],
        }),
      'procedures[0].passes[1].others[0]: least=16 N·m, most=14 N·m',
    ],
    [
      'of an angle',
      (s) => Object.assign(nth(named(s.procedures, 'rods').passes, 2), { least: '63 °', most: '57 °' }),
      'procedures[0].passes[2]: least=63 °, most=57 °',
    ],
    [
      'of an angle for some',
      (s) =>
        Object.assign(nth(named(s.procedures, 'rods').passes, 2), {
          others: [
            { fasteners: ['rod-1'], target: '60 °' },
            { fasteners: ['rod-2'], target: '60 °', least: '63 °', most: '57 °' },
          ],
        }),
      'procedures[0].passes[2].others[1]: least=63 °, most=57 °',
    ],
  ]
  it.each(swapped)('%s is a fault', (_, change, words) => {
    expect(auditAfter('skerry-3', change)).toContainEqual(
      expect.stringContaining(`fault least-above-most ${words}`),
    )
  })
})

describe('a target outside its limits', () => {
  it('is a fault', () => {
    expect(
      auditAfter('skerry-3', (spec) =>
        Object.assign(nth(named(spec.procedures, 'rods').passes, 2), { target: '90 °' }),
      ),
    ).toContain('fault target-outside-limits procedures[0].passes[2]: target=90 °, least=57 °, most=63 °')
    expect(auditAfter('skerry-3', (spec) => (nth(spec.fits, 1).clearance.target = '70 µm'))).toContain(
      'fault target-outside-limits fits[1].clearance: target=70 µm, least=24 µm, most=56 µm',
    )
  })

  it('may lie on a limit', () => {
    expect(auditAfter('skerry-3', (spec) => (nth(spec.fits, 0).clearance.target = '50 µm'))).toEqual([])
  })
})

it('a service limit below the most for new parts is a fault', () => {
  expect(auditAfter('skerry-3', (spec) => (nth(spec.fits, 0).clearance.serviceLimit = '40 µm'))).toEqual([
    'fault service-limit-below-most fits[0].clearance.serviceLimit: fit=Main bearings, limit=40 µm, most=50 µm',
  ])
})

describe('thrust washers', () => {
  it('for the same float are a fault', () => {
    expect(auditAfter('skerry-3', (spec) => (nth(spec.endFloat?.washers, 1).floatFrom = '0.18 mm'))).toEqual([
      'fault washers-overlap endFloat.washers[0]: first=standard, second=first oversize',
    ])
  })

  it('may leave a gap between them: the four does, from 0.28 to 0.30 mm', () => {
    expect(auditAfter('tarn-4', () => {})).toEqual([])
  })
})

describe('a row of thrust washers', () => {
  it('is doubted where its thickness leaves the float out of its limits: 0.28 mm less twice 0.10 are 0.08', () => {
    const lines = auditAfter('carr-v2', (spec) => {
      spec.endFloat!.washers![1]!.floatFrom = '0.28 mm'
    })
    expect(lines).toEqual([
      'doubt washer-misses-limits endFloat.washers[1]: washer=+0.10, standard=STD, from=0.28 mm, upTo=0.46 mm, from=0.08 mm, upTo=0.26 mm, from=0.1 mm, upTo=0.26 mm',
    ])
  })

  it('is doubted as well where it leaves too much, as a thin one does', () => {
    const lines = auditAfter('fen-1', (spec) => {
      spec.endFloat!.washers![0]!.thickness = '1.85 mm'
    })
    expect(lines).toEqual([
      expect.stringContaining(
        'washer-misses-limits endFloat.washers[0]: washer=thin, standard=standard, from=0.05 mm, upTo=0.1 mm, from=0.35 mm, upTo=0.4 mm, from=0.1 mm, upTo=0.3 mm',
      ),
    ])
  })

  it('may leave just the limits', () => {
    expect(auditAfter('fen-1', () => {})).toEqual([])
  })
})

it('two limits for one end float are doubted', () => {
  const lines = auditAfter('skerry-3', (spec) =>
    Object.assign(named(spec.steps, 'end-float'), { reading: { least: '0.08 mm', most: '0.25 mm' } }),
  )
  expect(lines).toEqual([
    'doubt limits-said-twice steps[8].reading: step=End float, gap=end-float, from=0.08 mm, upTo=0.25 mm, from=0.08 mm, upTo=0.2 mm',
  ])
})
