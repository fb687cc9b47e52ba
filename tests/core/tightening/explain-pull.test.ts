import { describe, expect, it } from 'vitest'
import { explainPull } from '../../../core/tightening/index.ts'
import { engineSpec } from '../../../core/engine/index.ts'
import { demoDraft, demoSpec, named } from '../engine/demo.ts'
import { valueOf } from './wrench-rack.ts'
import { textIn } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'

const skerry = demoSpec('skerry-3')
const caseBolts = named(skerry.procedures, 'case')

/** The rods of Skerry 3 pulled by passes of our own. */
function explained(passes: readonly object[], pass: number, fastener = 'rod-1') {
  const draft = demoDraft('skerry-3')
  const orders = [
    { id: 'pair', sequence: ['rod-1', 'rod-2'] },
    { id: 'second', sequence: ['rod-2'] },
  ]
  const procedure = { ...named(draft.procedures, 'rods'), orders, passes }
  const spec = engineSpec.parse({ ...draft, procedures: [procedure] })
  return valueOf(explainPull(spec, spec.procedures[0]!, pass, fastener))
}

describe('what one pull does', () => {
  it('is what its torque does: pass 3 of the case bolts, 32 N·m', () => {
    const pull = valueOf(explainPull(skerry, caseBolts, 2, 'case-1'))
    expect(pull).toMatchObject({ kind: 'torque', torque: { target: 32 } })
    expect(pull!.inputs.map(({ value }) => textIn(en, en.pullInputs.values, value))).toContain('M10×1.25')
  })

  it('is what the turn does from the last torque on: pass 5, 60° after 32 N·m', () => {
    const pull = valueOf(explainPull(skerry, caseBolts, 4, 'case-1'))
    expect(pull).toMatchObject({
      kind: 'turn',
      torque: { target: 32 },
      turn: { target: 60, least: 57, most: 63 },
    })
  })

  it('says what a working load would do, where the spec names one: after torques and turns alike', () => {
    const draft = demoDraft('skerry-3')
    named(draft.fastenerGroups, 'case-bolts').workingLoad = { force: '10 kN' }
    const spec = engineSpec.parse(draft)
    for (const pass of [2, 4]) {
      const pull = valueOf(explainPull(spec, named(spec.procedures, 'case'), pass, 'case-1'))!
      const { loadFactor, clampLeft } = pull.workingLoad!
      expect(loadFactor).toBeGreaterThan(0.05)
      expect(loadFactor).toBeLessThan(0.5)
      expect(clampLeft.usual).toBeCloseTo(pull.effect.preload.usual - (1 - loadFactor) * 10_000, 6)
    }
    expect(valueOf(explainPull(skerry, caseBolts, 2, 'case-1'))!.workingLoad).toBeNull()
  })

  const torque = { kind: 'torque', order: 'pair', target: '15 N·m' }
  const angle = (target: string, limits: object = {}) => ({ kind: 'angle', order: 'pair', target, ...limits })

  it('adds turns up, limits included: twice 45° ± 5° is 90° ± 10°', () => {
    expect(explained([torque, angle('45 °'), angle('45 °')], 2)).toMatchObject({
      turn: { target: 90, least: 80, most: 100 },
    })
    expect(explained([torque, angle('45 °'), angle('45 °')], 1)).toMatchObject({ turn: { target: 45 } })
  })

  it('leaves out the passes that this fastener is not in', () => {
    const passes = [torque, { ...torque, order: 'second', target: '25 N·m' }, angle('45 °')]
    expect(explained(passes, 2)).toMatchObject({ torque: { target: 15 } })
    expect(explained(passes, 2, 'rod-2')).toMatchObject({ torque: { target: 25 } })
  })

  it('begins again at each torque', () => {
    expect(explained([torque, angle('45 °'), torque, angle('30 °')], 3)).toMatchObject({
      turn: { target: 30 },
    })
  })

  it('is not begun again by a recheck, which moves nothing: 45° and 45° with one between are 90°', () => {
    const recheck = { kind: 'recheck', order: 'pair', target: '15 N·m' }
    expect(explained([torque, angle('45 °'), recheck, angle('45 °')], 3)).toMatchObject({
      turn: { target: 90 },
    })
    expect(explained([torque, angle('45 °'), recheck], 2)).toMatchObject({
      kind: 'turn',
      turn: { target: 45 },
    })
    expect(explained([torque, recheck], 1)).toMatchObject({ kind: 'torque', torque: { target: 15 } })
    // What the bolt holds comes from the torque, between whose limits it was tightened, not from the look at it.
    const wide = { ...recheck, least: '13 N·m', most: '17 N·m' }
    const narrow = { ...torque, least: '14.5 N·m', most: '15.5 N·m' }
    expect(explained([narrow, wide], 1)).toMatchObject({ torque: { least: 14.5, most: 15.5 } })
  })

  it('is what a recheck above the torque before would raise it to', () => {
    const recheck = { kind: 'recheck', order: 'pair', target: '18 N·m' }
    expect(explained([torque, recheck], 1)).toMatchObject({ kind: 'torque', torque: { target: 18 } })
  })

  it('takes the value of this fastener, where some differ', () => {
    const others = [{ fasteners: ['rod-2'], target: '20 N·m' }]
    expect(explained([{ ...torque, others }], 0, 'rod-2')).toMatchObject({ torque: { target: 20 } })
  })

  it.each([
    ['for a turn after loosening', [torque, { kind: 'loosen', order: 'pair' }, angle('90 °')], 2, 'rod-1'],
    ['for a turn from a mark alone', [{ kind: 'seat', order: 'pair' }, angle('90 °')], 1, 'rod-1'],
    ['by hand', [{ kind: 'seat', order: 'pair' }], 0, 'rod-1'],
    ['for an action', [{ kind: 'action', instruction: 'Tap the crank.' }], 0, 'rod-1'],
    ['for a fastener that this pass leaves out', [torque], 0, 'rod-3'],
    [
      'for a fastener that only an earlier pass pulls',
      [torque, { ...torque, order: 'second' }],
      ...([1, 'rod-1'] as const),
    ],
    [
      'for a recheck that no torque came before',
      [{ kind: 'recheck', order: 'pair', target: '15 N·m' }],
      ...([0, 'rod-1'] as const),
    ],
    ['for a fastener that is not there', [torque], 0, 'rod-99'],
    ['for a pass that is not there', [torque], 4, 'rod-1'],
  ])('is not told %s', (_, passes, pass, fastener) => {
    expect(explained(passes, pass, fastener)).toBeNull()
  })
})
