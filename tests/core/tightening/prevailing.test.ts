import { describe, expect, it } from 'vitest'
import { newtonMetres } from '../../../core/quantity/index.ts'
import type { EngineSpec } from '../../../core/engine/index.ts'
import {
  flagProblem,
  heldAs,
  isReadingAsked,
  openFlags,
  prevailingOfGroup,
  runningBefore,
  withRunning,
} from '../../../core/tightening/index.ts'
import { Bench, pull } from './bench.ts'
import { winchEngine } from './winch-engine.ts'
import { setupOf, medium } from './wrench-rack.ts'

/** The winch with locking nuts on its caps: 24 N·m, and at most 8 N·m to run down. */
const lockedCaps = (torqueIncludesPrevailing?: boolean): EngineSpec => ({
  ...winchEngine,
  fastenerGroups: winchEngine.fastenerGroups.map((group) => ({
    ...group,
    prevailing: newtonMetres(8),
    torqueIncludesPrevailing,
  })),
  procedures: winchEngine.procedures.map((procedure) => ({
    ...procedure,
    passes: procedure.passes.map((pass) =>
      pass.kind === 'torque' ? { ...pass, least: undefined, most: undefined, others: [] } : pass,
    ),
  })),
})

const runsAt = (typed: string) => ({ running: { typed, unit: 'N·m' as const } })

/** The four caps run down at so much and seated: what is next is the first torque, 24 N·m. */
function seated(running: string): Bench {
  const bench = Bench.started('caps', lockedCaps(false))
  for (let cap = 0; cap < 4; cap++) bench.does({ ...pull(bench.next!), ...runsAt(running) })
  return bench
}

/** The same where nothing goes on top, or no seating comes before it. */
function atFirstTorque(torqueIncludesPrevailing?: boolean): Bench {
  const spec = lockedCaps(torqueIncludesPrevailing)
  if (torqueIncludesPrevailing === false)
    return Bench.started('caps', {
      ...spec,
      procedures: spec.procedures.map((procedure) => ({
        ...procedure,
        passes: procedure.passes.filter(({ kind }) => kind !== 'seat'),
      })),
    })
  const bench = Bench.started('caps', spec)
  bench.pullsNext(4)
  return bench
}

