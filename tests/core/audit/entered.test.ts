import { describe, expect, it } from 'vitest'
import { auditAfter, named } from '../engine/demo.ts'

type Limits = { least: string; most: string }

/** Skerry 3 with its end float given twice, and the step that measures it under any name. */
function endFloat(inEngine: Limits, inStep: Limits, name = 'Crank, fore and aft') {
  return auditAfter('skerry-3', (spec) => {
    Object.assign(spec.endFloat!, inEngine, { washers: [] })
    Object.assign(named(spec.steps, 'end-float'), { name, reading: inStep })
  }).filter((line) => /said-twice|least-above-most/.test(line))
}

describe('two limits for one thing', () => {
  it('are found by what the step measures, whatever it is called: end play 0.012 and 0.014 in', () => {
    expect(
      endFloat({ least: '0.004 in', most: '0.012 in' }, { least: '0.004 in', most: '0.014 in' }),
    ).toEqual([
      'doubt limits-said-twice steps[8].reading: Crank, fore and aft: the step allows 0.0040 in to 0.0140 in, and the end ' +
        'float of this engine is given as 0.0040 in to 0.0120 in. Two limits for one thing: find out which holds.',
    ])
  })

  it('are one where the inches are the millimetres in other units', () => {
    expect(endFloat({ least: '0.10 mm', most: '0.25 mm' }, { least: '0.004 in', most: '0.010 in' })).toEqual(
      [],
    )
  })

  it('are two where they differ by more than the rounding of print', () => {
    expect(
      endFloat({ least: '0.10 mm', most: '0.25 mm' }, { least: '0.004 in', most: '0.012 in' }),
    ).toHaveLength(1)
    expect(
      endFloat({ least: '0.10 mm', most: '0.25 mm' }, { least: '0.10 mm', most: '0.26 mm' }),
    ).toHaveLength(1)
  })

  it('are two where they differ by no more than half a hundredth of a millimetre and a bit', () => {
    // 0.0101 in is 0.25654 mm: 6.5 µm from 0.25 mm, which is printed to 10 µm.
    expect(
      endFloat({ least: '0.10 mm', most: '0.25 mm' }, { least: '0.004 in', most: '0.0101 in' }),
    ).toHaveLength(1)
  })

  it('are looked for at the side of a rod as well', () => {
    const lines = auditAfter('skerry-3', (spec) => {
      spec.rodSideClearance = { least: '0.10 mm', most: '0.30 mm' }
      const step = named(spec.steps, 'end-float')
      Object.assign(step, { gap: 'rod-side', reading: { least: '0.10 mm', most: '0.35 mm' } })
    })
    expect(lines.join(' ')).toContain('and the rod side clearance of this engine is given as')
  })
})

describe('a finding', () => {
  it('speaks the unit that was entered', () => {
    expect(
      endFloat({ least: '0.012 in', most: '0.004 in' }, { least: '0.012 in', most: '0.004 in' }).join(' '),
    ).toContain('the minimum, 0.0120 in, is above the maximum, 0.0040 in')
    const torque = auditAfter('skerry-3', (spec) => {
      const pass = named(spec.procedures, 'rods').passes.find(({ kind }) => kind === 'torque')
      Object.assign(pass!, { target: '11 lbf·ft', least: '13 lbf·ft', most: '12 lbf·ft' })
    })
    expect(torque.join(' ')).toContain('the minimum, 13 lbf·ft, is above the maximum, 12 lbf·ft')
  })
})
