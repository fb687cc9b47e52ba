import type { Bead, EngineSpec, Step } from '../../engine/index.ts'
import { done, refused } from '../../problem/index.ts'
import { decideRun, readReason, type RunCommand, type RunEvent } from '../../tightening/index.ts'
import type { BuildEvent } from '../events/events.ts'
import type { BuildState } from '../events/state.ts'
import { beadsOverTime, closingRuns } from '../steps/sealant-clock.ts'
import { turnedBefore } from '../steps/turnings.ts'
import { isCarriedOut, stepsAfter, stepsBefore } from '../steps/steps.ts'
import type { BuildAtStep, CommandOf, Events } from '../commands/step-rules.ts'

const version = 1

type AtRun = BuildAtStep<'run-procedure'>

/** As `decideRun`, with what the sealant in the joint asks for. */
export function decideInRun(at: AtRun, command: RunCommand): Events {
  const decided = decideRun(
    at.spec,
    at.state.runs[command.procedure],
    command,
    turnedBefore(at.spec, at.state, at.step),
  )
  if (!decided.ok) return decided
  if (command.type === 'pull' && command.fastener !== null)
    return beforeOpenTimeEnds(at, command, decided.value)
  if (command.type === 'restart-run' && command.pass === 0) return withJointOpened(at, command, decided.value)
  return decided
}

/**
 * A fastener may be pulled over the open time of the sealant in its joint, with a reason: whether the joint still seals is
 * for a person to judge. Asked once for each bead.
 *
 * Refuses `sealant-over-time`, and `reason-missing` where the reason is empty.
 */
function beforeOpenTimeEnds(
  { spec, state, now }: AtRun,
  { procedure, overTime }: CommandOf<'pull'>,
  events: readonly RunEvent[],
): Events {
  const beads = now === null ? [] : beadsOverTime(spec, state, procedure, Date.parse(now))
  if (beads.length === 0) return done(events)
  if (overTime === undefined)
    return refused('sealant-over-time', {
      beads: beads.map(({ name }) => name),
      minutes: Math.min(...beads.map(({ openTimeMinutes }) => openTimeMinutes)),
    })
  const reason = readReason(overTime, { what: 'over-time' })
  if (!reason.ok) return reason
  return done(
    events.map((event) =>
      event.type === 'fastener-pulled'
        ? { ...event, overTime: { beads: beads.map(({ id }) => id), reason: reason.value } }
        : event,
    ),
  )
}

/**
 * A run that begins again with its first pass opens its joint, and sealant that was pressed flat once does not seal again:
 * the beads are wiped off, and what was closed over them is taken out, the last one first.
 *
 * Refuses `restart-opens-joint` where the command does not say that this is accepted.
 */
function withJointOpened(
  { spec, state, step }: AtRun,
  command: CommandOf<'restart-run'>,
  events: readonly RunEvent[],
): Events {
  const opened = openedBy(spec, state, step)
  if (opened.length === 0) return done(events)
  if (command.jointOpened !== true)
    return refused('restart-opens-joint', { steps: opened.map(({ name }) => name) })
  const restarted = events.find((event) => event.type === 'run-restarted')
  if (restarted === undefined) throw new Error('a run that begins again has no entry of it')
  return done([
    ...events.map((event) => (event === restarted ? { ...restarted, jointOpened: true as const } : event)),
    ...opened.flatMap((each) => undone(spec, state, each, command)),
  ])
}

/** The steps that are undone when a run begins again with its first pass and so opens its joint, the last one first. */
export function openedBy(spec: EngineSpec, state: BuildState, run: Step): readonly Step[] {
  const beads = spec.beads.filter(
    (bead) => state.beads[bead.id] !== undefined && closingRuns(spec, bead).some(({ id }) => id === run.id),
  )
  const laid = spec.steps.filter((step) => step.kind === 'lay-bead' && isOneOf(beads, step.bead))
  const onTop = laid.flatMap((step) => stepsAfter(spec, step))
  const before = stepsBefore(spec, run)
  return spec.steps
    .filter((step) => laid.includes(step) || (onTop.includes(step) && before.includes(step)))
    .filter((step) => isUndoable(step) && isCarriedOut(spec, state, step))
    .toReversed()
}

function isOneOf(beads: readonly Bead[], id: string): boolean {
  return beads.some((bead) => bead.id === id)
}

/** What lies between a bead and its bolts and comes apart with the joint. A check stays as it was answered. */
function isUndoable({ kind }: Step): boolean {
  return kind === 'lay-bead' || kind === 'fit-part' || kind === 'run-procedure'
}

/** The reason stands in the entry of the run that begins again, and in that of every other run that does with it. */
function undone(
  spec: EngineSpec,
  state: BuildState,
  step: Step,
  { reason, measuredAgain }: CommandOf<'restart-run'>,
): readonly BuildEvent[] {
  const cause = 'joint-opened'
  switch (step.kind) {
    case 'lay-bead':
      return [{ type: 'bead-wiped-off', version, step: step.id, bead: step.bead, cause }]
    case 'fit-part':
      return [{ type: 'part-taken-out', version, step: step.id, cause }]
    case 'run-procedure': {
      const { procedure } = step
      const command = { type: 'restart-run', procedure, pass: 0, measuredAgain, reason } as const
      const again = decideRun(spec, state.runs[procedure], command)
      return again.ok ? again.value : []
    }
    default:
      return []
  }
}
