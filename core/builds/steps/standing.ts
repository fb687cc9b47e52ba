import { z } from 'zod'
import type { EngineSpec } from '../../engine/index.ts'
import { nextPull, numberOf, openFlags } from '../../tightening/index.ts'
import type { BuildState } from '../events/state.ts'
import { awaitsSecondPerson, currentStep, procedureOf } from './steps.ts'

/** Where an open build stands, as the list of builds says it. */
export const standing = z.strictObject({
  /** The step to work on, counted from 1 in the spec's order; null once every step is done. */
  step: z.strictObject({ place: z.int().min(1), of: z.int().min(1), name: z.string() }).nullable(),
  /** Whether nothing of that step is missing but a second person's look. */
  awaitsSecond: z.boolean(),
  /** Whose turn it is in a run that was begun. */
  next: z
    .strictObject({
      /** As on the drawing; null for what is done between passes, and for the gap. */
      fastener: z.string().nullable(),
      /** Counted from 1. */
      pass: z.int().min(1),
      passes: z.int().min(1),
    })
    .nullable(),
  /** Why the work is paused; '' where no reason was given, null while it is not paused. */
  paused: z.string().nullable(),
  /** Flags without an answer, over all runs. */
  openProblems: z.int().min(0),
})
export type Standing = z.output<typeof standing>

export function whereItStands(spec: EngineSpec, state: BuildState): Standing {
  const step = currentStep(spec, state)
  const runs = Object.values(state.runs)
  return {
    step: step && { place: spec.steps.indexOf(step) + 1, of: spec.steps.length, name: step.name },
    awaitsSecond: step !== null && awaitsSecondPerson(spec, state, step),
    next: step?.kind === 'run-procedure' ? nextIn(spec, state, step.procedure) : null,
    paused: runs.find(({ paused }) => paused !== null)?.paused ?? null,
    openProblems: runs.flatMap((run) => openFlags(run)).length,
  }
}

function nextIn(spec: EngineSpec, state: BuildState, id: string): Standing['next'] {
  const run = state.runs[id]
  if (run === undefined) return null
  const procedure = procedureOf(spec, id)
  const next = nextPull(procedure, run)
  return (
    next && {
      fastener: numberOf(spec, next.fastener),
      pass: next.pass + 1,
      passes: procedure.passes.length,
    }
  )
}
