import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drillsOf, torqueGiven, trainingRack, valuesDrill } from '../../../core/practice/index.ts'
import { torqueOf } from '../../../core/quantity/index.ts'
import { scaleShare, usableFor } from '../../../core/tightening/index.ts'
import { en } from '../../../core/words/index.ts'
import { checkProperty } from '../../property.ts'
import { demo, demos } from '../layout/demos.ts'

const seeds = fc.integer({ min: 0, max: 10_000 }).map((round) => `round ${round}`)
const units = fc.constantFrom('N·m', 'lbf·ft', 'lbf·in')
const rack = trainingRack(en)
const day = '2026-03-31'

/** 1 lbf·ft is 1.355 817 948 N·m, 1 lbf·in a twelfth of it (NIST SP 811, B.8). */
const newtonMetresIn: Readonly<Record<string, number>> = {
  'N·m': 1,
  'lbf·ft': 1.3558179483,
  'lbf·in': 1.3558179483 / 12,
}

describe('a drill of values and wrench', () => {
  it('has one right value, which is the target, and wrong ones that no rounding makes right', () => {
    let questions = 0
    checkProperty(
      fc.property(fc.constantFrom(...demos), seeds, units, (spec, seed, unit) => {
        const drill = valuesDrill(spec, seed, rack, unit, day)!
        const pass = drill.procedure.passes[drill.pass]!
        if (pass.kind !== 'torque' && pass.kind !== 'recheck') throw new Error('it asks for no torque')
        const own = pass.others.find(({ fasteners }) => fasteners.includes(drill.fastener)) ?? pass
        for (const question of drill.questions) {
          if (question.kind !== 'value' && question.kind !== 'unit') continue
          expect(question.key).toHaveLength(1)
          expect(question.choices.length).toBeGreaterThan(1)
          question.choices.forEach(({ number, unit }, place) => {
            const off = Math.abs((Number(number) * newtonMetresIn[unit]!) / own.target - 1)
            if (question.key.includes(place)) expect(off).toBeLessThan(0.02)
            else expect(off).toBeGreaterThan(0.015)
          })
          questions += 1
        }
      }),
      { numRuns: 200, leastShare: 0.95 },
    )
    expect(questions).toBeGreaterThan(300)
  })

  it('has the twelvefold slip among its choices where a scale in lbf·in is set', () => {
    let slips = 0
    for (const spec of demos)
      for (let round = 0; round < 20; round += 1) {
        const { questions, window } = valuesDrill(spec, `round ${round}`, rack, 'lbf·ft', day)!
        const unit = questions.find(({ kind }) => kind === 'unit')
        if (unit?.kind !== 'unit' || unit.choices[0]?.unit !== 'lbf·in') continue
        const shares = unit.choices.map((choice) => torqueGiven(null, choice)! / window.target)
        expect(shares.some((times) => Math.abs(times * 12 - 1) < 0.1)).toBe(true)
        slips += 1
      }
    expect(slips).toBeGreaterThan(30)
  })

  it('counts as right exactly the wrenches that the run would use, or none of them', () => {
    let [some, none] = [0, 0]
    const small = rack.filter(({ wrench }) => wrench.id === 'small')
    checkProperty(
      fc.property(fc.constantFrom(...demos), seeds, fc.boolean(), (spec, seed, few) => {
        const setups = few ? small : rack
        const { questions, window } = valuesDrill(spec, seed, setups, 'N·m', day)!
        const question = questions.find(({ kind }) => kind === 'wrench')
        if (question?.kind !== 'wrench') throw new Error('no wrench is asked for')
        question.choices.forEach((choice, place) => {
          if (choice === null) return
          const found = usableFor([choice], window, day)
          const isUsable = found.ok && found.value.usable.length === 1
          expect(question.key.includes(place)).toBe(isUsable)
        })
        const isNone = question.key.includes(question.choices.length - 1)
        expect(isNone).toBe(question.key.length === 1 && question.choices[question.key[0]!] === null)
        if (isNone) none += 1
        else some += 1
      }),
      { numRuns: 200, leastShare: 0.95 },
    )
    expect(Math.min(some, none)).toBeGreaterThan(10)
  })

  it('sets a wrench so that the fastener gets the torque, with an adapter too', () => {
    let adapters = 0
    checkProperty(
      fc.property(fc.constantFrom(...demos), seeds, (spec, seed) => {
        const { questions, window } = valuesDrill(spec, seed, rack, 'N·m', day)!
        const question = questions.find(({ kind }) => kind === 'setting')
        if (question?.kind !== 'setting') return
        const { number, unit } = question.choices[question.key[0]!]!
        const share = scaleShare(question.setup)
        const torque = torqueOf(Number(number), unit) / (share.ok ? share.value : 0)
        expect(torque).toBeGreaterThanOrEqual(window.least * (1 - 1e-9))
        expect(torque).toBeLessThanOrEqual(window.most * (1 + 1e-9))
        if (question.setup.adapter !== null) adapters += 1
      }),
      { numRuns: 200, leastShare: 0.5 },
    )
    expect(adapters).toBeGreaterThan(20)
  })

  it('asks for values and units alone where no wrench is there, and is not offered without a torque', () => {
    const spec = demo('skerry-3')
    expect(valuesDrill(spec, 'a', [], 'N·m', day)!.questions.map(({ kind }) => kind)).toEqual([
      'value',
      'unit',
    ])
    expect(valuesDrill({ ...spec, procedures: [] }, 'a', rack, 'N·m', day)).toBeNull()
    expect(drillsOf(spec)).toContain('values')
    expect(drillsOf({ ...spec, procedures: [] })).not.toContain('values')
  })

  it('is the same for the same seed', () => {
    for (const spec of demos)
      expect(valuesDrill(spec, 'a', rack, 'N·m', day)).toEqual(valuesDrill(spec, 'a', rack, 'N·m', day))
  })
})
