import { describe, expect, it } from 'vitest'
import type { BuildEvent } from '../../../core/builds/index.ts'
import { en, loadWords } from '../../../core/words/index.ts'
import { entryText } from '../../../renderer/archive/entry-text.ts'
import { shippedEngine } from '../../core/builds/workshop.ts'

const spec = shippedEngine('skerry-3')
const said = (event: BuildEvent) => entryText(en, spec, event)

const pulled: BuildEvent = {
  ...{ type: 'fastener-pulled', version: 1, procedure: 'case', pull: 9, pass: 1, fastener: 'case-2' },
  reading: { typed: '24.2', value: 24.2, unit: 'N·m' },
  verdict: 'within',
  outOfOrder: null,
}

describe('what an entry holds', () => {
  it('is the fastener, the pass and the reading of a pull, in the language of the window', async () => {
    expect(said(pulled)).toBe(`Case bolts, pass 2 (torque), 2, 24.2 N·m, ${en.sheet.run.verdicts.within}`)
    const inGerman = entryText(await loadWords('de'), spec, pulled)
    expect(inGerman).toMatch(/24\.2 N·m/)
    expect(inGerman).not.toMatch(/pass|within/)
  })

  it('is what was typed of marks, halves, checks and limits, and where', () => {
    expect(
      said({
        ...{ type: 'marks-noted', version: 1, step: 'case-marks', fit: 'mains', part: 'housing' },
        ...{ marks: ['1', '2'], typed: '1 2' },
      }),
    ).toMatch(/, 1 2$/)
    expect(said({ type: 'half-fitted', version: 1, step: 'fit-mains', position: 'M1', half: 'upper' })).toBe(
      'M1 upper',
    )
    expect(
      said({
        ...{ type: 'limit-measured', version: 1, step: 'crank-true', measure: 'none', at: 'M2' },
        ...{ reading: { typed: '0.02 mm', length_nm: 20_000 }, verdict: 'new' },
      }),
    ).toMatch(/M2.*0\.02 mm$/)
  })

  it('is what was done at a place, whose sentence goes on with its step', () => {
    expect(
      said({
        ...{ type: 'place-done', version: 1, step: 'piston-way', place: 'front' },
        ...{ round: 1, note: 'Looked twice' },
      }),
    ).toMatch(/^It points to the nose, [^,]+, Looked twice$/)
  })

  it('is what a person said of it', () => {
    const bench = { id: 'a00000000001', name: 'Bench 2' }
    const taken = { type: 'build-taken-over', version: 1, from: null, to: bench } as const
    expect(said({ ...taken, reason: 'No power there' })).toBe('Bench 2, No power there')
    expect(said({ type: 'step-skipped', version: 1, step: 'chain-on', reason: 'No chain yet' })).toMatch(
      /No chain yet$/,
    )
    expect(said({ type: 'build-finished', version: 1 })).toBe('')
  })
})
