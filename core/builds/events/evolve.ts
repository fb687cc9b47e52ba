import { evolveRun } from '../../tightening/index.ts'
import { evolveBearings } from './bearing-record.ts'
import { evolveLimits } from './limit-record.ts'
import { evolveTurnings } from './turning-record.ts'
import { evolvePlaced } from './placed-record.ts'
import { evolveRings } from './ring-record.ts'
import { evolveParts, withoutTicksAt } from './part-record.ts'
import { evolvePhotos } from './photo-record.ts'
import { evolvePlan, withMarksRead } from './plan-record.ts'
import { withoutWorkOf } from './reopened.ts'
import { withRevision } from './revision-record.ts'
import type { BuildEvent, RecordedEvent } from './events.ts'
import { bearingsIn, emptyBuild, halfKey, type BuildState, type Confirmation, type Marks } from './state.ts'

/** What of a recorded event the state is made from. */
export type Entry = Pick<RecordedEvent, 'seq' | 'at' | 'event'>

/** The state after one more entry. Any event that `decide` gave is taken as it is: judging is done there. */
export function evolve(state: BuildState, entry: Entry): BuildState {
  const { seq, event } = entry
  return { ...after(state, entry), ...lookedAtAfter(state, event), seq }
}

/** The state that a build's entries add up to, from the first. */
export function replay(entries: Iterable<Entry>): BuildState {
  let state = emptyBuild
  for (const entry of entries) state = evolve(state, entry)
  return state
}

function after(state: BuildState, { seq, at, event }: Entry): BuildState {
  switch (event.type) {
    case 'build-started':
      return {
        ...state,
        started: { name: event.name, serial: event.serial, apprentice: event.apprentice === true },
      }
    case 'build-finished':
      return { ...state, finished: true }
    case 'build-voided':
      return { ...state, voided: true }
    case 'build-amended':
    case 'fork-settled':
      return state
    case 'build-handed-over':
    case 'build-taken-over':
      return { ...state, bench: event.to }
    case 'step-confirmed':
    case 'step-sent-back':
      return { ...state, workedOn: { step: event.step } }
    case 'marks-noted': {
      const before = state.marks[event.fit] ?? { housing: null, journal: null }
      const marks = { ...state.marks, [event.fit]: { ...before, [event.part]: event.marks } }
      const workedOn = { step: event.step }
      const plan = withMarksRead(state.plan, event.step)
      if (sameMarks(before[event.part], event.marks)) return { ...state, marks, plan, workedOn }
      // What was decided between the old marks and the readings is open again.
      const bearings = { ...state.bearings, [event.fit]: { ...bearingsIn(state, event.fit), basis: {} } }
      return { ...state, marks, plan, bearings, shells: without(state.shells, event.fit), workedOn }
    }
    case 'shells-chosen':
      return {
        ...state,
        shells: { ...state.shells, [event.fit]: event.choices },
        workedOn: { step: event.step },
      }
    case 'half-fitted':
      return {
        ...state,
        fitted: new Set([...state.fitted, halfKey(event.position, event.half)]),
        workedOn: { step: event.step },
      }
    case 'half-taken-out': {
      const fitted = withoutMember(state.fitted, halfKey(event.position, event.half))
      return { ...state, fitted, workedOn: { step: event.step } }
    }
    case 'part-fitted':
      return {
        ...state,
        partsFitted: new Set([...state.partsFitted, event.step]),
        workedOn: { step: event.step },
      }
    case 'part-taken-out':
      return {
        ...state,
        partsFitted: withoutMember(state.partsFitted, event.step),
        parts: withoutTicksAt(state.parts, event.step),
        workedOn: { step: event.step },
      }
    case 'limit-measured':
    case 'limit-accepted':
    case 'measured-part-replaced':
      return {
        ...state,
        limits: evolveLimits(state.limits, seq, event),
        workedOn: { step: event.step },
      }
    case 'crank-turned':
    case 'turning-accepted':
    case 'turning-voided':
      return {
        ...state,
        turnings: evolveTurnings(state.turnings, seq, event),
        workedOn: { step: event.step },
      }
    case 'place-done':
    case 'place-undone':
      return {
        ...state,
        placed: evolvePlaced(state.placed, seq, event),
        workedOn: { step: event.step },
      }
    case 'rings-fitted':
    case 'rings-taken-off':
      return {
        ...state,
        rings: evolveRings(state.rings, seq, event),
        workedOn: { step: event.step },
      }
    case 'parts-ticked':
    case 'ticks-removed':
    case 'part-left-over':
    case 'parts-counted':
      return {
        ...state,
        parts: evolveParts(state.parts, seq, event),
        workedOn: { step: event.step },
      }
    // A photo and a note are no work on their step: a person comes back to where the work was left.
    case 'photo-added':
    case 'photo-withdrawn':
    case 'note-written':
      return { ...state, ...evolvePhotos(state, { seq, at }, event) }
    case 'photo-skipped':
      return { ...state, ...evolvePhotos(state, { seq, at }, event), workedOn: { step: event.step } }
    case 'step-reopened': {
      const left = withoutWorkOf(state, event)
      return { ...left, plan: evolvePlan(left.plan, seq, event), workedOn: { step: event.redone } }
    }
    case 'revision-taken-over':
      return withRevision(state, event)
    case 'step-skipped':
    case 'skip-taken-back':
      return { ...state, plan: evolvePlan(state.plan, seq, event), workedOn: { step: event.step } }
    case 'bead-laid':
      return {
        ...state,
        beads: { ...state.beads, [event.bead]: { seq, at, overTime: null } },
        workedOn: { step: event.step },
      }
    case 'bead-wiped-off':
      return { ...state, beads: without(state.beads, event.bead), workedOn: { step: event.step } }
    case 'check-answered': {
      const { type: _, version: __, step, ...answer } = event
      return { ...state, checks: { ...state.checks, [step]: answer }, workedOn: { step } }
    }
    case 'readings-noted':
    case 'readings-withdrawn':
    case 'undersize-declared':
    case 'basis-decided':
    case 'shells-pinned':
    case 'shells-released':
    case 'tray-noted':
    case 'thread-read': {
      const { fit, step } = event
      const bearings = { ...state.bearings, [fit]: evolveBearings(bearingsIn(state, fit), event) }
      const shells = event.type === 'thread-read' ? state.shells : without(state.shells, fit)
      return { ...state, bearings, shells, workedOn: { step } }
    }
    case 'run-started':
    case 'fasteners-declared-new':
    case 'fastener-pulled':
    case 'pull-taken-back':
    case 'pull-read-again':
    case 'problem-noted':
    case 'flag-answered':
    case 'fastener-loosened':
    case 'fastener-replaced':
    case 'pass-repeated':
    case 'run-restarted':
    case 'run-paused':
    case 'run-resumed': {
      const { procedure } = event
      const runs = { ...state.runs, [procedure]: evolveRun(state.runs[procedure], event) }
      const beads = event.type === 'fastener-pulled' ? closedOverTime(state.beads, event) : state.beads
      return { ...state, runs, beads, workedOn: { procedure } }
    }
    default:
      return event satisfies never
  }
}

