import { describe, expect, it } from 'vitest'
import type { EngineSpec, Pass } from '../../../core/engine/index.ts'
import { passText, targetAndLimits, threadText, type Units } from '../../../core/tightening/index.ts'
import { en, languages, loadWords } from '../../../core/words/index.ts'
import { demoEngine } from '../builds/workshop.ts'
import { measuredEngine } from './measured-engine.ts'

const metric: Units = { torque: 'N·m', length: 'mm' }
const imperial: Units = { torque: 'lbf·ft', length: 'in' }

const passOf = (procedure: string, pass: number): Pass =>
  measuredEngine.procedures.find(({ id }) => id === procedure)!.passes[pass]!

describe('a pass in one line', () => {
  it.each([
    ['caps', 0, 'seat by hand'],
    ['caps', 1, 'torque, 24 N·m; 4: 12 N·m'],
    ['caps', 2, 'Tap the crank back and forward.'],
    ['caps', 4, 'recheck, 40 N·m'],
    ['rods', 1, 'angle, 60°'],
    ['measured', 0, 'length before, measured in mm'],
    ['measured', 1, 'seat by hand, gap, at most 0.050 mm'],
    ['measured', 3, 'stretch, 0.100 mm to 0.150 mm'],
    ['measured', 5, 'recheck, 30 N·m; only 1, 3; again until none moves'],
    ['measured', 6, 'loosen'],
  ])('of “%s”, number %i from 0, is “%s”', (procedure, pass, text) => {
    expect(passText(en, measuredEngine, passOf(procedure, pass), metric)).toBe(text)
  })

  it('is in the units of the bench', () => {
    // 24 N·m / 1.35582 is 17.70 lbf·ft, 12 N·m 8.85.
    expect(passText(en, measuredEngine, passOf('caps', 1), imperial)).toBe(
      'torque, 17.7 lbf·ft; 4: 8.9 lbf·ft',
    )
    expect(passText(en, measuredEngine, passOf('measured', 4), imperial)).toBe(
      'Measure the end float: 0.0040 in to 0.0100 in.',
    )
  })

  it('says with its limits which of them no spec gives', () => {
    expect(passText(en, measuredEngine, passOf('caps', 1), metric, targetAndLimits)).toBe(
      // 4 % of 12 N·m either way is 11.52 to 12.48, and no reading outside may look right.
      'torque, 24 N·m (22.8 to 25.2); 4: 12 N·m (11.6 to 12.4, usual limits)',
    )
    expect(passText(en, measuredEngine, passOf('measured', 3), metric, targetAndLimits)).toBe(
      'stretch, 0.100 mm to 0.150 mm',
    )
  })

  it('names up to eight fasteners, and of more the first eight and how many there are', () => {
    const ids = Array.from({ length: 9 }, (_, index) => `stud-${index + 1}`)
    const spec: EngineSpec = {
      ...measuredEngine,
      fasteners: ids.map((id, index) => ({ ...measuredEngine.fasteners[0]!, id, number: `${index + 1}` })),
    }
    const only = (count: number) =>
      passText(en, spec, { ...passOf('caps', 4), only: ids.slice(0, count) } as Pass, metric)
    expect(only(8)).toBe('recheck, 40 N·m; only 1, 2, 3, 4, 5, 6, 7, 8')
    expect(only(9)).toBe('recheck, 40 N·m; only 1, 2, 3, 4, 5, 6, 7, 8 … (9)')
  })
})

describe('a thread', () => {
  it('has its pitch with the decimal mark of the language, and its class as ISO 898-1 writes it', async () => {
    const [group] = demoEngine('skerry-3').fastenerGroups
    const inLanguages = await Promise.all(
      languages.map(async (each) => threadText(await loadWords(each), group!)),
    )
    expect(inLanguages).toEqual([
      'M10 × 1.25, 10.9, oiled',
      'M10 × 1,25, 10.9, geölt',
      'M10 × 1,25, 10.9, aceitada',
    ])
  })
})
