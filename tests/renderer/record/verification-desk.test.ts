import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import type { Verification } from '../../../core/contract/index.ts'
import { done, problem, refused } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { VerificationDesk } from '../../../renderer/record/verification-desk.svelte.ts'
import { verifiedText } from '../../../renderer/record/verified-text.ts'
import { lineOf, twin } from '../twin.ts'

const running = (builds: number): Verification => ({ state: 'running', build: null, builds, of: 14 })
const whole = {
  state: 'done',
  build: null,
  at: '2026-03-09T12:00:00.000Z',
  builds: 14,
  entries: 2310,
  head: '91c4e07f2b5d83aa',
  witnesses: 0,
  lists: false,
  breaks: [],
} as const satisfies Verification

/** A host that gets on by a step each time it is asked. */
function host(states: Verification[]) {
  const next = () => done(states.length > 1 ? states.shift()! : states[0]!)
  return twin({
    'verification.start': next,
    'verification.read': next,
    'verification.stop': () => done({ state: 'stopped', build: null }),
  })
}

describe('following a verification', () => {
  beforeEach(() => void vi.useFakeTimers())
  afterEach(() => void vi.useRealTimers())

  it('asks again while it runs, and no more once it is done', async () => {
    const { client, requests } = host([running(0), running(5), whole])
    const desk = new VerificationDesk(client)
    await desk.start(null)
    expect(desk.state).toEqual(running(0))
    await vi.advanceTimersByTimeAsync(500)
    expect(desk.state).toEqual(running(5))
    await vi.advanceTimersByTimeAsync(500)
    expect(desk.state).toEqual(whole)
    await vi.advanceTimersByTimeAsync(5000)
    expect(requests.map(({ name }) => name)).toEqual([
      'verification.start',
      'verification.read',
      'verification.read',
    ])
  })

  it('is stopped when asked, and then left alone', async () => {
    const { client, requests } = host([running(0)])
    const desk = new VerificationDesk(client)
    await desk.start(null)
    await desk.stop()
    expect(desk.state).toEqual({ state: 'stopped', build: null })
    await vi.advanceTimersByTimeAsync(5000)
    expect(requests).toHaveLength(2)
  })

  it('asks no more when the page is left; the host goes on', async () => {
    const { client, requests } = host([running(0)])
    const desk = new VerificationDesk(client)
    await desk.start(null)
    desk.leave()
    await vi.advanceTimersByTimeAsync(5000)
    expect(requests.map(({ name }) => name)).toEqual(['verification.start'])
  })

  it('keeps what it last saw where it is refused, with the reason', async () => {
    const { client } = twin({ 'verification.start': () => refused('build-unknown', {}, 'build') })
    const desk = new VerificationDesk(client)
    await desk.start(lineOf(1).id)
    expect(desk.problem?.code).toBe('build-unknown')
    expect(desk.state).toEqual({ state: 'none' })
  })
})

describe('what a verification found', () => {
  const broken = (place: number) => ({
    build: lineOf(place).id,
    number: lineOf(place).number,
    problem: problem('build-chain-broken', { entry: 31 }),
  })
  it.each([
    [whole, '✓ 14 builds with 2310 entries: each is as it was confirmed.'],
    [{ ...whole, build: lineOf(1).id, entries: 1 }, '✓ 1 entry: each is as it was confirmed.'],
    [
      { ...whole, witnesses: 9 },
      '✓ 14 builds with 2310 entries: each is as it was confirmed. 9 head codes that were given out still match.',
    ],
    [{ ...whole, breaks: [broken(1), broken(1)] }, '! 1 of 14 builds is not as confirmed.'],
    [{ ...whole, breaks: [broken(1), broken(2)] }, '! 2 of 14 builds are not as confirmed.'],
    [{ ...whole, build: lineOf(1).id, breaks: [broken(1)] }, '! This build is not as it was confirmed.'],
  ])('is one sentence: %#', (seen, sentence) => {
    expect(verifiedText(en, seen)).toBe(sentence)
  })
})
