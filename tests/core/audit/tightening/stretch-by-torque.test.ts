import { describe, expect, it } from 'vitest'
import { audit } from '../../../../core/audit/index.ts'
import { capsBy } from '../../tightening/stretch-engine.ts'
import { lineOf } from '../../../problem-line.ts'

/** What the audit says of the winch engine's caps, tightened to a stretch at torques: M10×1.5, 10.9, oiled, 60 mm of aluminium. */
function found(stretch: readonly [string, string], torque: readonly [string, string], change: object = {}) {
  const spec = capsBy(
    [
      { kind: 'length' },
      { kind: 'torque', target: '10 N·m' },
      {
        kind: 'tighten-to-stretch',
        least: stretch[0],
        most: stretch[1],
        torque: { least: torque[0], most: torque[1] },
      },
    ],
    (engine) => ({
      ...engine,
      fastenerGroups: engine.fastenerGroups.map((group) => ({ ...group, ...change })),
    }),
  )
  return audit(spec)
    .filter(({ problem }) => problem.code === 'stretch-not-by-torque')
    .map(({ weight, problem }) => `${weight} ${lineOf(problem)}`)
}

// d2 9.026, d3 8.160 mm: sections of 52.29 and 78.54 mm². Face 14.4 mm, hole 11 mm: friction under the head at 6.35 mm.
describe('a stretch that its torques cannot give', () => {
  // At the least friction of oiled threads, 0.08: 25 N·m / (0.16·1.5 + 0.58·9.026·0.08 + 6.35·0.08 mm) = 21.43 kN. Thread all along:
  // (5/78.54 + 60/52.29 + 5/52.29)/207 000 + 3.3/(78.54·71 000) = 6.904e-6 mm/N. Together 0.148 mm, and a quarter more 0.185 mm.
  it('because the most torque makes no bolt of that grip as long is doubted', () => {
    expect(found(['0.30 mm', '0.35 mm'], ['20 N·m', '25 N·m'])).toEqual([
      'doubt stretch-not-by-torque procedures[0].passes[2].torque: procedure=Caps, pass=3, group=Cap bolts, torque=25 N·m, ' +
        'longer=0.148 mm, bound=0.3 mm, tooShort=true',
    ])
    expect(found(['0.184 mm', '0.35 mm'], ['20 N·m', '25 N·m'])).toEqual([])
    expect(found(['0.186 mm', '0.35 mm'], ['20 N·m', '25 N·m'])).toHaveLength(1)
  })

  // At the most friction, 0.16: 60 N·m / (0.24 + 0.58·9.026·0.16 + 6.35·0.16 mm) = 28.66 kN. A bolt of ISO 4014 has 26 mm of thread, of
  // which 10 mm are engaged: (5/78.54 + 44/78.54 + 16/52.29 + 5/52.29)/207 000 + 0.592e-6 = 5.546e-6 mm/N. Together 0.159 mm, and a
  // quarter less 0.127 mm.
  it('because the least torque makes it longer already is doubted', () => {
    expect(found(['0.05 mm', '0.10 mm'], ['60 N·m', '65 N·m'])).toEqual([
      expect.stringMatching(/group=Cap bolts, torque=60 N·m, longer=0\.159 mm, bound=0\.1 mm$/),
    ])
    expect(found(['0.05 mm', '0.128 mm'], ['60 N·m', '65 N·m'])).toEqual([])
    expect(found(['0.05 mm', '0.126 mm'], ['60 N·m', '65 N·m'])).toHaveLength(1)
  })

  it('is not doubted where the bolt may yield within the torque: then it gets as long as one likes', () => {
    // 0.5 mm, with 80 to 120 N·m on an M10 that yields at some 55 kN.
    expect(found(['0.48 mm', '0.61 mm'], ['80 N·m', '120 N·m'])).toEqual([])
    // The same stretch of a stronger bolt that does not: 12.9 with 45 N·m.
    expect(found(['0.48 mm', '0.61 mm'], ['30 N·m', '45 N·m'], { propertyClass: '12.9' })).toHaveLength(1)
  })

  it('speaks the units that were entered', () => {
    expect(found(['0.012 in', '0.014 in'], ['15 lbf·ft', '18 lbf·ft'])[0]).toMatch(
      /torque=18 lbf·ft, longer=0\.00\d+ in, bound=0\.012 in, tooShort=true$/,
    )
  })

  it('is left alone where the bolt cannot be calculated: its class has a finding of its own', () => {
    expect(found(['0.30 mm', '0.35 mm'], ['20 N·m', '25 N·m'], { propertyClass: '11.9' })).toEqual([])
  })
})
