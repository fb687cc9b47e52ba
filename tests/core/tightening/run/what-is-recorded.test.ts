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
