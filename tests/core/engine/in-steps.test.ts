import { describe, expect, it } from 'vitest'
import { en } from '../../../core/words/index.ts'
import { audit } from '../../../core/audit/index.ts'
import { writtenAt } from '../../../core/engine/index.ts'
import { passText } from '../../../core/tightening/index.ts'
import { demoDraft, named, nth, readAfter, specOf, type Draft } from './demo.ts'

/** The rods of a demo tightened by passes of our own. */
function rods(...passes: readonly object[]) {
  return (spec: Draft): void => {
    const procedure = named(spec.procedures, 'rods')
    const order = nth(procedure.orders, 0).id
    procedure.passes = passes.map((pass) => ({ order, ...pass })) as never
  }
}

function passesOf(...passes: readonly object[]) {
  const draft = demoDraft('skerry-3')
  rods(...passes)(draft)
  return named(specOf(draft).procedures, 'rods').passes
}

const torque = (target: string, more: object = {}) => ({ kind: 'torque', target, ...more })
const stepAdvice = expect.stringContaining('spec-part-wrong procedures[0].passes[0].inSteps')

describe('a torque in steps', () => {
  it('goes through the order once for each: to 150 in steps of 50', () => {
    expect(passesOf(torque('150 N·m', { inSteps: '50 N·m' }))).toMatchObject([
      { kind: 'torque', target: 50, step: { number: 1, of: 3 } },
      { target: 100, step: { number: 2, of: 3 } },
      { target: 150, step: { number: 3, of: 3 } },
    ])
  })

  it('takes the fewest equal steps of a printed range: to 150 to 160 in steps of 50 to 60', () => {
    const passes = passesOf({
      kind: 'torque',
      least: '150 N·m',
      most: '160 N·m',
      inSteps: { least: '50 N·m', most: '60 N·m' },
    })
    // 155 in three: two steps come to 100 to 120, and the last has the limits of the pass.
    expect(passes).toMatchObject([
      { least: 50, most: 60 },
      { least: 100, most: 120 },
      { target: 155, least: 150, most: 160 },
    ])
    expect(passes[0]).toHaveProperty('target', expect.closeTo(51.667, 3))
    expect(passes[1]).toHaveProperty('target', expect.closeTo(103.333, 3))
  })

  it('counts from the torque before, and from nothing once they are loosened', () => {
    expect(passesOf(torque('30 N·m'), torque('90 N·m', { inSteps: '20 N·m' })).map(targetOf)).toEqual([
      30, 50, 70, 90,
    ])
    expect(
      passesOf(torque('30 N·m'), { kind: 'loosen' }, torque('40 N·m', { inSteps: '20 N·m' })).map(targetOf),
    ).toEqual([30, undefined, 20, 40])
  })

  it('has values of their own for some fasteners, in as many steps', () => {
    const others = [{ fasteners: ['rod-1', 'rod-2'], target: '36 N·m' }]
    const [first, second] = passesOf(
      torque('40 N·m', { others, inSteps: { least: '17 N·m', most: '20 N·m' } }),
    )
    expect(first).toMatchObject({ target: 20, others: [{ target: 18, least: 17, most: 20 }] })
    expect(second).toMatchObject({ target: 40, others: [{ target: 36 }] })
  })

  it.each([
    ['45 N·m', { inSteps: '20 N·m' }],
    ['155 N·m', { inSteps: '50 N·m' }],
    ['100 N·m', { inSteps: { least: '60 N·m', most: '70 N·m' } }],
    // More than twenty steps are a slip.
    ['42 N·m', { inSteps: '2 N·m' }],
  ])('%s with %j is refused with what to write', (target, more) => {
    expect(readAfter('skerry-3', rods(torque(target, more)))).toEqual([stepAdvice])
  })

  it('allows for a size that is printed rounded: 100 in steps of 33.3', () => {
    expect(passesOf(torque('100 N·m', { inSteps: '33.3 N·m' }))).toHaveLength(3)
    expect(passesOf(torque('40 N·m', { inSteps: '2 N·m' }))).toHaveLength(20)
  })

  it('is refused where the fasteners of one value do not start alike', () => {
    const first = torque('10 N·m', { others: [{ fasteners: ['rod-1'], target: '12 N·m' }] })
    expect(readAfter('skerry-3', rods(first, torque('40 N·m', { inSteps: '10 N·m' })))).toEqual([
      expect.stringContaining(
        'spec-part-wrong procedures[0].passes[1].inSteps: kind=text, text=10 N·m, should=steps-from-unlike',
      ),
    ])
  })
})

describe('an angle in steps', () => {
  it('is turned in equal parts: 60° in steps of 30°', () => {
    expect(passesOf(torque('20 N·m'), { kind: 'angle', target: '60 °', inSteps: '30 °' })).toMatchObject([
      { kind: 'torque' },
      { kind: 'angle', target: 30, step: { number: 1, of: 2 } },
      { kind: 'angle', target: 30, step: { number: 2, of: 2 } },
    ])
  })

  it('shares its limits out: both steps together are within the 55° to 65° of the whole', () => {
    const passes = passesOf(torque('20 N·m'), {
      kind: 'angle',
      target: '60 °',
      least: '55 °',
      most: '65 °',
      inSteps: '30 °',
      others: undefined,
    })
    expect(passes.slice(1)).toMatchObject([
      { least: 27.5, most: 32.5 },
      { least: 27.5, most: 32.5 },
    ])
  })

  it('is what is left where it counts in all: again to 90° after 30°, in steps of 30°', () => {
    expect(
      passesOf(
        torque('20 N·m'),
        { kind: 'angle', target: '30 °' },
        { kind: 'angle', inAll: '90 °', inSteps: '30 °' },
      ),
    ).toMatchObject([{}, { target: 30 }, { target: 30 }, { target: 30 }])
  })
})

describe('the steps of a pass', () => {
  const steps = { kind: 'torque', target: '30 N·m', inSteps: '15 N·m' }

  it('are counted in the list of passes', () => {
    const draft = demoDraft('skerry-3')
    rods(steps)(draft)
    const spec = specOf(draft)
    const texts = named(spec.procedures, 'rods').passes.map((pass) =>
      passText(en, spec, pass, { torque: 'N·m', length: 'mm' }),
    )
    expect(texts).toEqual(['torque, 15 N·m; step 1 of 2', 'torque, 30 N·m; step 2 of 2'])
  })

  it('stand in one place of the spec, to which findings lead', () => {
    const draft = demoDraft('skerry-3')
    rods(steps, { kind: 'torque', least: '40 N·m', most: '35 N·m', target: '38 N·m' })(draft)
    const spec = specOf(draft)
    const passes = named(spec.procedures, 'rods').passes
    expect(passes.map((_, index) => writtenAt(passes, index))).toEqual([0, 0, 1])
    const index = spec.procedures.findIndex(({ id }) => id === 'rods')
    expect(audit(spec).map(({ problem }) => problem.path)).toContain(`procedures[${index}].passes[1]`)
  })

  it('name a missing order once', () => {
    const lines = readAfter('skerry-3', (spec) => {
      rods(steps)(spec)
      ;(nth(named(spec.procedures, 'rods').passes, 0) as { order: string }).order = 'nowhere'
    })
    expect(lines).toHaveLength(1)
  })
})

function targetOf(pass: object): unknown {
  return 'target' in pass ? pass.target : undefined
}
