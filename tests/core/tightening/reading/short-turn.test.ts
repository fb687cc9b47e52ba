import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../../core/problem/index.ts'
import {
  evolveRun,
  flagProblem,
  isRunDone,
  nextPull,
  runProgress,
  windowNow,
} from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'

/** The rod bolts, 15 N·m and then 60° (57 to 63), with R1 turned so far. */
function turned(by: string): Bench {
  const rods = Bench.started('rods')
  rods.pullsToTarget()
  rods.pullsToTarget()
  rods.does(pull(rods.next!, [by, '°']))
  return rods
}

const flagText = (bench: Bench) =>
  sentenceOf(flagProblem(bench.spec, bench.procedure, bench.run!, bench.run!.flags.at(-1)!))

describe('a turn that came short', () => {
  it('is turned on by what is left, from where it stands', () => {
    const rods = turned('40')
    expect(flagText(rods)).toBe(
      'Fastener R1: turned 40°, allowed 57 to 63: too little. Leave it where it stands and turn it on by 20° (17° to 23°).',
    )
    expect(rods.next).toEqual({ pass: 1, fastener: 'rod-1' })
    expect(windowNow(rods.procedure, rods.run, rods.next!)).toMatchObject({ target: 20, least: 17, most: 23 })
  })

  it('has all of it left before anything is pulled, and without a run', () => {
    const rods = Bench.started('rods')
    const turn = { pass: 1, fastener: 'rod-1' }
    expect(windowNow(rods.procedure, rods.run, turn)).toMatchObject({ target: 60, least: 57, most: 63 })
    expect(windowNow(rods.procedure, undefined, turn)).toMatchObject({ target: 60, least: 57, most: 63 })
  })

  it('is done when both together are within, and the sum is what is judged', () => {
    const rods = turned('40')
    expect(rods.does(pull(rods.next!, ['20', '°']))).toMatchObject([
      { type: 'fastener-pulled', from_deg: 40, verdict: 'within' },
      { type: 'flag-answered', flag: 1 },
    ])
    expect(rods.next).toEqual({ pass: 1, fastener: 'rod-2' })
    rods.pullsToTarget()
    expect(isRunDone(rods.procedure, rods.run)).toBe(true)
  })

  it('goes past its upper limit where the whole turn is made once more, and is replaced', () => {
    const rods = turned('40')
    rods.does(pull(rods.next!, ['60', '°']))
    expect(rods.run!.flags.at(-1)).toMatchObject({ about: 'over', answer: null })
    expect(flagText(rods)).toContain('100° in all, allowed 57 to 63: too much')
    expect(flagText(rods)).toContain('fit a new one')
  })

  it('counts in all from a single degree on', () => {
    const rods = turned('1')
    rods.does(pull(rods.next!, ['70', '°']))
    expect(flagText(rods)).toContain('71° in all, allowed 57 to 63')
  })

  it('may come short again, and is turned on from there', () => {
    const rods = turned('20')
    rods.does(pull(rods.next!, ['20', '°']))
    expect(windowNow(rods.procedure, rods.run, rods.next!)).toMatchObject({ target: 20 })
    rods.does(pull(rods.next!, ['21', '°']))
    expect(rods.run!.flags.map(({ answer }) => answer)).toEqual([
      { deed: 'turned-on' },
      { deed: 'turned-on' },
    ])
    expect(rods.next).toEqual({ pass: 1, fastener: 'rod-2' })
  })

  it('is not yet done on the drawing and in the progress', () => {
    const rods = turned('40')
    expect(runProgress(rods.procedure, rods.run)[1]).toMatchObject({ pulled: 0, planned: 2 })
  })

  it('is not answered in words: only turning on, or reading again, settles it', () => {
    const rods = turned('40')
    expect(rods.refusal({ type: 'answer-flag', flag: 1, answer: 'Read again: it was right' })).toMatchObject({
      code: 'turn-on-first',
      facts: { fastener: 'R1' },
    })
  })

  it('that was read wrong is read again, and both readings stay', () => {
    const rods = turned('6')
    rods.does({
      type: 'read-again',
      pull: 3,
      reading: { typed: '60', unit: '°' },
      reason: 'A digit was lost',
    })
    expect(rods.run!.pulls[2]).toMatchObject({ verdict: 'within', reading: { value: 60 } })
    expect(rods.next).toEqual({ pass: 1, fastener: 'rod-2' })
    expect(
      rods.events.filter(({ type }) => type === 'fastener-pulled' || type === 'pull-read-again').slice(-2),
    ).toMatchObject([{ reading: { typed: '6' } }, { reading: { typed: '60' } }])
  })

  it('waits for its fastener’s turn where another was pulled before it', () => {
    const rods = turned('40')
    rods.does(pull({ pass: 1, fastener: 'rod-2' }, ['60', '°'], { outOfOrder: 'It stands in the way' }))
    expect(nextPull(rods.procedure, rods.run)).toEqual({ pass: 1, fastener: 'rod-1' })
    rods.does(pull({ pass: 1, fastener: 'rod-1' }, ['20', '°']))
    expect(isRunDone(rods.procedure, rods.run)).toBe(true)
  })
})

