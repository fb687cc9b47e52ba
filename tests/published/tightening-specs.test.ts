import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../core/problem/index.ts'
import { audit } from '../../core/audit/index.ts'
import { setA, setB, setC, setD, setE, setH, setJ } from './tightening-sets.ts'

const sets = { A: setA(), B: setB(), C: setC(), D: setD(), E: setE(), H: setH(), J: setJ() }

describe.each(Object.entries(sets))('published tightening set %s', (_, { spec }) => {
  // A set says how to tighten, and nothing of the shells.
  it('is a spec that the audit has nothing against, but that it names no shells', () => {
    const others = audit(spec).filter(({ problem }) => problem.code !== 'bearings-without-fit')
    expect(others.map(({ problem }) => sentenceOf(problem))).toEqual([])
  })
})
