import { undersizeCalled } from '../../bearing/index.ts'
import { readReason } from '../../tightening/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import type { Fit } from '../../engine/index.ts'
import { bearingAt } from '../shells/bearing-at.ts'
import type { BearingCommand } from '../commands/bearing-commands.ts'
import type { BearingEvent, NotedPin } from '../events/bearing-events.ts'
import { noteReadings, readThread } from './decide-readings.ts'
import { noteTray } from './decide-tray.ts'
import { bearingsIn, type BuildState } from '../events/state.ts'
import { fitOf } from '../steps/steps.ts'
import type { BuildAtStep } from '../commands/step-rules.ts'

type CommandOf<Type extends BearingCommand['type']> = Extract<BearingCommand, { type: Type }>
type Events = Outcome<readonly BearingEvent[]>

/** Readings, undersizes, pins and the tray may change until a shell that was chosen by them is in place. */
export function decideBearing(
  { spec, state, step }: BuildAtStep<'choose-shells'>,
  command: BearingCommand,
): Events {
  const fit = fitOf(spec, step.fit)
  const positions =
    'position' in command ? [command.position] : 'positions' in command ? command.positions : []
  const stray = positions.find((position) => !fit.positions.includes(position))
  if (stray !== undefined) return refused('position-not-in-fit', { position: stray, fit: fit.name })
  switch (command.type) {
    case 'note-readings':
      return noteReadings(spec, fit, command)
    case 'withdraw-readings':
      return withdrawReadings(state, fit, command)
    case 'declare-undersize':
      return declareUndersize(fit, command)
    case 'decide-basis':
      return decideBasis(state, fit, command)
    case 'pin-shells':
      return pinShells(state, fit, command)
    case 'release-shells':
      return releaseShells(state, fit, command)
    case 'note-tray':
      return noteTray(spec, fit, command)
    case 'read-thread':
      return readThread(fit, command)
    default:
      return command satisfies never
  }
}

function withdrawReadings(state: BuildState, fit: Fit, command: CommandOf<'withdraw-readings'>): Events {
  const { step, position, part } = command
  if (bearingsIn(state, fit.id)[part][position] === undefined)
    return refused('nothing-measured', { position })
  const reason = readReason(command.reason, { what: 'readings-withdrawn', position })
  if (!reason.ok) return reason
  const common = { version: 1, step, fit: fit.id, position } as const
  return done([{ type: 'readings-withdrawn', ...common, part, reason: reason.value }])
}

function declareUndersize(fit: Fit, command: CommandOf<'declare-undersize'>): Events {
  const { step, positions, undersize } = command
  const names = fit.undersizes.map(({ name }) => name)
  if (undersize !== null && !names.some(({ key }) => key === undersize)) {
    const known = names.map(({ text }) => text)
    return refused('undersize-unknown', { place: fit.name, name: undersize, known })
  }
  if (positions.length === 0) return done([])
  const declared = {
    type: 'undersize-declared',
    version: 1,
    step,
    fit: fit.id,
    positions,
    undersize,
  } as const
  if (command.reason === undefined) return done([declared])
  const called = undersizeCalled(fit, undersize)
  const reason = readReason(command.reason, { what: 'undersize-declared', positions, undersize: called })
  return reason.ok ? done([{ ...declared, reason: reason.value }]) : reason
}

function decideBasis(state: BuildState, fit: Fit, command: CommandOf<'decide-basis'>): Events {
  const { step, position, by } = command
  if (bearingAt(state, fit, position).byReadings === null) return refused('nothing-measured', { position })
  const reason = readReason(command.reason, { what: 'basis-decided', by, position })
  if (!reason.ok) return reason
  const common = { version: 1, step, fit: fit.id, position } as const
  return done([{ type: 'basis-decided', ...common, by, reason: reason.value }])
}

function pinShells(state: BuildState, fit: Fit, command: CommandOf<'pin-shells'>): Events {
  const { step, position, upper, lower } = command
  const known = fit.grades.map(({ grade }) => grade)
  const labels = bearingsIn(state, fit.id).tray?.lines.map(({ label }) => label) ?? []
  for (const pin of [upper, lower]) {
    if (pin === null) continue
    if ('grade' in pin && !known.includes(pin.grade))
      return refused('grade-unknown', { place: position, grade: pin.grade, known })
    if ('label' in pin && !labels.includes(pin.label))
      return refused('tray-line-unknown', { position, label: pin.label })
  }
  const pinned = overPinned(state, fit, position, [upper, lower])
  if (pinned !== null) return refused('tray-line-taken', { position, ...pinned })
  if (upper === null && lower === null)
    return releaseShells(state, fit, { ...command, type: 'release-shells' })
  const reason = readReason(command.reason, { what: 'shells-pinned', position })
  if (!reason.ok) return reason
  const common = { version: 1, step, fit: fit.id, position } as const
  return done([{ type: 'shells-pinned', ...common, upper, lower, reason: reason.value }])
}

/** The line of the tray of which more shells would be pinned than lie there; null where there is none. */
function overPinned(state: BuildState, fit: Fit, position: string, wanted: readonly (NotedPin | null)[]) {
  const { tray, pins } = bearingsIn(state, fit.id)
  const lines = tray?.lines ?? []
  const isOf = (label: string) => (pin: NotedPin | null) =>
    pin !== null && 'label' in pin && pin.label === label
  const others = Object.entries(pins).filter(([each]) => each !== position)
  for (const { label, count } of lines) {
    const here = wanted.filter(isOf(label)).length
    const at = others.filter(([, { upper, lower }]) => [upper, lower].some(isOf(label))).map(([each]) => each)
    const there = others.flatMap(([, { upper, lower }]) => [upper, lower]).filter(isOf(label)).length
    if (here > 0 && here + there > count) return { label, count, at }
  }
  return null
}

function releaseShells(state: BuildState, fit: Fit, command: CommandOf<'release-shells'>): Events {
  const { step, position } = command
  if (bearingsIn(state, fit.id).pins[position] === undefined) return refused('nothing-pinned', { position })
  return done([{ type: 'shells-released', version: 1, step, fit: fit.id, position }])
}
