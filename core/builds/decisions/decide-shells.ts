import { readMarks } from '../../bearing/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { halfName, type Fit } from '../../engine/index.ts'
import { readReason } from '../../tightening/index.ts'
import { bearingAt, candidatesAt, undecidedProblem } from '../shells/bearing-at.ts'
import type { Half, ShellChoice } from '../events/events.ts'
import type { BearingProposal, ProposedHalf } from '../shells/proposal-at.ts'
import { proposalsFor } from '../shells/proposals.ts'
import { halfKey, type BuildState } from '../events/state.ts'
import { fitOf, halvesOf } from '../steps/steps.ts'
import { openedByMarks } from './decide-plan.ts'
import type { BuildAtStep, CommandOf, Events } from '../commands/step-rules.ts'

type ChooseShells = CommandOf<'choose-shells'>

/**
 * Marks may be noted again until a shell that was chosen by them is in place; then only where the step was opened again,
 * and if they read otherwise, what stands on them is open again too.
 */
export function noteMarks(
  { spec, state, step }: BuildAtStep<'note-marks'>,
  command: CommandOf<'note-marks'>,
): Events {
  const { id, part } = step
  const isAgain = state.plan.marksAgain.has(id)
  const fit = fitOf(spec, step.fit)
  const marks = readMarks(command.typed, fit[part], fit.positions)
  if (!marks.ok) return marks
  const isSame = state.marks[fit.id]?.[part]?.every((mark, index) => mark === marks.value[index]) ?? false
  const { opens = [], takenApart } = command
  const opened = isAgain && !isSame ? openedByMarks(spec, state, step, { opens, takenApart }) : done([])
  if (!opened.ok) return opened
  const seen = opened.value.length === 0 ? {} : { opens, ...(takenApart === true && { takenApart }) }
  const common = { version: 1, step: id, fit: fit.id, part } as const
  return done([
    { type: 'marks-noted', ...common, marks: [...marks.value], typed: command.typed, ...seen },
    ...opened.value,
  ])
}

/** Shells may be chosen again until one of them is in place. */
export function chooseShells(
  { spec, state, step }: BuildAtStep<'choose-shells'>,
  command: ChooseShells,
): Events {
  const fit = fitOf(spec, step.fit)
  const proposals = proposalsFor(spec, state, fit.id)
  if (proposals.length === 0) return refused('marks-missing', { fit: fit.name })

  const stray = command.others.find(({ position }) => !fit.positions.includes(position))
  if (stray !== undefined) return refused('position-not-in-fit', { position: stray.position, fit: fit.name })
  const others = new Map(command.others.map((other) => [halfKey(other.position, other.half), other]))
  const choices: ShellChoice[] = []
  for (const [position, half] of halvesOf(fit)) {
    const proposal = proposals.find((each) => each.position === position)!
    const bearing = bearingAt(state, fit, position)
    if (bearing.basis === 'undecided') return { ok: false, problem: undecidedProblem(bearing) }
    const choice = chooseHalf(fit, half, proposal, others.get(halfKey(position, half)))
    if (!choice.ok) return choice
    const { undersize } = bearing
    choices.push(undersize === null ? choice.value : { ...choice.value, undersize })
  }
  const pairs = checkPairs(state, fit, choices)
  return pairs.ok ? done([{ type: 'shells-chosen', version: 1, step: step.id, fit: fit.id, choices }]) : pairs
}

function chooseHalf(
  fit: Fit,
  half: Half,
  proposal: BearingProposal,
  other: ChooseShells['others'][number] | undefined,
): Outcome<ShellChoice> {
  const { position } = proposal
  const proposed = proposal[half]
  if (proposed !== null && (other === undefined || other.grade === proposed.grade))
    return done(asProposed(position, half, proposed))
  if (other === undefined) return refused('shell-undecided', { position, half: halfName(fit, half) })
  const reasonFor = { what: 'other-shell', position, half: halfName(fit, half), grade: other.grade } as const
  const reason = readReason(other.reason, reasonFor)
  return reason.ok ? done({ position, half, grade: other.grade, by: 'person', reason: reason.value }) : reason
}

function asProposed(position: string, half: Half, { grade, by, reason, label }: ProposedHalf): ShellChoice {
  const choice = {
    position,
    half,
    grade,
    by,
    reason: by === 'person' && typeof reason === 'string' ? reason : null,
  }
  return label === undefined ? choice : { ...choice, label }
}

/** A person may overrule a proposal, not the spec's rule for which grades may share a bearing. */
function checkPairs(state: BuildState, fit: Fit, choices: readonly ShellChoice[]): Outcome<null> {
  const known = fit.grades.map(({ grade }) => grade)
  const unknown = choices.find(({ grade }) => !known.includes(grade))
  if (unknown !== undefined)
    return refused('grade-unknown', { place: unknown.position, grade: unknown.grade, known })
  for (const position of fit.positions) {
    const [upper = '', lower = ''] = choices
      .filter((each) => each.position === position)
      .map(({ grade }) => grade)
    const allowed = candidatesAt(bearingAt(state, fit, position))
    if (!allowed.some((pair) => pair.upper === upper && pair.lower === lower))
      return refused('pair-not-allowed', { position, split: fit.split, upper, lower })
  }
  return done(null)
}
