import { describe, expect, it } from 'vitest'
import { auditAfter, named, nth, type Draft } from '../../engine/demo.ts'

describe('least above most', () => {
  const swapped: readonly (readonly [string, (spec: Draft) => void, string])[] = [
    [
      'of an oil clearance',
      (s) => Object.assign(nth(s.fits, 0).clearance, { least: '50 µm', most: '20 µm' }),
      'fits[0].clearance: Main bearings, oil clearance: the minimum, 50.0 µm, is above the maximum, 20.0 µm. One of the two is misprinted or mistyped.',
    ],
    [
      'of the end float',
      (s) => Object.assign(s.endFloat ?? {}, { least: '0.20 mm', most: '0.08 mm' }),
      'endFloat: End float: the minimum, 0.200 mm, is above the maximum, 0.080 mm.',
    ],
    [
      'of the float that a washer is for',
      (s) => Object.assign(nth(s.endFloat?.washers, 2), { floatFrom: '0.40 mm', floatTo: '0.30 mm' }),
      'endFloat.washers[2]: End float, washer “second oversize”: the minimum, 0.400 mm',
    ],
    [
      'of the rod side clearance',
      (s) => (s.rodSideClearance = { least: '0.3 mm', most: '0.1 mm' }),
      'rodSideClearance: Rod side clearance: the minimum, 0.300 mm',
    ],
    [
      'of a reading',
      (s) => Object.assign(named(s.steps, 'end-float'), { reading: { least: '0.2 mm', most: '0.08 mm' } }),
      'steps[8].reading: End float: the minimum, 0.200 mm',
    ],
    [
      'of a torque',
      (s) => Object.assign(nth(named(s.procedures, 'rods').passes, 1), { least: '16 N·m', most: '14 N·m' }),
      'procedures[0].passes[1]: Rod bolts, pass 2: the minimum, 16 N·m, is above the maximum, 14 N·m.',
    ],
    [
      'of a torque for some',
      (s) =>
        Object.assign(nth(named(s.procedures, 'rods').passes, 1), {
          others: [{ fasteners: ['rod-1'], target: '15 N·m', least: '16 N·m', most: '14 N·m' }],
        }),
      'procedures[0].passes[1].others[0]: Rod bolts, pass 2: the minimum, 16 N·m',
    ],
    [
      'of an angle',
      (s) => Object.assign(nth(named(s.procedures, 'rods').passes, 2), { least: '63 °', most: '57 °' }),
      'procedures[0].passes[2]: Rod bolts, pass 3: the minimum, 63°, is above the maximum, 57°.',
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
      'procedures[0].passes[2].others[1]: Rod bolts, pass 3: the minimum, 63°, is above the maximum, 57°.',
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
    ).toContain(
      'fault target-outside-limits procedures[0].passes[2]: Rod bolts, pass 3: the target, 90°, is not within 57° to ' +
        '63°. Correct one of them.',
    )
    expect(auditAfter('skerry-3', (spec) => (nth(spec.fits, 1).clearance.target = '70 µm'))).toContain(
      'fault target-outside-limits fits[1].clearance: Big ends, oil clearance: the target, 70.0 µm, is not within ' +
        '24.0 µm to 56.0 µm. Correct one of them.',
    )
  })

  it('may lie on a limit', () => {
    expect(auditAfter('skerry-3', (spec) => (nth(spec.fits, 0).clearance.target = '50 µm'))).toEqual([])
  })
})

it('a service limit below the most for new parts is a fault', () => {
  expect(auditAfter('skerry-3', (spec) => (nth(spec.fits, 0).clearance.serviceLimit = '40 µm'))).toEqual([
    'fault service-limit-below-most fits[0].clearance.serviceLimit: Main bearings: the service limit, 40.0 µm, is below ' +
      'the maximum for new parts, 50.0 µm. Correct one of them.',
  ])
})

describe('thrust washers', () => {
  it('for the same float are a fault', () => {
    expect(auditAfter('skerry-3', (spec) => (nth(spec.endFloat?.washers, 1).floatFrom = '0.18 mm'))).toEqual([
      'fault washers-overlap endFloat.washers[0]: End float: the washers “standard” and “first oversize” are both given ' +
        'for the same float. Correct where one begins.',
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
      'doubt washer-misses-limits endFloat.washers[1]: End float: at 0.280 mm to 0.460 mm the washers “+0.10” are to go in. By their ' +
        'thickness they leave 0.080 mm to 0.260 mm, where “STD” were in before; allowed is 0.100 mm to 0.260 mm. Check the ' +
        'thickness, and the floats of the row.',
    ])
  })

  it('is doubted as well where it leaves too much, as a thin one does', () => {
    const lines = auditAfter('fen-1', (spec) => {
      spec.endFloat!.washers![0]!.thickness = '1.85 mm'
    })
    expect(lines).toEqual([expect.stringContaining('they leave 0.350 mm to 0.400 mm')])
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
    'doubt limits-said-twice steps[8].reading: End float: the step allows 0.080 mm to 0.250 mm, and the end float of ' +
      'this engine is given as 0.080 mm to 0.200 mm. Two limits for one thing: find out which holds.',
  ])
})
