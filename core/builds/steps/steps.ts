import type { EngineSpec, Fit, Procedure, Step } from '../../engine/index.ts'
import { isRunDone, lastLivePull } from '../../tightening/index.ts'
import { askedPlaces } from '../limits/asked-places.ts'
import { askedRings } from '../rings/asked-rings.ts'
import { placeRounds, isAllDone } from '../placed/placed-places.ts'
import { halves, type Half } from '../events/events.ts'
import { photosAt, type BuildPhoto } from '../events/photo-record.ts'
import { halfKey, type BuildState } from '../events/state.ts'

/** How a step stands. */
export interface StepState {
  readonly step: Step
  /**
   * Done, whatever became of the steps before it; skipped with a reason; open to work on; unconfirmed while only a second
   * person's look is missing; or waiting for steps before it.
   */
  readonly state: 'done' | 'skipped' | 'open' | 'unconfirmed' | 'waiting'
  /** Whether it was done before and is to be done again. */
  readonly again: boolean
  /** Ids of the open steps that must be done first; empty unless waiting. */
  readonly waitingFor: readonly string[]
}

/** Every step of the spec in its order, with how it stands. */
export function stepStates(spec: EngineSpec, state: BuildState): readonly StepState[] {
  const { undone, ready } = leftIn(spec, state)
  return spec.steps.map((step) => {
    if (!undone.has(step)) {
      const closed = isSkipped(state, step) ? 'skipped' : 'done'
      return { step, state: closed, again: false, waitingFor: [] }
    }
    if (ready.has(step)) {
      const isLookedAt = awaitsSecondPerson(spec, state, step)
      const again = !isLookedAt && isReopened(state, step)
      return { step, state: isLookedAt ? 'unconfirmed' : 'open', again, waitingFor: [] }
    }
    const first = stepsBefore(spec, step).filter((each) => ready.has(each))
    const again = isReopened(state, step)
    return { step, state: 'waiting', again, waitingFor: first.map(({ id }) => id) }
  })
}

/** What is left to do. */
interface WorkLeft {
  readonly spec: EngineSpec
  /** In the spec's order. */
  readonly undone: ReadonlySet<Step>
  /** Of those, in the spec's order: no step before them is undone. */
  readonly ready: ReadonlySet<Step>
}

/** What `leftIn` found: a state never changes. */
const left = new WeakMap<BuildState, WorkLeft>()

function leftIn(spec: EngineSpec, state: BuildState): WorkLeft {
  const known = left.get(state)
  if (known?.spec === spec) return known
  const undone = new Set(spec.steps.filter((step) => !isStepDone(spec, state, step)))
  const isReady = (step: Step) => !stepsBefore(spec, step).some((each) => undone.has(each))
  const found = { spec, undone, ready: new Set([...undone].filter(isReady)) }
  left.set(state, found)
  return found
}

/**
 * The step to work on: the one the last entry was about, if it is still open, so that a build is taken up
 * where it was left; else the first open one; else the first that waits for a second person. Null when there is none.
 */
export function currentStep(spec: EngineSpec, state: BuildState): Step | null {
  const ready = [...leftIn(spec, state).ready]
  const inTurn = [
    ...ready.filter((step) => !awaitsSecondPerson(spec, state, step)),
    ...ready.filter((step) => awaitsSecondPerson(spec, state, step)),
  ]
  return inTurn.find((step) => isWorkedOn(state, step)) ?? inTurn[0] ?? null
}

function isWorkedOn({ workedOn }: BuildState, step: Step): boolean {
  if (workedOn === null) return false
  return 'step' in workedOn
    ? workedOn.step === step.id
    : step.kind === 'run-procedure' && step.procedure === workedOn.procedure
}

/**
 * Whether what the step asks for is there, whatever became of the steps before it; where the spec wants it, also whether a
 * second person has looked at it. A step that was skipped is done with.
 */
export function isStepDone(spec: EngineSpec, state: BuildState, step: Step): boolean {
  return isSkipped(state, step) || (isWorkDone(spec, state, step) && !lacksSecondPerson(state, step))
}

/** Whether somebody said why the build goes on without the step. */
export function isSkipped({ plan }: Pick<BuildState, 'plan'>, { id }: Step): boolean {
  return plan.skipped[id] !== undefined
}

function isReopened({ plan }: BuildState, { id }: Step): boolean {
  return plan.reopened[id] !== undefined
}

/** Whether the step's work is done and only the second person's look is missing. */
export function awaitsSecondPerson(spec: EngineSpec, state: BuildState, step: Step): boolean {
  return lacksSecondPerson(state, step) && isWorkDone(spec, state, step)
}

function lacksSecondPerson({ started, confirmed }: BuildState, { id, secondPerson }: Step): boolean {
  const isWanted = secondPerson === 'always' || (secondPerson !== undefined && started?.apprentice === true)
  return isWanted && confirmed[id] === undefined
}

/** The photos of a step that were taken since it was last opened again: earlier ones show what is no longer so. */
function newPhotosAt(state: BuildState, { id }: Step): readonly BuildPhoto[] {
  const since = state.plan.reopened[id]?.seq ?? 0
  // A build that is finished stays so when a photo of it is withdrawn.
  const withdrawn = state.finished ? state.photosWithdrawn.filter(({ step }) => step === id) : []
  return [...photosAt(state, id), ...withdrawn].filter(({ seq }) => seq > since)
}

