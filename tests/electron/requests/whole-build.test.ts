import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { currentStep, evolve, isStepDone, replay } from '../../../core/builds/index.ts'
import { readSpec, type StepKind } from '../../../core/engine/index.ts'
import { firstBroken } from '../../../electron/store/index.ts'
import { folder, store } from '../bench.ts'
import { nextCommand } from '../mechanic.ts'
import { asking, engines } from './asking.ts'

/** The kinds of step whose end was sent twice. */
const kindsDoneTwice = new Set<StepKind>()

describe('a whole build, asked for step by step', () => {
  it.each(engines.map(({ id }) => id))(
    'of %s is finished, with every entry on disk and the chain whole',
    async (engine) => {
      const record = await store(folder())
      const { get, act, bugs } = asking(record)
      await get('people.keep', { id: null, name: 'Berit', role: 'mechanic', by: null })
      const opened = await get('builds.start', { engine, name: 'Pump', serial: 'P-7', person: 'Ana Ruiz' })
      const read = readSpec(opened.specText)
      if (!read.ok) throw new Error('the spec cannot be read')
      let state = replay(opened.events)
      for (let command = nextCommand(read.spec, state); command; command = nextCommand(read.spec, state)) {
        const answer = await act(opened.line.id, state.seq, command)
        if (!answer.ok) throw new Error(`${command.type}: ${sentenceOf(answer.problem)}`)
        const before = state
        state = answer.value.events.reduce(evolve, state)
        const kind = currentStep(read.spec, before)?.kind
        if (kind === undefined || kindsDoneTwice.has(kind)) continue
        const isNowDone = read.spec.steps.some(
          (step) =>
            step.kind === kind && isStepDone(read.spec, state, step) && !isStepDone(read.spec, before, step),
        )
        if (!isNowDone) continue
        // Another window, which has not heard of it, finishes the same step: it is told so, and nothing is doubled.
        kindsDoneTwice.add(kind)
        const late = await act(opened.line.id, before.seq, command)
        expect(late).toMatchObject({ problem: { code: 'build-moved-on', facts: { last: state.seq } } })
        expect(record.entries(opened.line.id)).toHaveLength(state.seq)
      }
      expect(bugs).toEqual([])
      const again = await get('builds.open', { build: opened.line.id })
      expect(replay(again.events)).toEqual(state)
      expect(again.line).toMatchObject({ finished: true, entries: state.seq })
      expect(firstBroken(opened.line.id, record.entries(opened.line.id))).toBeNull()
    },
  )

  it('had each kind of step that the engines have finished from two windows at once', () => {
    const kinds = engines.flatMap((engine) =>
      engine.kind === 'sound' ? engine.spec.steps.map(({ kind }) => kind) : [],
    )
    expect([...kindsDoneTwice].toSorted()).toEqual([...new Set(kinds)].toSorted())
  })
})
