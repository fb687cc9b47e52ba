import { describe, expect, it } from 'vitest'
import { flagProblem } from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'
import { capsBy } from '../stretch-engine.ts'
import { measuredEngine } from '../measured-engine.ts'

const start = () => Bench.started('measured', measuredEngine)

/** The bench with every length noted as 80 mm, up to the pass before `pass`. */
function at(pass: number): Bench {
  const bench = start()
  while (bench.next!.pass < pass) {
    const kind = bench.procedure.passes[bench.next!.pass]!.kind
    const gap = kind === 'seat' && bench.next!.fastener === null
    const typed = { length: '80', stretch: '80.12', action: '0.15' }[kind as string] ?? (gap ? '0.03' : null)
    bench.does(pull(bench.next!, typed === null ? null : [typed, 'mm']))
  }
  return bench
}

describe('the gap of a joint face', () => {
  it('is measured once all are seated, before the first torque', () => {
    const bench = at(1)
    bench.pullsNext(3)
    expect(bench.next).toEqual({ pass: 1, fastener: null })
  })

  it.each([
    ['0', 'within'],
    ['0.05', 'within'],
    ['0.051', 'over'],
  ])('of %s mm is %s: at most 0.05 mm', (typed, verdict) => {
    const bench = at(1)
    bench.pullsNext(3)
    bench.does(pull(bench.next!, [typed, 'mm']))
    expect(bench.run?.pulls.at(-1)?.verdict).toBe(verdict)
  })

  it('is not confirmed without a reading, nor with a torque', () => {
    const bench = at(1)
    bench.pullsNext(3)
    expect(bench.refusal(pull(bench.next!))).toMatchObject({
      code: 'reading-missing',
      facts: { fastener: null },
    })
    expect(bench.refusal(pull(bench.next!, ['0.03', 'N·m']))).toMatchObject({
      code: 'reading-of-other-kind',
      facts: { wanted: 'length', unit: 'N·m' },
    })
  })
})

describe('a gap out of its limits', () => {
  it('is measured again with the cause in the entry, and its flag answered by that', () => {
    const bench = at(1)
    bench.pullsNext(3)
    bench.does(pull(bench.next!, ['0.08', 'mm']))
    const [event] = bench.does({ type: 'restart-run', pass: 1, measuredAgain: true, reason: '' })
    expect(event).toMatchObject({ type: 'run-restarted', measuredAgain: true, cause: 'gap-out' })
    expect(bench.run!.flags.map(({ answer }) => answer)).toEqual([{ cause: 'gap-out' }])
    expect(bench.refuses({ type: 'restart-run', pass: 0, reason: '' })).toContain('Say why')
  })
})

describe('stretch', () => {
  it('is the length now less the length before: 80.12 − 80.00 mm', () => {
    const bench = at(3)
    bench.does(pull(bench.next!, ['80.12', 'mm']))
    expect(bench.run?.pulls.at(-1)).toMatchObject({ stretch: 120_000, verdict: 'within' })
  })

  it.each([
    ['80.099', 'under'],
    ['80.1', 'within'],
    ['80.15', 'within'],
    ['80.151', 'over'],
    // 80 mm is 3.1496 in.
    ['3.1543 in', 'within'],
  ])('to %s mm is %s: 0.10 to 0.15 mm longer', (typed, verdict) => {
    const bench = at(3)
    bench.does(pull(bench.next!, [typed, 'mm']))
    expect(bench.run?.pulls.at(-1)?.verdict).toBe(verdict)
  })
})