/** Whether what the step asks for is there, whether or not a second person has looked at it. */
export function isWorkDone(spec: EngineSpec, state: BuildState, step: Step): boolean {
  switch (step.kind) {
    case 'note-marks':
      return (state.marks[step.fit]?.[step.part] ?? null) !== null && !state.plan.marksAgain.has(step.id)
    case 'choose-shells':
      return state.shells[step.fit] !== undefined
    case 'fit-shells':
      return halvesOf(fitOf(spec, step.fit)).every(([position, half]) =>
        state.fitted.has(halfKey(position, half)),
      )
    case 'run-procedure':
      return isRunDone(procedureOf(spec, step.procedure), state.runs[step.procedure])
    case 'measure-limits':
    case 'measure-rings':
      return askedPlaces(spec, state, step).every(({ settled }) => settled)
    case 'count':
      return state.parts.counted.has(step.id)
    case 'photo':
      return newPhotosAt(state, step).length > 0 || state.photosSkipped[step.id] !== undefined
    case 'lubricate':
    case 'clean':
    case 'orient':
    case 'align':
    case 'fit-places':
    case 'note':
      return isAllDone(state, step)
    case 'fit-rings':
      return askedRings(spec, state, step).every(({ fitted }) => fitted !== null)
    case 'turn': {
      const turned = state.turnings[step.id]
      return turned !== undefined && (isFree(turned.verdict) || turned.accepted !== null)
    }
    case 'fit-part':
    case 'lay-bead':
    case 'check':
      return isCarriedOut(spec, state, step)
    default:
      return step satisfies never
  }
}

/**
 * Whether anything of the step is in place that would have to be undone before the steps under it can change.
 */
export function isCarriedOut(spec: EngineSpec, state: BuildState, step: Step): boolean {
  switch (step.kind) {
    case 'note-marks':
    case 'choose-shells':
    case 'measure-limits':
    case 'measure-rings':
    case 'count':
    case 'clean':
    case 'note':
    case 'photo':
      return false
    // What was read is void once something under it changes.
    case 'turn':
      return state.turnings[step.id] !== undefined
    // What was oiled, set or aligned is so no longer once the part under it comes out.
    case 'lubricate':
    case 'orient':
    case 'align':
    case 'fit-places':
      return placeRounds(state, step).some(({ done }) => done !== null)
    case 'fit-shells':
      return firstFitted(state, fitOf(spec, step.fit)) !== null
    case 'fit-rings':
      return askedRings(spec, state, step).some(({ fitted }) => fitted !== null)
    case 'fit-part':
      return state.partsFitted.has(step.id)
    case 'lay-bead':
      return state.beads[step.bead] !== undefined
    case 'run-procedure':
      return lastLivePull(state.runs[step.procedure]) !== null
    case 'check':
      return state.checks[step.id]?.verdict === 'good'
    default:
      return step satisfies never
  }
}

function isFree(verdict: BuildState['turnings'][string]['verdict']): boolean {
  return verdict === 'free' || verdict === 'within'
}

/** A half of the fit that is in place; null when none is. */
export function firstFitted(state: BuildState, fit: Fit): readonly [position: string, half: Half] | null {
  return halvesOf(fit).find(([position, half]) => state.fitted.has(halfKey(position, half))) ?? null
}

type HalfAt = readonly [position: string, half: Half]

/** What `halvesOf` found: a fit never changes, and every confirmation asks. */
const halvesByFit = new WeakMap<Fit, readonly HalfAt[]>()

/** Both halves of each position of the fit, in its order, upper before lower. */
export function halvesOf(fit: Fit): readonly HalfAt[] {
  const known =
    halvesByFit.get(fit) ??
    fit.positions.flatMap((position) => halves.map((half) => [position, half] as const))
  halvesByFit.set(fit, known)
  return known
}

/** What `stepsBefore` found, by step id: a spec never changes, and every confirmation asks. */
const before = new WeakMap<EngineSpec, Map<string, readonly Step[]>>()

/** The steps that a step of the spec depends on, near and far, in the spec's order. */
export function stepsBefore(spec: EngineSpec, step: Step): readonly Step[] {
  const ofSpec = before.get(spec) ?? new Map<string, readonly Step[]>()
  before.set(spec, ofSpec)
  const known = ofSpec.get(step.id) ?? lookBefore(spec, step)
  ofSpec.set(step.id, known)
  return known
}

function lookBefore(spec: EngineSpec, step: Step): readonly Step[] {
  const found = new Set<string>()
  const look = (ids: readonly string[]) => {
    for (const each of spec.steps) {
      if (!ids.includes(each.id) || found.has(each.id)) continue
      found.add(each.id)
      look(each.after)
    }
  }
  look(step.after)
  return spec.steps.filter(({ id }) => found.has(id))
}

/** The steps that depend on a step, near and far, in the spec's order. */
export function stepsAfter(spec: EngineSpec, step: Step): readonly Step[] {
  return spec.steps.filter((each) => stepsBefore(spec, each).some(({ id }) => id === step.id))
}

/** Throws when the spec has no such fit: `audit` finds that before a build can be started. */
export function fitOf(spec: EngineSpec, id: string): Fit {
  const fit = spec.fits.find((each) => each.id === id)
  if (fit === undefined) throw new Error(`the spec has no fit ${id}`)
  return fit
}

/** Throws when the spec has no such procedure: `audit` finds that before a build can be started. */
export function procedureOf(spec: EngineSpec, id: string): Procedure {
  const procedure = spec.procedures.find((each) => each.id === id)
  if (procedure === undefined) throw new Error(`the spec has no procedure ${id}`)
  return procedure
}
