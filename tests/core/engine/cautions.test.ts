import { describe, expect, it } from 'vitest'
import {
  cautionsAt,
  dangerKinds,
  hurtsPeople,
  readSpec,
  signals,
  type Caution,
  type Step,
} from '../../../core/engine/index.ts'
import { en } from '../../../core/words/index.ts'
import { demoDraft, demoIds, demoSpec, shippedSpec } from './demo.ts'

const moor = demoSpec('moor-flat-4')
const stepOf = (id: string): Step => moor.steps.find((step) => step.id === id)!
const said = (step: Step) =>
  cautionsAt(en.dangers, moor.cautions, step).map(({ signal, text }) => `${signal} ${text.slice(0, 22)}`)

describe('what can hurt in a step', () => {
  it('is said as the spec has it first, then by its kinds', () => {
    const own: Caution = { signal: 'CAUTION', text: 'This cleaner stings.', steps: ['clean-case'] }
    expect(
      cautionsAt(en.dangers, [own], stepOf('clean-case')).map(({ signal, text }) => [
        signal,
        text.slice(0, 12),
      ]),
    ).toEqual([
      ['CAUTION', 'This cleaner'],
      ['WARNING', 'Compressed a'],
      ['WARNING', 'Solvent coul'],
    ])
  })

  it('has the signal word of its kind: sealant hurts the skin, and in an oil way the engine alone', () => {
    const bead = cautionsAt(en.dangers, [], stepOf('bead-plus'))
    expect(bead.map((caution) => [caution.signal, hurtsPeople(caution)])).toEqual([
      ['CAUTION', true],
      ['NOTICE', false],
    ])
  })

  it('is said once for each kind, and the most serious first', () => {
    const step = {
      ...stepOf('bead-plus'),
      dangers: ['sealant-on-skin', 'journal-scratch', 'heavy-lift', 'heavy-lift'],
    } as Step
    expect(said(step).map((text) => text.split(' ')[0])).toEqual(['WARNING', 'CAUTION', 'NOTICE'])
  })

  it('leaves out what is said of every step, and says nothing where there is no step', () => {
    expect(said(stepOf('plate'))).toEqual([])
    expect(cautionsAt(en.dangers, moor.cautions, null)).toEqual([])
  })

  it('is a kind that the program has words for, or the spec is refused', () => {
    const draft = demoDraft('moor-flat-4') as { steps: { dangers?: unknown }[] }
    draft.steps[0]!.dangers = ['dragons']
    const reading = readSpec(JSON.stringify(draft))
    expect(!reading.ok && reading.problems.map(({ path }) => path)).toEqual(['steps[0].dangers[0]'])
  })

  it('is reported as hazard, harm and what to do, under a word that the harm deserves', () => {
    for (const kind of dangerKinds) expect(en.dangers[kind].split('. ').length, kind).toBeGreaterThan(1)
    expect(signals).toEqual(['DANGER', 'WARNING', 'CAUTION', 'NOTICE'])
  })

  it('stands at every bead and every turned crank of the demo engines', () => {
    const steps = demoIds.flatMap((id) => shippedSpec(id).steps)
    const beads = steps.filter(({ kind }) => kind === 'lay-bead')
    expect(beads.length).toBeGreaterThan(10)
    expect(beads.every(({ dangers }) => dangers?.includes('sealant-on-skin'))).toBe(true)
    const turned = steps.filter(({ id }) => id === 'turn-crank')
    expect(turned.length).toBeGreaterThan(5)
    expect(turned.every(({ dangers }) => dangers?.includes('turning-crank'))).toBe(true)
  })
})
