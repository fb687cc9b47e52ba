import { describe, expect, it } from 'vitest'
import { audit } from '../../../core/audit/index.ts'
import { auditProblems } from '../../../core/words/index.ts'
import { demoDraft, specOf } from '../engine/demo.ts'
import { oneWrongInBearings } from './one-wrong-in-bearings.ts'
import { oneWrongInTheCase } from './one-wrong-in-the-case.ts'
import { oneWrongInRings } from './one-wrong-in-rings.ts'
import { oneWrongInTightening } from './one-wrong-in-tightening.ts'
import type { OneWrong } from './one-wrong.ts'

const oneWrong: Readonly<Record<string, OneWrong>> = {
  ...oneWrongInTheCase,
  ...oneWrongInBearings,
  ...oneWrongInTightening,
  ...oneWrongInRings,
}

/** The codes of all that is said of a demo after one change, each once. */
function codesAfter([demo, change]: OneWrong): readonly string[] {
  const draft = demoDraft(demo)
  change(draft)
  return [...new Set(audit(specOf(draft)).map(({ problem }) => problem.code))]
}

/** What cannot be calculated is told by the sentences of the joint. */
const ofTheJoint = ['thread-pitch-out-of-range', 'property-class-unknown', 'bearing-face-out-of-range']

describe('a spec with one thing wrong', () => {
  it('is there for everything that the audit can say', () => {
    const codes = Object.keys(auditProblems)
    expect(Object.keys(oneWrong).toSorted()).toEqual([...codes, ...ofTheJoint].toSorted())
  })

  it.each(Object.entries(oneWrong))('gets that said, and nothing else: %s', (code, wrong) => {
    expect(codesAfter(wrong)).toEqual([code])
  })
})