describe('a locking nut whose torque goes on top of what it takes to run down', () => {
  it('is right at 30 N·m on the wrench: 6 to run it down, and the 24 of the spec', () => {
    const bench = atFirstTorque(false)
    const [event] = bench.does({ ...pull(bench.next!, ['30', 'N·m']), ...runsAt('6') })
    expect(event).toMatchObject({
      verdict: 'within',
      reading: { typed: '30', value: 30, clamping: 24 },
      running: { typed: '6', value: 6, unit: 'N·m' },
    })
  })

  it('is too little at 24 on the wrench, of which 18 clamp', () => {
    const bench = atFirstTorque(false)
    bench.does({ ...pull(bench.next!, ['24', 'N·m']), ...runsAt('6') })
    const [flag] = openFlags(bench.run)
    expect(flag?.about).toBe('under')
    expect(flagProblem(bench.spec, bench.procedure, bench.run!, flag!)).toMatchObject({
      code: 'reading-under',
      facts: {
        fastener: '1',
        read: {
          code: 'reading',
          facts: {
            onScale: { amount: 24, decimals: 6, isShort: true, unit: 'N·m' },
            atFastener: null,
            clamping: { amount: 18, decimals: 1, isShort: true, unit: 'N·m' },
          },
        },
        limits: {
          from: { amount: 23.1, decimals: 6, isShort: true, unit: '' },
          upTo: { amount: 24.9, decimals: 6, isShort: true, unit: '' },
        },
        otherUnit: 'lbf·ft',
      },
    })
  })

  it('is too much at 32, of which 30 clamp: what is on top is what was read, not what the spec allows', () => {
    const bench = atFirstTorque(false)
    bench.does({ ...pull(bench.next!, ['32', 'N·m']), ...runsAt('2') })
    expect(openFlags(bench.run)[0]?.about).toBe('over')
  })

  it('is brought to the fastener first: 22.5 on a 12 in wrench with a 4 in adapter are 30, of which 24 clamp', () => {
    const bench = atFirstTorque(false)
    const long = heldAs(setupOf(medium({ length: '12 in' }), { offset: '4 in', angle: '0 °' }))
    const [event] = bench.does({ ...pull(bench.next!, ['22.5', 'N·m']), held: long, ...runsAt('6') })
    expect(event).toMatchObject({ verdict: 'within', reading: { value: 22.5, atFastener: 30, clamping: 24 } })
  })

  it('is not pulled before it was read what it takes to run down', () => {
    const bench = atFirstTorque(false)
    expect(bench.refusal(pull(bench.next!, ['24', 'N·m']))).toMatchObject({
      code: 'running-torque-missing',
      facts: { fastener: '1' },
    })
    expect(bench.refusal(pull(bench.next!))).toMatchObject({
      code: 'running-torque-missing',
      facts: { fastener: '1' },
    })
  })

  it('is looked at where it takes more to run down than the spec allows: nothing is set on top of that', () => {
    const bench = atFirstTorque(false)
    const command = pull(bench.next!, ['32.1', 'N·m'])
    expect(bench.refusal({ ...command, ...runsAt('8.1') })).toMatchObject({
      code: 'running-torque-high',
      facts: {
        fastener: '1',
        read: { amount: 8.1, decimals: 1, isShort: true, unit: 'N·m' },
        most: { amount: 8, decimals: 1, isShort: true, unit: 'N·m' },
      },
    })
    expect(bench.refusal({ ...command, running: { typed: '6', unit: 'mm' } })).toMatchObject({
      code: 'reading-of-other-kind',
      facts: { wanted: 'torque', unit: 'mm' },
    })
    bench.does({ ...pull(bench.next!, ['32', 'N·m']), ...runsAt('8') })
    expect(openFlags(bench.run)).toEqual([])
  })

  it('is read where it is seated, which is where it runs down: at the torque it touches already', () => {
    const bench = Bench.started('caps', lockedCaps(false))
    expect(bench.refusal(pull(bench.next!))).toMatchObject({
      code: 'running-torque-missing',
      facts: { fastener: '1' },
    })
    expect(bench.refusal({ ...pull(bench.next!), ...runsAt('8.1') })).toMatchObject({
      code: 'running-torque-high',
      facts: {
        fastener: '1',
        read: { amount: 8.1, decimals: 1, isShort: true, unit: 'N·m' },
        most: { amount: 8, decimals: 1, isShort: true, unit: 'N·m' },
      },
    })
    const torqued = seated('6')
    const [event] = torqued.does(pull(torqued.next!, ['30', 'N·m']))
    expect(event).toMatchObject({ verdict: 'within', reading: { clamping: 24 }, running: { value: 6 } })
  })

  it('is read once: at its next pull it is what it was, and after it was loosened it is read again', () => {
    const bench = atFirstTorque(false)
    for (let cap = 0; cap < 4; cap++) bench.does({ ...pull(bench.next!, ['30', 'N·m']), ...runsAt('6') })
    const first = bench.run!.pulls.find(({ running }) => running !== null)!.fastener!
    const before = () => runningBefore(bench.procedure, bench.run, first)
    expect(before()?.value).toBe(6)
    bench.does({ type: 'loosen-fastener', fastener: first, reason: 'A thread looked dry' })
    expect(before()).toBeNull()
  })

  it('is not read again where a pull is taken back: it touches, and would show more than it takes', () => {
    const bench = seated('6')
    bench.does(pull(bench.next!, ['26', 'N·m']))
    bench.does({ type: 'take-back', pull: 5, reason: 'Too little' })
    const [event] = bench.does(pull(bench.next!, ['30', 'N·m']))
    expect(event).toMatchObject({ verdict: 'within', running: { value: 6 } })
  })

  it('is read again after a pass that loosens, and after all of them were loosened to begin again', () => {
    const spec = lockedCaps(false)
    const [torque] = spec.procedures[0]!.passes.filter(({ kind }) => kind === 'torque')
    const loosen = { kind: 'loosen', order: 'all' } as const
    const twice = { ...spec.procedures[0]!, passes: [torque!, loosen, torque!] }
    const bench = Bench.started('caps', { ...spec, procedures: [twice] })
    for (let cap = 0; cap < 4; cap++) bench.does({ ...pull(bench.next!, ['30', 'N·m']), ...runsAt('6') })
    bench.pullsNext(4)
    expect(bench.refusal(pull(bench.next!, ['30', 'N·m']))).toMatchObject({
      code: 'running-torque-missing',
      facts: { fastener: '1' },
    })
    // A nut that was used turns more easily: what it took at first would be too much on top.
    const [event] = bench.does({ ...pull(bench.next!, ['27', 'N·m']), ...runsAt('3') })
    expect(event).toMatchObject({ verdict: 'within', reading: { clamping: 24 } })
    bench.does({ type: 'restart-run', pass: 0, reason: 'Broken off' })
    expect(bench.refusal(pull(bench.next!, ['30', 'N·m']))).toMatchObject({
      code: 'running-torque-missing',
      facts: { fastener: '1' },
    })
  })

  it('is read again by the same running torque where the first reading was mistyped', () => {
    const bench = atFirstTorque(false)
    bench.does({ ...pull(bench.next!, ['20', 'N·m']), ...runsAt('6') })
    const { number } = bench.run!.pulls.at(-1)!
    const [event] = bench.does({
      type: 'read-again',
      pull: number,
      reading: { typed: '30', unit: 'N·m' },
      reason: 'Misread',
    })
    expect(event).toMatchObject({ verdict: 'within', reading: { clamping: 24 } })
  })

  it('is the very reading that is asked for only with what goes on top', () => {
    const bench = atFirstTorque(false)
    const isAsked = (typed: string, running: number) =>
      isReadingAsked(
        bench.spec,
        bench.procedure,
        bench.run!,
        bench.next!,
        { typed, unit: 'N·m' },
        null,
        newtonMetres(running),
      )
    expect([isAsked('30', 6), isAsked('24', 6), isAsked('24', 0)]).toEqual([true, false, true])
  })
})

