import { describe, expect, it } from 'vitest'
import type { ReadingField } from '../../../renderer/instruments/reading-field.svelte.ts'
import { PullConfirmation } from '../../../renderer/steps/run/pull-confirmation.ts'
import type { RunDesk } from '../../../renderer/steps/run/run-desk.svelte.ts'

/** A desk at a pull that notes what it is asked for, and records it or not, as `takes` says. */
function bench() {
  const sent: object[] = []
  const questions: unknown[] = []
  const bench = { sent, questions, takes: false, confirmation: null as unknown as PullConfirmation }
  const desk = {
    task: { kind: 'pull', next: { pass: 0, fastener: 'bolt-1' }, window: null, pass: { kind: 'recheck' } },
    torqueTyped: '',
    running: { typedFor: () => ({}) },
    ask: (question: unknown) => questions.push(question),
    pull: (
      _next: unknown,
      _reading: unknown,
      moved: boolean,
      _order: unknown,
      _held: unknown,
      more: object,
    ) => {
      sent.push({ moved, ...more })
      return Promise.resolve(bench.takes)
    },
  }
  const field = { typed: '', clear: () => undefined }
  const input = { units: { torque: 'N·m', length: 'mm' }, typed: '', heldWrench: null, waited: null }
  bench.confirmation = new PullConfirmation(
    desk as unknown as RunDesk,
    field as unknown as ReadingField,
    () => input as never,
  )
  return bench
}

describe('the confirmation of a pull', () => {
  it('keeps what was answered while one question follows another', async () => {
    const { confirmation, sent } = bench()
    confirmation.ask('over-time', { moved: true })
    await confirmation.answer({ overTime: 'Still wet' })
    await confirmation.answer({ sure: true })
    expect(sent).toEqual([
      { moved: true, overTime: 'Still wet' },
      { moved: true, overTime: 'Still wet', sure: true },
    ])
  })

  it('forgets it once the pull is recorded', async () => {
    const at = bench()
    at.takes = true
    await at.confirmation.answer({ overTime: 'Still wet' })
    await at.confirmation.answer({ sure: true })
    expect(at.sent).toEqual([
      { moved: false, overTime: 'Still wet' },
      { moved: false, sure: true },
    ])
  })

  it('forgets it where the question is opened again, so that what was cancelled is not recorded', async () => {
    const { confirmation, sent, questions } = bench()
    confirmation.ask('over-time', { moved: true })
    confirmation.ask('over-time')
    await confirmation.answer({ overTime: 'Still wet' })
    await confirmation.confirm()
    expect(questions).toEqual(['over-time', 'over-time'])
    expect(sent).toEqual([{ moved: false, overTime: 'Still wet' }, { moved: false }])
  })
})
