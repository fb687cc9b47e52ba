import { putsTogether, stepsUsedBy, type EngineSpec, type Step } from '../../engine/index.ts'
import type { Facts } from '../../problem/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'

/** Steps: none waits for itself, and everything that must be done is done, once and after what it needs. */
export function auditSteps(spec: EngineSpec): readonly Finding[] {
  return [...rings(spec), ...auditFits(spec), ...leftOut(spec), ...doneTwice(spec), ...skippable(spec)]
}

/** Steps that can never begin: what is left when all that can be done has been done. */
function rings({ steps }: EngineSpec): readonly Finding[] {
  let left: readonly Step[] = steps
  for (;;) {
    const waiting = new Set(left.map(({ id }) => id))
    const rest = left.filter(({ after }) => after.some((id) => waiting.has(id)))
    if (rest.length === left.length) break
    left = rest
  }
  if (left.length === 0) return []
  const path = `steps[${steps.findIndex((step) => left.includes(step))}].after`
  return [fault('steps-in-a-ring', { steps: inRing(left).map(({ name }) => name) }, path)]
}

/** One ring among steps of which each waits for another: follow what waits until a step comes again. */
function inRing(left: readonly Step[]): readonly Step[] {
  const trail: Step[] = []
  let step = left[0]
  while (step !== undefined && !trail.includes(step)) {
    trail.push(step)
    const { after } = step
    step = left.find(({ id }) => after.includes(id))
  }
  return step === undefined ? trail : trail.slice(trail.indexOf(step))
}

const shellSteps = [
  {
    missing: 'note-housing-marks',
    is: (step: Step) => step.kind === 'note-marks' && step.part === 'housing',
  },
  {
    missing: 'note-journal-marks',
    is: (step: Step) => step.kind === 'note-marks' && step.part === 'journal',
  },
  { missing: 'choose-shells', is: (step: Step) => step.kind === 'choose-shells' },
  { missing: 'fit-shells', is: (step: Step) => step.kind === 'fit-shells' },
] as const

/** Each fit has its four steps; shells are chosen after both marks are noted, and fitted after they are chosen. */
function auditFits({ fits, steps }: EngineSpec): readonly Finding[] {
  return fits.flatMap((fit, index) => {
    const found = shellSteps.map(({ missing, is }) => ({
      missing,
      step: steps.find((step) => 'fit' in step && step.fit === fit.id && is(step)),
    }))
    const absent = found.filter(({ step }) => step === undefined)
    if (absent.length > 0)
      return absent.map(({ missing }) =>
        fault('fit-without-step', { fit: fit.name, missing }, `fits[${index}]`),
      )
    const [housing, journal, choose, fitting] = found.map(({ step }) => step)
    return [
      ...mustWait(steps, choose, housing),
      ...mustWait(steps, choose, journal),
      ...mustWait(steps, fitting, choose),
    ]
  })
}

export function mustWait(
  steps: readonly Step[],
  step: Step | undefined,
  other: Step | undefined,
): readonly Finding[] {
  if (step === undefined || other === undefined || waitsFor(steps, step, other.id)) return []
  const facts = { step: step.name, other: other.name }
  return [doubt('step-does-not-wait', facts, `steps[${steps.indexOf(step)}].after`)]
}

/** A step that may be skipped is needed by none: neither for what comes of it, nor because the engine is built on it. */
function skippable(spec: EngineSpec): readonly Finding[] {
  const { steps } = spec
  return steps.flatMap((step, index) => {
    if (step.mayBeSkipped === undefined) return []
    const needs = steps.find(
      (other) =>
        (other.kind !== 'count' && stepsUsedBy(spec, other).includes(step)) ||
        (putsTogether(step) && putsTogether(other) && waitsFor(steps, other, step.id)),
    )
    const path = `steps[${index}].mayBeSkipped`
    return needs === undefined
      ? []
      : [fault('skippable-step-needed', { step: step.name, other: needs.name }, path)]
  })
}

function waitsFor(steps: readonly Step[], step: Step, id: string): boolean {
  const ahead = new Set(step.after)
  // A set visits what is added while it is walked: everything ahead of what is ahead.
  for (const each of ahead)
    for (const next of steps.find((one) => one.id === each)?.after ?? []) ahead.add(next)
  return ahead.has(id)
}

function leftOut({ procedures, beads, steps }: EngineSpec): readonly Finding[] {
  const run = new Set(steps.flatMap((step) => (step.kind === 'run-procedure' ? step.procedure : [])))
  const laid = new Set(steps.flatMap((step) => (step.kind === 'lay-bead' ? step.bead : [])))
  return [
    ...procedures.flatMap(({ id, name }, index) =>
      run.has(id) ? [] : [fault('procedure-never-run', { procedure: name }, `procedures[${index}]`)],
    ),
    ...beads.flatMap(({ id, name }, index) =>
      laid.has(id) ? [] : [fault('bead-never-laid', { bead: name }, `beads[${index}]`)],
    ),
  ]
}

/** The record keeps marks, shells, beads and runs by what they are of, so that a second step would find them done. */
function doneTwice({ steps }: EngineSpec): readonly Finding[] {
  const first = new Map<string, Step>()
  return steps.flatMap((step, index) => {
    const work = workOf(step)
    if (work === null) return []
    const key = JSON.stringify(work)
    const earlier = first.get(key)
    if (earlier === undefined) {
      first.set(key, step)
      return []
    }
    return [fault('done-in-two-steps', { work, first: earlier.name, second: step.name }, `steps[${index}]`)]
  })
}

function workOf(step: Step): Facts<'done-in-two-steps'>['work'] | null {
  switch (step.kind) {
    case 'note-marks':
      return { kind: step.kind, part: step.part, fit: step.fit }
    case 'choose-shells':
    case 'fit-shells':
      return { kind: step.kind, fit: step.fit }
    case 'lay-bead':
      return { kind: step.kind, bead: step.bead }
    case 'run-procedure':
      return { kind: step.kind, procedure: step.procedure }
    case 'fit-part':
    case 'check':
    case 'count':
    case 'measure-limits':
    case 'measure-rings':
    case 'fit-rings':
    case 'fit-places':
    case 'lubricate':
    case 'clean':
    case 'orient':
    case 'align':
    case 'note':
    case 'photo':
    case 'turn':
      return null
    default:
      return step satisfies never
  }
}
