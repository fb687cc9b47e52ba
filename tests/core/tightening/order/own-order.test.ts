import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  asRun,
  fastenerStates,
  numbersOf,
  plannedPulls,
  readOrder,
  runProgress,
  type RunCommand,
} from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'
import { winchEngine } from '../winch-engine.ts'
import { checkProperty } from '../../../property.ts'

const caps = winchEngine.procedures.find(({ id }) => id === 'caps')!
const order = caps.orders[0]!
const numbers = numbersOf(winchEngine, order.sequence)
const backwards = numbers.toReversed().join(' ')

function own(typed: string, reason = 'The hoist is in the way at the nose') {
  return { type: 'start-run', own: { reason, orders: [{ order: order.id, typed }] } } satisfies Omit<
    RunCommand & { type: 'start-run' },
    'procedure'
  >
}

describe('an order of a person’s own', () => {
  it('is recorded with its reason, and the run goes through it in every pass', () => {
    const bench = new Bench()
    const back = order.sequence.toReversed()
    expect(bench.does(own(backwards))).toEqual([
      {
        type: 'run-started',
        version: 1,
        procedure: 'caps',
        ownOrder: {
          reason: 'The hoist is in the way at the nose',
          orders: [{ order: order.id, sequence: back }],
        },
      },
    ])
    for (const { id } of bench.singleUseGroups()) bench.does({ type: 'declare-new', group: id })
    const pulled: (string | null)[] = []
    for (let made = 0; made < 8; made++) {
      pulled.push(bench.next!.fastener)
      bench.pullsNext()
    }
    expect(pulled).toEqual([...back, ...back])
    expect(runProgress(caps, bench.run)[1]!.fasteners.map(({ fastener }) => fastener)).toEqual(back)
  })

  it('is one of its own where only two have changed places', () => {
    const [a, b, c, d] = numbers
    expect(new Bench().does(own(`${a} ${b} ${d} ${c}`))[0]).toHaveProperty('ownOrder')
  })

  it('makes the first of the spec’s order wait its turn', () => {
    const bench = new Bench()
    bench.does(own(backwards))
    for (const { id } of bench.singleUseGroups()) bench.does({ type: 'declare-new', group: id })
    expect(bench.refuses(pull({ pass: 0, fastener: order.sequence[0]! }))).toContain('is not next')
    expect(fastenerStates(caps, bench.run).get(order.sequence.at(-1)!)?.state).toBe('next')
  })

  it('that is the spec’s after all is no deviation, and asks for no reason', () => {
    const bench = new Bench()
    expect(bench.does(own(numbers.join(', '), ''))).toEqual([
      { type: 'run-started', version: 1, procedure: 'caps' },
    ])
  })

  it('wants a reason', () => {
    expect(new Bench().refusal(own(backwards, ' '))).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'own-order' } },
    })
  })

  it('with a fastener missing, twice, or of another joint is refused in a sentence', () => {
    const bench = new Bench()
    const [a, b, c] = numbers
    expect(bench.refuses(own(`${a} ${b} ${c}`))).toBe(
      `Not in the order yet: ${numbers[3]}. Each fastener is pulled once in a pass.`,
    )
    expect(bench.refuses(own(`${a} ${b} ${a}`))).toBe(
      `Fastener ${a} stands in the order twice. Each is pulled once in a pass: take one of the two out.`,
    )
    expect(bench.refuses(own(`${a} 99`))).toBe(
      `No fastener “99” is in this order. Those in it are ${numbers.join(', ')}.`,
    )
    expect(
      bench.refusal({
        type: 'start-run',
        own: { reason: 'Nose first', orders: [{ order: 'x', typed: '1' }] },
      }),
    ).toMatchObject({ code: 'order-unknown', facts: { order: 'x', name: 'Main caps' } })
    expect(bench.run).toBeUndefined()
  })

  it('reads back whatever order it writes, with commas, semicolons or blanks', () => {
    checkProperty(
      fc.property(
        fc.shuffledSubarray([...order.sequence], { minLength: order.sequence.length }),
        fc.constantFrom(' ', ', ', ';', '\n'),
        (sequence, between) => {
          const typed = numbersOf(winchEngine, sequence).join(between)
          expect(readOrder(winchEngine, order, typed)).toEqual({ ok: true, value: sequence })
        },
      ),
    )
  })

  it('asks for the same pulls as the spec’s, in another sequence', () => {
    const bench = new Bench()
    bench.does(own(backwards))
    const key = ({ pass, fastener }: { pass: number; fastener: string | null }) => `${pass} ${fastener}`
    expect(plannedPulls(asRun(caps, bench.run)).map(key).toSorted()).toEqual(
      plannedPulls(caps).map(key).toSorted(),
    )
    expect(asRun(caps, bench.run)).toBe(asRun(caps, bench.run))
  })
})
