import { describe, expect, it } from 'vitest'
import { replay, type RecordedEvent } from '../../../core/builds/index.ts'
import { finishedSample, halfWaySample } from '../../../core/practice/index.ts'
import { nextPull } from '../../../core/tightening/index.ts'
import { en } from '../../../core/words/index.ts'
import { demoEngine, shippedEngine } from '../builds/workshop.ts'

const at = '2026-11-28T08:00:00.000Z'

describe('the demo builds that an empty bench is offered, on the engines that ship', () => {
  it.each([
    ['as it ships', shippedEngine('skerry-3')],
    ['with a short plan', demoEngine('skerry-3')],
  ])('the half-way one, %s: two of six rod bolts turned, a problem answered', (_, spec) => {
    const made = halfWaySample(en, spec, '0'.repeat(64), at)
    if (!made.ok) throw new Error(made.problem.code)
    const entries = made.value.map(({ person, event }, index): RecordedEvent => ({
      ...{ seq: index + 1, at, person, event, hash: '0'.repeat(64) },
    }))
    const state = replay(entries)
    const rods = spec.procedures.find(({ id }) => id === 'rods')!
    expect(nextPull(rods, state.runs['rods'])).toEqual({ pass: 2, fastener: 'rod-3' })
    expect(state.runs['rods']!.flags).toHaveLength(1)
    expect(state.runs['rods']!.flags[0]!.answer).not.toBeNull()
  })

  it('the finished one comes to its end', () => {
    const made = finishedSample(en, shippedEngine('tarn-4'), '0'.repeat(64), at)
    expect(made.ok && made.value.at(-1)?.event.type).toBe('build-finished')
  })

  it('neither is made of an engine without their parts', () => {
    expect(halfWaySample(en, shippedEngine('fen-1'), '0'.repeat(64), at).ok).toBe(false)
    expect(finishedSample(en, shippedEngine('fen-1'), '0'.repeat(64), at).ok).toBe(false)
  })
})
