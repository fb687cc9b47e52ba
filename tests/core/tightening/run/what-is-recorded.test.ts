import { describe, expect, it } from 'vitest'
import { heldWrench, runCommand, runEvent } from '../../../../core/tightening/index.ts'

const parses = (schema: { safeParse(value: unknown): { success: boolean } }, value: unknown) =>
  schema.safeParse(value).success

describe('a command', () => {
  const takeBack = (pull: number) => ({ type: 'take-back', procedure: 'caps', pull, reason: 'Wrong bolt' })
  const readAgain = (pull: number) => ({
    ...takeBack(pull),
    type: 'read-again',
    reading: { typed: '24', unit: 'N·m' },
  })
  const ownOrder = (length: number) => ({
    type: 'start-run',
    procedure: 'caps',
    own: { reason: 'Ladder in the way', orders: [{ order: 'all', typed: '1'.repeat(length) }] },
  })

  it('names a pull by its number, from 1 on', () => {
    expect([0, 1, 57, 1.5].map((pull) => parses(runCommand, takeBack(pull)))).toEqual([
      false,
      true,
      true,
      false,
    ])
    expect([0, 1, 57].map((pull) => parses(runCommand, readAgain(pull)))).toEqual([false, true, true])
  })

  it('has as long an order of its own as 2,000 numbers of three digits take', () => {
    expect([8000, 8001].map((length) => parses(runCommand, ownOrder(length)))).toEqual([true, false])
  })

  it('has the torque of a stretch as it was typed, in 40 characters at most', () => {
    const withTorque = (typed: string) => ({
      type: 'pull',
      procedure: 'caps',
      pass: 2,
      fastener: 'cap-1',
      reading: { typed: '80.1', unit: 'mm' },
      torque: { typed, unit: 'N·m' },
      outOfOrder: null,
    })
    const typed = ['65', '6'.repeat(40), '6'.repeat(41)]
    expect(typed.map((each) => parses(runCommand, withTorque(each)))).toEqual([true, true, false])
  })

  it('has a reading of 40 characters at most, and a reason of 600', () => {
    const read = (typed: number, reason: number) => ({
      ...readAgain(1),
      reading: { typed: '6'.repeat(typed), unit: 'N·m' },
      reason: 'x'.repeat(reason),
    })
    expect(parses(runCommand, read(40, 600))).toBe(true)
    expect(parses(runCommand, read(41, 600))).toBe(false)
    expect(parses(runCommand, read(40, 601))).toBe(false)
  })

  it('has as many orders of its own as a procedure has, twelve at most', () => {
    const own = (count: number) => ({
      ...ownOrder(1),
      own: {
        reason: 'Ladder in the way',
        orders: Array.from({ length: count }, () => ({ order: 'all', typed: '1' })),
      },
    })
    expect([0, 12, 13].map((count) => parses(runCommand, own(count)))).toEqual([true, true, false])
  })

  it('answers a flag by its number, from 1 on, and names a pass from 0 on', () => {
    const answer = (flag: number) => ({ type: 'answer-flag', procedure: 'caps', flag, answer: 'Set again' })
    expect([0, 1, 2].map((flag) => parses(runCommand, answer(flag)))).toEqual([false, true, true])
    const restart = (pass: number) => ({
      ...{ type: 'restart-run', procedure: 'caps', pass, reason: 'Broken off' },
    })
    expect([-1, 0, 1].map((pass) => parses(runCommand, restart(pass)))).toEqual([false, true, true])
    const pulled = (pass: number) => ({
      ...{ type: 'pull', procedure: 'caps', pass, fastener: 'cap-1', reading: null, outOfOrder: null },
    })
    expect([-1, 0, 1].map((pass) => parses(runCommand, pulled(pass)))).toEqual([false, true, true])
  })

  it('says that something was so by a yes, and by nothing where it was not', () => {
    const saidOf = (command: object, fact: string) =>
      [true, undefined, false].map((value) => parses(runCommand, { ...command, [fact]: value }))
    const restart = { type: 'restart-run', procedure: 'caps', pass: 0, reason: 'Broken off' }
    const pulled = { type: 'pull', procedure: 'caps', pass: 0, fastener: 'cap-1', reading: null }
    expect(saidOf(takeBack(1), 'notTurned')).toEqual([true, true, false])
    expect(saidOf(takeBack(1), 'mistyped')).toEqual([true, true, false])
    expect(saidOf(restart, 'measuredAgain')).toEqual([true, true, false])
    expect(saidOf(restart, 'jointOpened')).toEqual([true, true, false])
    expect(saidOf({ ...pulled, outOfOrder: null }, 'sure')).toEqual([true, true, false])
    expect(runCommand.parse({ ...pulled, outOfOrder: null })).toMatchObject({ moved: false })
  })

  it('has waited no time, or some', () => {
    const waited = (seconds: number) => ({
      type: 'pull',
      procedure: 'caps',
      pass: 0,
      fastener: null,
      reading: null,
      outOfOrder: null,
      waited: { seconds, shortened: null },
    })
    expect([-1, 0, 600].map((seconds) => parses(runCommand, waited(seconds)))).toEqual([false, true, true])
  })
})

