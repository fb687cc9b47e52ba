import fc from 'fast-check'
import {
  buildCommand,
  decide,
  emptyBuild,
  evolve,
  startBuild,
  type BuildCommand,
  type BuildState,
  type RecordedEvent,
} from '../../../../core/builds/index.ts'
import { sentenceOf } from '../../../../core/problem/index.ts'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { lastLivePull } from '../../../../core/tightening/index.ts'
import { nextCommand } from '../next-command.ts'
import { newBuild } from '../workshop.ts'

/** Something a person may do: what it becomes depends on how the build stands. */
type Move = (state: BuildState) => BuildCommand

const reason = fc.constantFrom('', '.', 'wrong drawer', 'put right')

const typed = fc.constantFrom('0.1', '0,35 mm', '24', '60', '0', '', 'abc', '-5', '1e999', '212 in-lb')

/** Any command whose names are the engine's own, or nobody's. */
function anyCommand(spec: EngineSpec): fc.Arbitrary<BuildCommand> {
  const oneOf = (ids: readonly string[]) => fc.constantFrom(...ids, 'nobody')
  const step = oneOf(spec.steps.map(({ id }) => id))
  const procedure = oneOf(spec.procedures.map(({ id }) => id))
  const fastener = fc.option(oneOf(spec.fasteners.map(({ id }) => id)))
  const position = oneOf(spec.fits.flatMap(({ positions }) => positions))
  const grade = oneOf(spec.fits.flatMap(({ grades }) => grades.map((each) => each.grade)))
  const marks = fc.constantFrom(
    '',
    '1 2 3 1',
    '12 9',
    'FGHF',
    '? ? ? ?',
    '4 5 4',
    'LML',
    'AABBA',
    '1 2 1 2 1',
  )
  const half = fc.constantFrom('upper' as const, 'lower' as const)
  const is = <Type extends BuildCommand['type']>(type: Type) => fc.constant(type)
  return fc.oneof(
    fc.record({ type: is('note-marks'), step, typed: marks }),
    fc.record({
      type: is('choose-shells'),
      step,
      others: fc.array(fc.record({ position, half, grade, reason }), { maxLength: 3 }),
    }),
    fc.record({
      type: is('redo-step'),
      step,
      reason,
      opens: fc.subarray(spec.steps.map(({ id }) => id)),
      takenApart: fc.constantFrom(true as const, undefined),
    }),
    fc.record({ type: fc.constantFrom('skip-step' as const, 'take-back-skip' as const), step, reason }),
    fc.record({ type: is('fit-half'), step, position, half }),
    fc.record({ type: is('take-out-half'), step, position, half, reason }),
    fc.record({ type: fc.constantFrom('fit-part' as const, 'lay-bead' as const), step }),
    fc.record({ type: fc.constantFrom('take-out-part' as const, 'wipe-off-bead' as const), step, reason }),
    fc.record({
      type: is('answer-check'),
      step,
      good: fc.boolean(),
      reading: fc.option(typed),
      note: reason,
    }),
    fc.record({ type: fc.constantFrom('start-run' as const, 'resume-run' as const), procedure }),
    fc.record({ type: is('declare-new'), procedure, group: oneOf(spec.fastenerGroups.map(({ id }) => id)) }),
    fc.record({
      type: is('pull'),
      procedure,
      pass: fc.nat(5),
      fastener,
      reading: fc.option(
        fc.record({ typed, unit: fc.constantFrom('N·m' as const, 'lbf·ft' as const, '°' as const) }),
      ),
      moved: fc.boolean(),
      outOfOrder: fc.option(reason),
    }),
    fc.record({ type: is('take-back'), procedure, pull: fc.integer({ min: 1, max: 20 }), reason }),
    fc.record({ type: is('note-problem'), procedure, fastener, text: reason }),
    fc.record({ type: is('answer-flag'), procedure, flag: fc.integer({ min: 1, max: 3 }), answer: reason }),
    fc.record({ type: is('pause-run'), procedure, reason }),
    fc.record({ type: is('finish-build') }),
  )
}

/** Long stretches of good work, and between them anything at all, corrections most of all. */
export function moves(spec: EngineSpec): fc.Arbitrary<readonly Move[]> {
  const goOn = fc
    .integer({ min: 1, max: 25 })
    .map((steps): readonly Move[] => Array.from({ length: steps }, () => (state) => nextCommand(spec, state)))
  const anything = anyCommand(spec).map((command): readonly Move[] => [() => command])
  const correction = fc.nat(30).map((pick): readonly Move[] => [(state) => correct(spec, state, pick)])
  const stretch = fc.oneof({ weight: 3, arbitrary: goOn }, { weight: 3, arbitrary: anything }, correction)
  return fc.array(stretch, { maxLength: 25 }).map((stretches) => stretches.flat())
}

/** Something that undoes: the last pull of a procedure, a half, a part, a bead, a check. */
function correct(spec: EngineSpec, state: BuildState, pick: number): BuildCommand {
  const step = spec.steps[pick % spec.steps.length]!
  const reason = 'put right'
  switch (step.kind) {
    case 'run-procedure': {
      const pull = lastLivePull(state.runs[step.procedure])?.number ?? 1
      return { type: 'take-back', procedure: step.procedure, pull, notTurned: true, reason }
    }
    case 'check':
      return { type: 'answer-check', step: step.id, good: false, reading: null, note: reason }
    case 'fit-part':
      return { type: 'take-out-part', step: step.id, reason }
    case 'lay-bead':
      return { type: 'wipe-off-bead', step: step.id, reason }
    case 'fit-shells': {
      const [position = '', half] = [...state.fitted].at(-1)?.split('/') ?? []
      return {
        type: 'take-out-half',
        step: step.id,
        position,
        half: half === 'lower' ? 'lower' : 'upper',
        reason,
      }
    }
    default:
      return nextCommand(spec, state)
  }
}

function frozen<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value))
    Object.values(Object.freeze(value)).forEach(frozen)
  return value
}

/** Carries the moves out and gives what is wrong with the build after any of them, in words. */
export function carryOut(
  spec: EngineSpec,
  moves: readonly Move[],
  faultsOf: (state: BuildState) => readonly string[],
) {
  const entries: RecordedEvent[] = []
  const faults: string[] = []
  let state = emptyBuild
  const add = (event: RecordedEvent['event']) => {
    const seq = entries.length + 1
    const entry = { seq, at: '2026-03-09T07:00:00.000Z', person: 'Ada', event, hash: '0'.repeat(64) }
    entries.push(entry)
    state = frozen(evolve(state, entry))
  }
  const started = startBuild(spec, newBuild)
  if (started.ok) add(started.value)
  for (const move of moves) {
    const command = move(state)
    if (!buildCommand.safeParse(command).success) faults.push(`${command.type} is not a command`)
    const decided = decide(spec, state, command, null)
    if (!decided.ok) {
      const sentence = sentenceOf(decided.problem)
      if (!/^[\p{Lu}“\d].*[.?!]$/su.test(sentence)) faults.push(`not a sentence: ${sentence}`)
      continue
    }
    if (state.finished) faults.push(`${command.type} after the end`)
    decided.value.forEach(add)
    faults.push(...faultsOf(state))
  }
  return { state, entries, faults }
}