describe('a torque that has the prevailing torque in it, or of which the spec does not say', () => {
  it.each([[true], [undefined]])('adds nothing: 24 on the wrench is what is asked for (%s)', (isIncluded) => {
    const bench = atFirstTorque(isIncluded)
    // What was read of it changes nothing.
    const [event] = bench.does({ ...pull(bench.next!, ['24', 'N·m']), ...runsAt('6') })
    expect(event).toMatchObject({ verdict: 'within' })
    expect(event).not.toHaveProperty('running')
    expect(event).not.toHaveProperty('reading.clamping')
  })

  it('is told apart: included, on top, not said', () => {
    const counts = (isIncluded?: boolean) =>
      prevailingOfGroup(lockedCaps(isIncluded).fastenerGroups[0]!)?.counts
    expect([counts(true), counts(false), counts()]).toEqual(['included', 'on-top', 'not-said'])
    expect(prevailingOfGroup(winchEngine.fastenerGroups[0]!)).toBeNull()
  })
})

describe('what is set at the wrench', () => {
  it('has all of it on top, target and limits', () => {
    const limits = {
      kind: 'torque',
      target: newtonMetres(24),
      least: newtonMetres(23),
      most: newtonMetres(25),
      tolerance: 'spec',
    } as const
    expect(withRunning(limits, newtonMetres(6))).toMatchObject({ target: 30, least: 29, most: 31 })
  })
})