/** What a second person said of a step counts until something more is done to it. */
function lookedAtAfter(
  { confirmed, sentBack }: BuildState,
  event: BuildEvent,
): Pick<BuildState, 'confirmed' | 'sentBack'> {
  if (event.type === 'photo-added' || event.type === 'photo-withdrawn' || event.type === 'note-written')
    return { confirmed, sentBack }
  const left = { confirmed: untouchedBy(event, confirmed), sentBack: untouchedBy(event, sentBack) }
  if (event.type !== 'step-confirmed' && event.type !== 'step-sent-back') return left
  const { step, second, procedure } = event
  return event.type === 'step-confirmed'
    ? { ...left, confirmed: { ...left.confirmed, [step]: { second, procedure } } }
    : { ...left, sentBack: { ...left.sentBack, [step]: { second, procedure, reason: event.reason } } }
}

/** The very same record where the event is about none of its steps. */
function untouchedBy<Stated extends Confirmation>(
  event: BuildEvent,
  byStep: Readonly<Record<string, Stated>>,
): Readonly<Record<string, Stated>> {
  const touched = Object.entries(byStep).find(
    ([step, { procedure }]) =>
      ('step' in event && event.step === step) ||
      (procedure !== null && 'procedure' in event && event.procedure === procedure),
  )
  return touched === undefined ? byStep : without(byStep, touched[0])
}

/** The beads that are laid, after a pull for which somebody said why it was made over their open time. */
function closedOverTime(
  beads: BuildState['beads'],
  { overTime }: Extract<BuildEvent, { type: 'fastener-pulled' }>,
): BuildState['beads'] {
  if (overTime === undefined) return beads
  return Object.fromEntries(
    Object.entries(beads).map(([id, bead]) => [
      id,
      overTime.beads.includes(id) ? { ...bead, overTime: overTime.reason } : bead,
    ]),
  )
}

function sameMarks(before: Marks, now: readonly (string | null)[]): boolean {
  return before !== null && before.length === now.length && now.every((mark, index) => mark === before[index])
}

function without<Value>(
  record: Readonly<Record<string, Value>>,
  key: string,
): Readonly<Record<string, Value>> {
  return Object.fromEntries(Object.entries(record).filter(([each]) => each !== key))
}

function withoutMember(set: ReadonlySet<string>, member: string): ReadonlySet<string> {
  return new Set([...set].filter((each) => each !== member))
}