describe('an event', () => {
  const pulled = {
    type: 'fastener-pulled',
    version: 1,
    procedure: 'caps',
    pull: 1,
    pass: 1,
    fastener: 'cap-1',
    reading: { typed: '24', value: 24, unit: 'N·m' },
    verdict: 'within',
    outOfOrder: null,
  }

  it('keeps how long was waited, and no time below none', () => {
    expect([-1, 0, 600].map((waited_s) => parses(runEvent, { ...pulled, waited_s }))).toEqual([
      false,
      true,
      true,
    ])
  })

  it('keeps a reason of 600 characters, and of one', () => {
    const because = (length: number) => parses(runEvent, { ...pulled, outOfOrder: 'x'.repeat(length) })
    expect([0, 1, 600, 601].map(because)).toEqual([false, true, true, false])
  })

  it('keeps a reading of nothing: a gap of 0 mm, and what an adapter makes of it', () => {
    const read = (value: number, atFastener: number) =>
      parses(runEvent, { ...pulled, reading: { typed: '0', value, unit: 'N·m', atFastener } })
    expect([read(0, 0), read(-1, 0), read(0, -1)]).toEqual([true, false, false])
    const typed = (length: number) =>
      parses(runEvent, { ...pulled, reading: { typed: '6'.repeat(length), value: 6, unit: 'N·m' } })
    expect([typed(40), typed(41)]).toEqual([true, false])
  })

  it('counts pulls and flags from 1 on and passes from 0 on', () => {
    const common = { version: 1, procedure: 'caps', reason: 'Broken off' }
    const takenBack = (pull: number) => ({ type: 'pull-taken-back', ...common, pull })
    const readAgain = (pull: number) => ({
      ...{ type: 'pull-read-again', ...common, pull },
      ...{ reading: pulled.reading, verdict: 'within' },
    })
    const noted = (pull: number | null) => ({
      ...{ type: 'problem-noted', version: 1, procedure: 'caps', pull, fastener: null, text: 'Rough' },
    })
    const answered = (flag: number) => ({
      ...{ type: 'flag-answered', version: 1, procedure: 'caps', flag, answer: 'Set again' },
    })
    for (const event of [takenBack, readAgain, noted, answered])
      expect([0, 1, 2].map((number) => parses(runEvent, event(number)))).toEqual([false, true, true])
    expect([0, 1].map((pull) => parses(runEvent, { ...pulled, pull }))).toEqual([false, true])
    expect(parses(runEvent, noted(null))).toBe(true)
    const restarted = (pass: number) => ({ type: 'run-restarted', ...common, pass })
    expect([-1, 0, 1].map((pass) => parses(runEvent, restarted(pass)))).toEqual([false, true, true])
    expect([-1, 0, 1].map((pass) => parses(runEvent, { ...pulled, pass }))).toEqual([false, true, true])
  })

  it('says that something was so by a yes, and by nothing where it was not', () => {
    const common = { version: 1, procedure: 'caps', reason: 'Broken off' }
    const takenBack = { type: 'pull-taken-back', ...common, pull: 1 }
    const restarted = { type: 'run-restarted', ...common, pass: 0 }
    for (const [event, fact] of [
      [takenBack, 'notTurned'],
      [takenBack, 'mistyped'],
      [restarted, 'measuredAgain'],
      [restarted, 'jointOpened'],
      [pulled, 'sure'],
    ] as const)
      expect([true, undefined, false].map((value) => parses(runEvent, { ...event, [fact]: value }))).toEqual([
        true,
        true,
        false,
      ])
  })

  it('has an order of a person’s own with a sequence in it, and beads that were over their time', () => {
    const started = (orders: readonly object[]) => ({
      ...{ type: 'run-started', version: 1, procedure: 'caps' },
      ownOrder: { reason: 'Ladder in the way', orders },
    })
    const order = (sequence: readonly string[]) => ({ order: 'all', sequence })
    expect(parses(runEvent, started([order(['cap-2'])]))).toBe(true)
    expect(parses(runEvent, started([order([])]))).toBe(false)
    expect(parses(runEvent, started([]))).toBe(false)
    const over = (beads: readonly string[]) => ({ ...pulled, overTime: { beads, reason: 'Still wet' } })
    expect([over(['rear']), over([])].map((event) => parses(runEvent, event))).toEqual([true, false])
  })

  it('has a turn that is continued from more than nothing', () => {
    expect([0, 0.5, 40].map((from_deg) => parses(runEvent, { ...pulled, from_deg }))).toEqual([
      false,
      true,
      true,
    ])
  })

  it('keeps why a run paused, or nothing, in 600 characters', () => {
    const paused = (length: number) => ({
      ...{ type: 'run-paused', version: 1, procedure: 'caps', reason: 'x'.repeat(length) },
    })
    expect([0, 600, 601].map((length) => parses(runEvent, paused(length)))).toEqual([true, true, false])
  })

  it('may be of the first pass, which is counted as 0', () => {
    const repeated = (pass: number) => ({ type: 'pass-repeated', version: 1, procedure: 'caps', pass })
    expect([-1, 0, 3].map((pass) => parses(runEvent, repeated(pass)))).toEqual([false, true, true])
  })

  it('has the version it was made by', () => {
    expect([1, 2].map((version) => parses(runEvent, { ...pulled, version }))).toEqual([true, false])
  })

  it('keeps how an adapter stood, from straight on to straight back', () => {
    const adapter = (angle_deg: number) => ({
      wrench: 'Click 100',
      length_nm: 304_800_000,
      adapter: { name: 'Crowfoot', offset_nm: 101_600_000, angle_deg },
    })
    expect([-1, 0, 90, 180, 181].map((angle) => parses(heldWrench, adapter(angle)))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ])
  })
})
