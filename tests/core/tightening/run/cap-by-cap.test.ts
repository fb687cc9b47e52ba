import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../../core/problem/index.ts'
import { newtonMetres } from '../../../../core/quantity/index.ts'
import {
  decideRun,
  evolveRun,
  flagProblem,
  isRunDone,
  openFlags,
  plannedPulls,
  type Run,
} from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'
import { twoCapsEngine } from '../two-caps-engine.ts'

const turn = (bench: Bench, typed: string) => bench.does(pull(bench.next!, [typed, 'N·m']))
/** The next cap seated and torqued: four pulls. */
function tightensCap(bench: Bench) {
  for (let made = 0; made < 4; made++) bench.pullsToTarget()
}
function started() {
  return Bench.started('rods', twoCapsEngine)
}
const saidOf = ({ spec, procedure, run }: Bench) =>
  openFlags(run).map((flag) => sentenceOf(flagProblem(spec, procedure, run!, flag)))

describe('a procedure that goes cap by cap', () => {
  it('brings both bolts of one cap through all passes, has the crank turned, and begins the next cap then', () => {
    const planned = plannedPulls(started().procedure).map(
      ({ pass, fastener, cap }) => `${pass + 1} ${fastener ?? `turn, ${cap}`}`,
    )
    expect(planned).toEqual([
      ...['1 c', '1 d', '2 c', '2 d', '3 turn, B2'],
      ...['1 a', '1 b', '2 a', '2 b', '3 turn, B1'],
    ])
  })

  it('comes to its end by what is next, each time', () => {
    const bench = started()
    for (const torque of ['2', '2.5']) {
      tightensCap(bench)
      expect(bench.next).toMatchObject({ pass: 2, fastener: null })
      turn(bench, torque)
    }
    expect(bench.next).toBeNull()
    expect(isRunDone(bench.procedure, bench.run)).toBe(true)
    expect(bench.run!.pulls.flatMap(({ turning }) => turning ?? [])).toEqual([{ rise: null }, { rise: 0.5 }])
  })

  it('wants the reading: that the crank was turned is not enough', () => {
    const bench = started()
    tightensCap(bench)
    expect(bench.refusal(pull(bench.next!))).toMatchObject({
      code: 'reading-missing',
      facts: { fastener: null },
    })
  })

  it('takes the reading of a spring balance on a lever as well: 40 N at 50 mm are 2 N·m', () => {
    const bench = started()
    tightensCap(bench)
    turn(bench, '40 N × 50 mm')
    expect(bench.run!.pulls.at(-1)).toMatchObject({
      reading: { typed: '40 N × 50 mm', value: 2, unit: 'N·m' },
      verdict: 'within',
    })
    tightensCap(bench)
    expect(bench.refuses(pull(bench.next!, ['40 N × 0 mm', 'N·m']))).toContain('The lever is')
    expect(bench.refuses(pull(bench.next!, ['40 × 50 mm', 'N·m']))).toContain('40')
  })

  it('goes through the caps in an own order too, and takes the turn back as it does a pull', () => {
    const bench = new Bench('rods', twoCapsEngine)
    const own = { reason: 'The hoist is in the way', orders: [{ order: 'all', typed: 'R1 R2 R3 R4' }] }
    bench.does({ type: 'start-run', own })
    tightensCap(bench)
    turn(bench, '2')
    expect(bench.run!.pulls.map(({ fastener, cap }) => fastener ?? cap)).toEqual(['a', 'b', 'a', 'b', 'B1'])
    bench.does({ type: 'take-back', pull: 5, reason: 'read at the wrong end' })
    expect(bench.run!.pulls.at(-1)!.takenBack).toBe('read at the wrong end')
    expect(bench.next).toEqual({ pass: 2, fastener: null, cap: 'B1' })
    turn(bench, '2.1')
    expect(bench.next).toEqual({ pass: 0, fastener: 'c' })
  })

  it('compares the first reading with what the crank took before the run', () => {
    const bench = started()
    tightensCap(bench)
    const command = { ...pull(bench.next!, ['4', 'N·m']), procedure: 'rods' }
    const verdicts = [null, 3.5, 1].map((before) => {
      const decided = decideRun(
        twoCapsEngine,
        bench.run,
        command,
        before === null ? null : newtonMetres(before),
      )
      const [event] = decided.ok ? decided.value : []
      return event?.type === 'fastener-pulled' ? [event.verdict, event.turning?.rise_Nm] : null
    })
    expect(verdicts).toEqual([
      ['within', null],
      ['within', 0.5],
      ['over', 3],
    ])
  })
})