describe('a short turn in a record of an earlier version', () => {
  it('is done where a person answered for it in words', () => {
    const rods = turned('40')
    const answered = { type: 'flag-answered', version: 1, procedure: 'rods', flag: 1 } as const
    rods.run = evolveRun(rods.run, { ...answered, answer: 'Turned on by hand, 60° in all' })
    expect(rods.next).toEqual({ pass: 1, fastener: 'rod-2' })
    rods.pullsToTarget()
    expect(isRunDone(rods.procedure, rods.run)).toBe(true)
  })
})

describe('a turn that is taken back', () => {
  it('is refused: what was turned stays turned', () => {
    const rods = turned('60')
    expect(rods.refusal({ type: 'take-back', pull: 3, reason: 'Wrong wrench setting' })).toMatchObject({
      code: 'turn-not-taken-back',
      facts: { fastener: 'R1' },
    })
  })

  it('is taken back where it was only confirmed and not turned, and then all of it is asked for', () => {
    const rods = Bench.started('rods')
    for (let made = 0; made < 3; made++) rods.pullsNext()
    rods.does({ type: 'take-back', pull: 3, notTurned: true, reason: 'Pressed too early' })
    expect(rods.events.at(-1)).toMatchObject({ type: 'pull-taken-back', notTurned: true })
    expect(windowNow(rods.procedure, rods.run, rods.next!)).toMatchObject({ target: 60 })
  })

  it('that was turned on and then not turned after all leaves what was turned before', () => {
    const rods = turned('40')
    rods.does(pull(rods.next!))
    expect(rods.next).toEqual({ pass: 1, fastener: 'rod-2' })
    rods.does({ type: 'take-back', pull: 4, notTurned: true, reason: 'Pressed too early' })
    expect(rods.next).toEqual({ pass: 1, fastener: 'rod-1' })
    expect(windowNow(rods.procedure, rods.run, rods.next!)).toMatchObject({ target: 20, most: 23 })
  })

  it('says nothing of turning where a torque is taken back', () => {
    const rods = Bench.started('rods')
    rods.pullsNext()
    rods.does({ type: 'take-back', pull: 1, notTurned: true, reason: 'Handle slipped' })
    expect(rods.events.at(-1)).not.toHaveProperty('notTurned')
  })
})

describe('a single-use bolt that is loosened', () => {
  it('is replaced before it is pulled again, though it never went past its upper limit', () => {
    const rods = turned('60')
    rods.does({ type: 'loosen-fastener', fastener: 'rod-1', reason: 'Not sure of its turn' })
    expect(rods.refusal(pull(rods.next!, ['15', 'N·m']))).toMatchObject({
      code: 'used-once-already',
      facts: { fastener: 'R1' },
    })
    rods.does({ type: 'replace-fastener', fastener: 'rod-1' })
    rods.pullsToTarget()
    expect(rods.run!.pulls.at(-1)).toMatchObject({ pass: 0, verdict: 'within' })
  })

  it('goes on as it is where it may be used again', () => {
    const caps = Bench.started('caps')
    caps.pullsNext(5)
    caps.does({ type: 'loosen-fastener', fastener: 'cap-1', reason: 'Not sure of its pulls' })
    caps.pullsNext()
    expect(caps.run!.pulls.at(-1)).toMatchObject({ pass: 0, fastener: 'cap-1' })
  })
})
