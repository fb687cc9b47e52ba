import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../core/problem/index.ts'
import { torqueIn } from '../../core/quantity/index.ts'
import { audit } from '../../core/audit/index.ts'
import { setA, setB, setC, setD } from './tightening-sets.ts'

const sets = { A: setA(), B: setB(), C: setC(), D: setD() }

describe.each(Object.entries(sets))('published tightening set %s', (_, { spec }) => {
  it('is a spec that the audit has nothing against', () => {
    expect(audit(spec).map(({ problem }) => sentenceOf(problem))).toEqual([])
  })
})

describe('values as printed', () => {
  const printed = (set: keyof typeof sets) =>
    sets[set].spec.procedures.flatMap(({ passes }) =>
      passes.flatMap((pass): (string | number)[] => {
        switch (pass.kind) {
          case 'torque':
            return [pass.target, ...pass.others.map(({ target }) => target)].map((each) =>
              Number(torqueIn(each, 'lbf·ft').toFixed(9)),
            )
          case 'angle':
            return [`${pass.target}°`]
          default:
            return [pass.kind]
        }
      }),
    )

  it('TM 9-2815-237-34, para 2-41', () => {
    expect(printed('A')).toEqual([12, 'action', 40, 110, 100, 'action'])
  })

  it('TM 5-3825-226-24', () => {
    expect(printed('B')).toEqual([30, 'action', '120°'])
  })

  it('TM 5-3805-258-24-2', () => {
    expect(printed('C')).toEqual([30, 'action', '90°'])
  })

  it('TM 5-3810-295-34', () => {
    expect(printed('D')).toEqual([155, 345, 'loosen', 87.5, 175, '30°', '30°'])
  })
})