describe('the length before', () => {
  it('is the fastener’s own: three studs that are not alike each grow from their own length', () => {
    const bench = start()
    const lengths = { 'cap-1': '80', 'cap-2': '80.3', 'cap-3': '80.1' }
    for (const [fastener, typed] of Object.entries(lengths))
      bench.does(pull({ pass: 0, fastener }, [typed, 'mm']))
    bench.pullsNext(3)
    bench.does(pull(bench.next!, ['0.03', 'mm']))
    bench.pullsNext(3)
    for (const typed of ['80.12', '80.43', '80.2']) bench.does(pull(bench.next!, [typed, 'mm']))
    expect(bench.run!.pulls.slice(-3).map(({ stretch }) => stretch)).toEqual([120_000, 130_000, 100_000])
  })

  it('is the last one that was measured, where it is measured twice', () => {
    const passes = [
      { kind: 'length' },
      { kind: 'torque', target: '10 N·m' },
      { kind: 'length' },
      { kind: 'stretch', least: '0.10 mm', most: '0.15 mm' },
    ]
    const bench = Bench.started('own', capsBy(passes))
    for (const fastener of ['cap-1', 'cap-2', 'cap-3']) bench.does(pull({ pass: 0, fastener }, ['80', 'mm']))
    bench.pullsNext(3)
    for (const fastener of ['cap-1', 'cap-2', 'cap-3'])
      bench.does(pull({ pass: 2, fastener }, ['80.05', 'mm']))
    bench.does(pull(bench.next!, ['80.16', 'mm']))
    expect(bench.run!.pulls.at(-1)).toMatchObject({ stretch: 110_000, verdict: 'within' })
  })
})

describe('a length that is too little', () => {
  it('is read again or explained: nothing is pulled to it', () => {
    const bench = at(3)
    bench.does(pull(bench.next!, ['80.05', 'mm']))
    const { spec, procedure, run } = bench
    expect(flagProblem(spec, procedure, run!, run!.flags[0]!)).toMatchObject({
      code: 'length-under',
      facts: {
        fastener: '1',
        read: {
          code: 'reading',
          facts: {
            onScale: { amount: 0.05, decimals: 3, isShort: false, unit: 'mm' },
            atFastener: null,
            clamping: null,
          },
        },
        limits: {
          from: { amount: 0.1, decimals: 3, isShort: false, unit: 'mm' },
          upTo: { amount: 0.15, decimals: 3, isShort: false, unit: 'mm' },
        },
        otherUnit: null,
      },
    })
  })
})

describe('an action with a reading', () => {
  it.each([
    ['0.0039', 'under'],
    ['0.004', 'within'],
    ['0.010', 'within'],
    ['0.0101', 'over'],
  ])('of %s in is %s: an end float of 0.004 to 0.010 in (TM 9-2815-237-34, para 2-41)', (typed, verdict) => {
    const bench = at(4)
    bench.does(pull(bench.next!, [typed, 'in']))
    expect(bench.run?.pulls.at(-1)?.verdict).toBe(verdict)
  })
})

describe('a recheck until none moves', () => {
  it('is of the named fasteners only', () => {
    const bench = at(5)
    expect(bench.next?.fastener).toBe('cap-1')
    bench.pullsNext()
    expect(bench.next?.fastener).toBe('cap-3')
  })

  it('goes on where none moved', () => {
    const bench = at(5)
    bench.pullsNext(2)
    expect(bench.next?.pass).toBe(6)
  })

  it('begins again after the last one where one moved, and asks nothing of the person', () => {
    const bench = at(5)
    bench.does(pull(bench.next!, null, { moved: true }))
    expect(bench.run?.flags.map(({ answer }) => answer)).toEqual([{ deed: 'pass-repeated' }])
    expect(bench.next).toEqual({ pass: 5, fastener: 'cap-3' })
    expect(bench.does(pull(bench.next!)).map(({ type }) => type)).toEqual([
      'fastener-pulled',
      'pass-repeated',
    ])
    expect(bench.next).toEqual({ pass: 5, fastener: 'cap-1' })
    bench.pullsNext(2)
    expect(bench.next?.pass).toBe(6)
    expect(bench.run?.flags.map(({ about, answer }) => [about, answer])).toEqual([
      ['moved', { deed: 'pass-repeated' }],
    ])
  })
})

describe('loosening in reverse', () => {
  it('goes from the last fastener of the order to the first', () => {
    const bench = at(6)
    const loosened: (string | null)[] = []
    while (bench.next !== null) {
      loosened.push(bench.next.fastener)
      bench.pullsNext()
    }
    expect(loosened).toEqual(['cap-3', 'cap-2', 'cap-1'])
  })
})
