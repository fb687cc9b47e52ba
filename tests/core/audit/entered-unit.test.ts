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
      'doubt limits-said-twice steps[8].reading: step=Crank, fore and aft, gap=end-float, from=0.004 in, upTo=0.014 in, from=0.004 in, upTo=0.012 in',
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

  it('speaks millimetres where the values are whole in neither unit', () => {
    expect(
      endFloat({ least: '0.10005 mm', most: '0.30005 mm' }, { least: '0.10 mm', most: '0.40 mm' }).join(),
    ).toContain('limits-said-twice steps[8].reading')
  })

  it('are two where they differ by no more than half a hundredth of a millimetre and a bit', () => {
    // 0.0101 in is 0.25654 mm: 6.5 µm from 0.25 mm, which is printed to 10 µm.
    expect(
      endFloat({ least: '0.10 mm', most: '0.25 mm' }, { least: '0.004 in', most: '0.0101 in' }),
    ).toHaveLength(1)
  })

  it('are one up to half of the last digit that the coarser is printed with, and no further', () => {
    const inStep = (least: string) =>
      endFloat({ least: '0.100 mm', most: '0.300 mm' }, { least, most: '0.0118 in' }).length
    // 0.1 mm is printed to 0.01 mm at least: up to 5 µm apart. 0.0041 in is 4.1 µm off, 0.00415 in 5.4 µm.
    expect([inStep('0.0041 in'), inStep('0.00415 in')]).toEqual([0, 1])
    // 0.002 in is 0.0508 mm, and printed to 0.001 in: up to 12.7 µm apart. 0.063 mm is 12.2 µm off, 0.064 mm 13.2 µm.
    const inMm = (least: string) =>
      endFloat({ least: '0.002 in', most: '0.012 in' }, { least, most: '0.305 mm' }).length
    expect([inMm('0.063 mm'), inMm('0.064 mm')]).toEqual([0, 1])
  })

  it('are not looked for where the engine gives none of its own', () => {
    const lines = auditAfter('skerry-3', (spec) => {
      delete spec.rodSideClearance
      const step = named(spec.steps, 'end-float')
      Object.assign(step, { gap: 'rod-side', reading: { least: '0.10 mm', most: '0.35 mm' } })
    })
    expect(lines.filter((line) => line.includes('said-twice'))).toEqual([])
  })

  it('are looked for at the side of a rod as well', () => {
    const lines = auditAfter('skerry-3', (spec) => {
      spec.rodSideClearance = { least: '0.10 mm', most: '0.30 mm' }
      const step = named(spec.steps, 'end-float')
      Object.assign(step, { gap: 'rod-side', reading: { least: '0.10 mm', most: '0.35 mm' } })
    })
    expect(lines.join(' ')).toContain(
      'limits-said-twice steps[8].reading: step=End float, gap=rod-side, from=0.1 mm, upTo=0.35 mm, from=0.1 mm, upTo=0.3 mm',
    )
  })
})

describe('a finding', () => {
  it('speaks the unit that was entered', () => {
    expect(
      endFloat({ least: '0.012 in', most: '0.004 in' }, { least: '0.012 in', most: '0.004 in' }).join(' '),
    ).toContain('least-above-most ')
    const torque = auditAfter('skerry-3', (spec) => {
      const pass = named(spec.procedures, 'rods').passes.find(({ kind }) => kind === 'torque')
      Object.assign(pass!, { target: '11 lbf·ft', least: '13 lbf·ft', most: '12 lbf·ft' })
    })
    expect(torque.join(' ')).toContain(
      'least-above-most procedures[0].passes[1]: least=13 lbf·ft, most=12 lbf·ft',
    )
  })

  it('speaks the unit in which both of its torques were entered', () => {
    const findings = (least: string, most: string) =>
      auditAfter('skerry-3', (spec) => {
        const pass = named(spec.procedures, 'rods').passes.find(({ kind }) => kind === 'torque')
        Object.assign(pass!, { target: most, least, most })
      }).join(' ')
    // 150 lbf·in are 12.5 lbf·ft, 145 are 12.08…
    expect(findings('150 lbf·in', '145 lbf·in')).toContain(
      'least-above-most procedures[0].passes[1]: least=150 lbf·in, most=145 lbf·in',
    )
    expect(findings('12.5 lbf·ft', '12.25 lbf·ft')).toMatch(/least=12\.5 lbf·ft, most=12\.\d+ lbf·ft/)
    expect(findings('14.25 N·m', '14.2 N·m')).toMatch(/least=14\.\d+ N·m, most=14\.2 N·m/)
  })

  it('speaks millimetres where both units would be whole', () => {
    // 0.254 mm is 0.010 in, 0.127 mm is 0.005 in.
    expect(
      endFloat({ least: '0.254 mm', most: '0.127 mm' }, { least: '0.254 mm', most: '0.127 mm' }).join(' '),
    ).toContain('least-above-most ')
  })
})
