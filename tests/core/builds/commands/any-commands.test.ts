import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  buildEvent,
  buildSheet,
  currentStep,
  decide,
  drawingFacts,
  evolve,
  isStepDone,
  replay,
  stepStates,
  type BuildState,
  type RecordedEvent,
} from '../../../../core/builds/index.ts'
import { sentenceOf } from '../../../../core/problem/index.ts'
import type { EngineSpec, Step } from '../../../../core/engine/index.ts'
import { lastLivePull, openPulls } from '../../../../core/tightening/index.ts'
import { nextCommand } from '../next-command.ts'
import { demoEngine } from '../workshop.ts'
import { checkProperty } from '../../../property.ts'
import { en } from '../../../../core/words/index.ts'
import { moves, carryOut } from './any-command.ts'

/** Whether all that a step asks for is in place, seen by itself: checks and flags are words, not parts. */
function isInPlace(spec: EngineSpec, state: BuildState, step: Step): boolean {
  if (step.kind === 'check') return true
  if (step.kind !== 'run-procedure') return isStepDone(spec, state, step)
  return (
    openPulls(
      spec.procedures.find(({ id }) => id === step.procedure)!,
      state.runs[step.procedure],
    ).length === 0
  )
}

/** Whether anything of a step is in place. */
function isBegun(spec: EngineSpec, state: BuildState, step: Step): boolean {
  switch (step.kind) {
    case 'run-procedure':
      return lastLivePull(state.runs[step.procedure]) !== null
    case 'fit-shells': {
      const fit = spec.fits.find(({ id }) => id === step.fit)!
      return fit.positions.some((position) => [...state.fitted].some((key) => key.startsWith(`${position}/`)))
    }
    case 'fit-part':
    case 'lay-bead':
      return isStepDone(spec, state, step)
    default:
      return false
  }
}

/** Steps with something in place although a step before them is not. */
function floating(spec: EngineSpec, state: BuildState): readonly string[] {
  return spec.steps
    .filter((step) => isBegun(spec, state, step))
    .flatMap((step) =>
      spec.steps
        .filter(({ id }) => step.after.includes(id))
        .filter((before) => !isInPlace(spec, state, before))
        .map((before) => `${step.name} without ${before.name}`),
    )
}

/** Halves in place that nobody chose, and choices that no marks ask for. */
function unchosen(spec: EngineSpec, state: BuildState): readonly string[] {
  return spec.fits.flatMap(({ id, positions }) => {
    const choices = state.shells[id]
    const fitted = [...state.fitted].filter((key) => positions.includes(key.split('/')[0]!))
    const marks = state.marks[id]
    if (choices === undefined) return fitted.map((key) => `${key} without a choice`)
    const whole = choices.length === positions.length * 2
    return whole && marks?.housing && marks.journal ? [] : [`a choice for ${id} without marks`]
  })
}

function endedEarly(spec: EngineSpec, state: BuildState): readonly string[] {
  return state.finished && stepStates(spec, state).some((each) => each.state !== 'done')
    ? ['ended early']
    : []
}

describe.each(['skerry-3', 'tarn-4'])('any string of commands to a build of %s', (engine) => {
  const spec = demoEngine(engine)
  const runs = { numRuns: 40 }
  const seconds = 30_000

  it(
    'leaves a legal build: what is in place stands on what comes before, and the end is the end',
    () => {
      const faultsOf = (state: BuildState) => [
        ...floating(spec, state),
        ...unchosen(spec, state),
        ...endedEarly(spec, state),
      ]
      const legal = fc.property(moves(spec), (moves) => {
        expect(carryOut(spec, moves, faultsOf).faults).toEqual([])
      })
      checkProperty(legal, runs)
    },
    seconds,
  )

  it(
    'leaves the build that its entries add up to, written and read',
    () => {
      const same = fc.property(moves(spec), (moves) => {
        const { state, entries } = carryOut(spec, moves, () => [])
        const read = JSON.parse(JSON.stringify(entries)) as RecordedEvent[]
        expect(read.map(({ event }) => buildEvent.parse(event))).toEqual(entries.map(({ event }) => event))
        expect(replay(read)).toEqual(state)
      })
      checkProperty(same, runs)
    },
    seconds,
  )

  it(
    'always leaves a step to do next, a drawing of it, and a sheet',
    () => {
      const drawn = fc.property(moves(spec), (moves) => {
        const { state, entries } = carryOut(spec, moves, () => [])
        const step = currentStep(spec, state)
        if (step === null) expect(stepStates(spec, state).every((each) => each.state === 'done')).toBe(true)
        else expect(spec.case.faces.map(({ id }) => id)).toContain(drawingFacts(en, spec, state, step).face)
        expect(buildSheet(spec, entries).head.entries).toBe(entries.length)
      })
      checkProperty(drawn, runs)
    },
    seconds,
  )

  it(
    'can always be worked to its end',
    () => {
      const endless = fc.property(moves(spec), (moves) => {
        let { state } = carryOut(spec, moves, () => [])
        for (let left = 600; left > 0 && !state.finished; left--) {
          const decided = decide(spec, state, nextCommand(spec, state), null)
          if (!decided.ok) throw new Error(sentenceOf(decided.problem))
          for (const event of decided.value)
            state = evolve(state, { seq: state.seq + 1, at: '2026-03-09T08:00:00.000Z', event })
        }
        expect(state.finished).toBe(true)
      })
      checkProperty(endless, runs)
    },
    seconds,
  )
})
