import type { EngineSpec } from '../../engine/index.ts'
import { problem, type Problem } from '../../problem/index.ts'
import { liftedAnswer, liftedReason } from '../../tightening/index.ts'
import { commandOf } from './command-of.ts'
import { decide } from '../decisions/decide.ts'
import { benchOf } from '../events/bench-of.ts'
import type { BuildEvent, RecordedEvent } from '../events/events.ts'
import { evolve } from '../events/evolve.ts'
import { handsAfter } from '../steps/hands.ts'
import type { Hands } from '../steps/hands.ts'
import { nameKey } from '../../person/index.ts'
import { runCommandOf } from './run-command-of.ts'
import { isSameValue } from '../decisions/same-value.ts'
import type { SpecRevision } from '../revision/spec-revision.ts'
import { takeRevision } from '../revision/take-revision.ts'
import { readPerson, startBuild } from './start.ts'
import { emptyBuild } from '../events/state.ts'

/**
 * Rules that an earlier version of the program did not have, by the code with which they refuse: it let a person answer in
 * words what went past its upper limit, and left sealant in a joint whose bolts began again. An entry that breaks one of these may have been confirmed by somebody all the same.
 */
const laterRules: ReadonlySet<Problem['code']> = new Set([
  'must-begin-again',
  'must-be-replaced',
  'restart-opens-joint',
])

/** Whether somebody could have confirmed the entry in an earlier version of the program. */
export function wasAllowedOnce({ why }: AgainstRules): boolean {
  return laterRules.has(why.code)
}

/** The first entry that nobody could have confirmed in a build of the spec, and why not. */
export interface AgainstRules {
  readonly entry: number
  readonly why: Problem
}

/**
 * Holds the entries of a build against the rules by which they must have come about: each is asked for again as a command
 * and decided on. What is computed for a choice of shells may be another with another version of the program; that the
 * shells may be paired so is not. An entry that an earlier version allowed is taken as it is, and the rest held against the
 * rules; it is what is returned where nothing else is wrong. Yields after each entry, so that the caller can let others in
 * between; returns null where all could have been confirmed. `revisionOf` gives the specs that were taken over on the way, and the first.
 */
export function* checkRules(
  spec: EngineSpec,
  specSha256: string,
  entries: readonly RecordedEvent[],
  revisionOf: (sha256: string) => SpecRevision | null = () => null,
): Generator<undefined, AgainstRules | null> {
  /** What holds at the entry: the build may go on by another revision. */
  let held = { spec, sha256: specSha256 }
  let state = emptyBuild
  let hands: Hands = new Map()
  let allowedOnce: AgainstRules | null = null
  for (let at = 0; at < entries.length;) {
    const entry = entries[at]!
    const person = readPerson(entry.person)
    if (!person.ok) return { entry: entry.seq, why: person.problem }
    const next = entry.event.type === 'revision-taken-over' ? revisionOf(entry.event.specSha256) : null
    const decided =
      at === 0
        ? begun(spec, specSha256, entry)
        : next === null
          ? followed(held.spec, entry, state, hands)
          : takenOver(revisionOf(held.sha256), next, entry, state)
    const against = 'code' in decided ? { entry: entry.seq, why: decided } : null
    if (against !== null && !wasAllowedOnce(against)) return against
    if (against !== null) allowedOnce ??= against
    const events = 'code' in decided ? [entry.event] : decided
    for (const [index, event] of events.entries()) {
      const recorded = entries[at + index]
      if (recorded === undefined || !isSame(inLatestVersion(recorded.event), event))
        return { entry: recorded?.seq ?? entry.seq, why: problem('entry-not-as-decided', {}) }
      hands = handsAfter(held.spec, hands, state, recorded)
      state = evolve(state, recorded)
    }
    if (next !== null) held = next
    at += events.length
    yield
  }
  return allowedOnce
}

function begun(spec: EngineSpec, specSha256: string, { event, person }: RecordedEvent) {
  if (event.type !== 'build-started') return problem('entry-not-first', {})
  const { name, serial, apprentice = false } = event
  const decided = startBuild(spec, { name, serial, person, apprentice, specSha256 })
  return decided.ok ? [decided.value] : decided.problem
}

function takenOver(
  from: SpecRevision | null,
  to: SpecRevision,
  { event }: RecordedEvent,
  state: typeof emptyBuild,
): readonly BuildEvent[] | Problem {
  if (from === null || event.type !== 'revision-taken-over') return problem('entry-out-of-place', {})
  const decided = takeRevision(from, to, state, event)
  return decided.ok ? decided.value : decided.problem
}

function followed(
  spec: EngineSpec,
  { at, event }: RecordedEvent,
  state: typeof emptyBuild,
  hands: Hands,
): readonly BuildEvent[] | Problem {
  const command = 'procedure' in event && !('step' in event) ? runCommandOf(spec, event) : commandOf(event)
  if (command === null) return problem('entry-out-of-place', {})
  if (command.type === 'confirm-step' || command.type === 'send-back-step') {
    const own = hands.get(command.step) ?? []
    if (own.some((hand) => nameKey(hand) === nameKey(command.second)))
      return problem('second-is-first', { name: command.second })
  }
  // An earlier version of the program did not ask over the open time of a sealant, which is no fault of the entries.
  const wasAsked = event.type === 'fastener-pulled' && event.overTime !== undefined
  // Which bench began the build, no entry says before one that takes it over from there.
  const isFirstTaking = event.type === 'build-taken-over' && state.bench === null
  const before = isFirstTaking ? { ...state, bench: event.from } : state
  const decided = decide(spec, before, command, wasAsked ? at : null, benchOf(event))
  if (!decided.ok) return decided.problem
  return decided.value.length > 0 ? decided.value : problem('entry-not-as-decided', {})
}

/**
 * Whether a recorded event says what was decided. What the event of an earlier version did not say yet is no difference;
 * nor is by what a shell was proposed.
 */
function isSame(recorded: BuildEvent, decided: BuildEvent): boolean {
  if (recorded.type === 'shells-chosen' && decided.type === 'shells-chosen')
    return isSameValue(chosenShells(recorded), chosenShells(decided))
  return Object.entries(recorded).every(
    ([key, value]) => value === undefined || isSameValue(value, decided[key as keyof BuildEvent]),
  )
}

function inLatestVersion(event: BuildEvent): BuildEvent {
  switch (event.type) {
    case 'flag-answered':
      return liftedAnswer(event)
    case 'fastener-loosened':
    case 'run-restarted':
      return liftedReason(event)
    default:
      return event
  }
}

function chosenShells({ step, fit, choices }: Extract<BuildEvent, { type: 'shells-chosen' }>) {
  const shells = choices.map(({ position, half, grade, undersize }) => [
    position,
    half,
    grade,
    undersize ?? null,
  ])
  return { step, fit, shells }
}
