import { describe, expect, it } from 'vitest'
import { en } from '../../../../core/words/index.ts'
import { isRunDone, passText } from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'
import { capsBy } from '../stretch-engine.ts'

const waiting = () => {
  const bench = Bench.started(
    'own',
    capsBy([
      { kind: 'torque', target: '20 N·m' },
      { kind: 'action', instruction: 'Let the gasket settle.', waitMinutes: 5 },
      { kind: 'torque', target: '30 N·m' },
    ]),
  )
  bench.pullsNext(3)
  return bench
}
const wait = (seconds: number, shortened: string | null = null) =>
  pull({ pass: 1, fastener: null }, null, { waited: { seconds, shortened } })

describe('a wait of 5 minutes between two passes', () => {
  it('is over after 300 s', () => {
    const bench = waiting()
    bench.does(wait(300))
    expect(bench.events.at(-1)).toMatchObject({ type: 'fastener-pulled', waited_s: 300 })
    expect(bench.events.at(-1)).not.toHaveProperty('waitShortened')
    expect(bench.next?.pass).toBe(2)
  })

  it('is not shortened without a reason', () => {
    const bench = waiting()
    expect(bench.refusal(wait(299))).toMatchObject({
      code: 'wait-not-over',
      facts: { minutes: 5, seconds: 1 },
    })
    expect(bench.refuses(wait(55))).toContain('4:05 are left')
    // Half a second is not none: what is left is never said to be less than it is.
    expect(bench.refuses(wait(298.5))).toContain('0:02 are left')
    expect(bench.refuses(pull({ pass: 1, fastener: null }))).toContain('5:00 are left')
    expect(bench.refusal(wait(200, '  '))).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'wait-shortened' } },
    })
  })

  it('is recorded as shortened, with the reason', () => {
    const bench = waiting()
    bench.does(wait(120, 'Gasket is of metal'))
    expect(bench.events.at(-1)).toMatchObject({ waited_s: 120, waitShortened: 'Gasket is of metal' })
    bench.pullsNext(3)
    expect(isRunDone(bench.procedure, bench.run)).toBe(true)
  })

  it('stands in the list of passes', () => {
    const { spec, procedure } = waiting()
    expect(passText(en, spec, procedure.passes[1]!, { torque: 'N·m', length: 'mm' })).toBe(
      'Let the gasket settle. Wait 5 min.',
    )
  })

  it('is no part of a pull that waits for nothing', () => {
    const bench = waiting()
    bench.does(wait(300))
    bench.does(pull({ pass: 2, fastener: 'cap-1' }, null, { waited: { seconds: 9, shortened: null } }))
    expect(bench.events.at(-1)).not.toHaveProperty('waited_s')
  })
})