describe('a turning torque that jumps after one cap', () => {
  function jumped() {
    const bench = started()
    tightensCap(bench)
    turn(bench, '2')
    tightensCap(bench)
    turn(bench, '4')
    return bench
  }

  it('is reported with that cap and its bolts, the manual first', () => {
    expect(saidOf(jumped())).toEqual([
      'After cap B1, to turn the crank it takes 4 N·m, allowed at most 5 N·m, a rise of at most 1 N·m (rose 2 N·m): too much. ' +
        'The maker’s manual comes first. It rose most with cap B1: loosen R1 and R2, look at its shells, its oil, the number and the ' +
        'direction of the cap, tighten it again with its first pass, and turn once more.',
    ])
  })

  it('is over once the advice is followed to the letter: loosened, tightened from the first pass, turned once more', () => {
    const bench = jumped()
    for (const fastener of ['a', 'b'])
      bench.does({ type: 'loosen-fastener', fastener, reason: '', cause: 'crank-stiff' })
    expect(openFlags(bench.run)).toEqual([])
    expect(bench.next).toEqual({ pass: 0, fastener: 'a' })
    tightensCap(bench)
    expect(bench.next).toEqual({ pass: 2, fastener: null, cap: 'B1' })
    turn(bench, '2.6')
    expect(isRunDone(bench.procedure, bench.run)).toBe(true)
  })

  it('names the cap with the largest rise where the last reading alone is past the most', () => {
    const bench = started()
    const before = newtonMetres(3.3)
    const read = (typed: string) => {
      const command = { ...pull(bench.next!, [typed, 'N·m']), procedure: 'rods' }
      const decided = decideRun(bench.spec, bench.run, command, before)
      if (!decided.ok) throw new Error(sentenceOf(decided.problem))
      for (const event of decided.value) bench.run = evolveRun(bench.run, event)
    }
    tightensCap(bench)
    read('4.2')
    tightensCap(bench)
    read('5.1')
    const numbersNamed = (run: Run) =>
      openFlags(run).map((flag) => flagProblem(bench.spec, bench.procedure, run, flag).facts)
    expect(numbersNamed(bench.run!)).toMatchObject([{ cap: 'B1', lookAt: { cap: 'B2' } }])
    for (const fastener of ['c', 'd'])
      bench.does({ type: 'loosen-fastener', fastener, reason: '', cause: 'crank-stiff' })
    expect(openFlags(bench.run)).toEqual([])
    tightensCap(bench)
    turn(bench, '4')
    expect(bench.next).toEqual({ pass: 2, fastener: null, cap: 'B1' })
    turn(bench, '4.4')
    expect(isRunDone(bench.procedure, bench.run)).toBe(true)
  })

  it('can be read again, where it was misread', () => {
    const bench = jumped()
    bench.does({
      type: 'read-again',
      pull: 10,
      reading: { typed: '2.4', unit: 'N·m' },
      reason: 'looked at the wrong scale',
    })
    expect(bench.run!.pulls.at(-1)).toMatchObject({ verdict: 'within', reading: { value: 2.4 } })
    expect(bench.run!.pulls.at(-1)!.turning!.rise).toBeCloseTo(0.4, 9)
    expect(isRunDone(bench.procedure, bench.run)).toBe(true)
  })

  it('lets no cap be loosened for that reason where nothing turned too stiffly', () => {
    const bench = started()
    tightensCap(bench)
    expect(
      bench.refusal({ type: 'loosen-fastener', fastener: 'c', reason: '', cause: 'crank-stiff' }),
    ).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'fastener-loosened', fastener: 'R3' } },
    })
  })
})
