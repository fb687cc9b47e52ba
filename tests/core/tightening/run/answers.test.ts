import { describe, expect, it } from 'vitest'
import {
  answerText,
  liftedAnswer,
  liftedReason,
  reasonOf,
  runEvent,
} from '../../../../core/tightening/index.ts'
import { en } from '../../../../core/words/index.ts'

const answered = { type: 'flag-answered', version: 1, procedure: 'case', flag: 1 } as const

describe('what was done about a flag', () => {
  it('is a deed in the entry, not a sentence of the program', () => {
    expect(runEvent.safeParse({ ...answered, deed: 'turned-on' }).success).toBe(true)
    expect(answerText(en, { deed: 'turned-on' })).toBe('Turned on from where it stood.')
  })

  it('is what a person typed, where one did', () => {
    const typed = { ...answered, answer: 'Pulled on to 24.' }
    expect(runEvent.safeParse(typed).success).toBe(true)
    expect(liftedAnswer(typed)).toBe(typed)
    expect(answerText(en, typed.answer)).toBe('Pulled on to 24.')
  })

  it.each([
    ['Loosened, and begun again from its first pass.', 'begun-again'],
    ['Turned on from where it stood.', 'turned-on'],
    ['The pass is gone through again until none moves.', 'pass-repeated'],
  ] as const)('is lifted from the sentence of an earlier version: %s', (answer, deed) => {
    const old = { ...answered, answer }
    expect(runEvent.safeParse(old).success).toBe(true)
    expect(liftedAnswer(old)).toEqual({ ...answered, deed })
  })
})

const restarted = { type: 'run-restarted', version: 1, procedure: 'case', pass: 0 } as const

describe('why a run was begun again', () => {
  it('is a cause in the entry where the gap was out of its limits', () => {
    const event = { ...restarted, measuredAgain: true, cause: 'gap-out' } as const
    expect(runEvent.safeParse(event).success).toBe(true)
    expect(answerText(en, reasonOf(event))).toBe('The gap was out of its limits')
  })

  it('is lifted from the sentence of an earlier version', () => {
    const old = { ...restarted, measuredAgain: true, reason: 'The gap was out of its limits' } as const
    expect(runEvent.safeParse(old).success).toBe(true)
    expect(liftedReason(old)).toEqual({ ...restarted, measuredAgain: true, cause: 'gap-out' })
  })

  it('stays what a person typed, though it be the same words', () => {
    const typed = { ...restarted, reason: 'The gap was out of its limits' }
    expect(liftedReason(typed)).toBe(typed)
  })
})
