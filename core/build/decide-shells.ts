import { candidatesFor, proposeShells, readMarks, type Proposal } from '../bearing/index.ts'
import { done, refused, type Outcome } from '../problem/index.ts'
import type { EngineSpec, Fit } from '../spec/index.ts'
import { readReason } from '../tightening/index.ts'
import type { BuildCommand } from './commands.ts'
import type { BuildEvent, Half, ShellChoice } from './events.ts'
import { stepToWorkOn } from './order-of-steps.ts'
import { halfKey, type BuildState } from './state.ts'
import { firstFitted, fitOf, halvesOf } from './steps.ts'

type NoteMarks = Extract<BuildCommand, { type: 'note-marks' }>
type ChooseShells = Extract<BuildCommand, { type: 'choose-shells' }>

/** Marks may be noted again until a shell that was chosen by them is in place. */
export function noteMarks(
  spec: EngineSpec,
  state: BuildState,
  command: NoteMarks,
): Outcome<readonly BuildEvent[]> {
  const step = stepToWorkOn(spec, state, command.step, 'note-marks')
  if (!step.ok) return step
  const { id, part } = step.value
  const fit = fitOf(spec, step.value.fit)
  const free = withoutShells(state, fit)
  if (!free.ok) return free
  const marks = readMarks(command.typed, fit[part], fit.positions)
  if (!marks.ok) return marks
  const common = { version: 1, step: id, fit: fit.id, part } as const
  return done([{ type: 'marks-noted', ...common, marks: [...marks.value], typed: command.typed }])
}

/**
 * The shells to fit for each position of a fit, as its marks ask for; none while marks of a part are missing.
 * Worn marks give a proposal without shells.
 */
export function proposalsFor(spec: EngineSpec, state: BuildState, fitId: string): readonly Proposal[] {
  const marks = state.marks[fitId]
  if (!marks?.housing || !marks.journal) return []
  return proposeShells(fitOf(spec, fitId), marks.housing, marks.journal)
}

/** Shells may be chosen again until one of them is in place. */
export function chooseShells(
  spec: EngineSpec,
  state: BuildState,
  command: ChooseShells,
): Outcome<readonly BuildEvent[]> {
  const step = stepToWorkOn(spec, state, command.step, 'choose-shells')
  if (!step.ok) return step
  const fit = fitOf(spec, step.value.fit)
  const free = withoutShells(state, fit)
  if (!free.ok) return free
  const proposals = proposalsFor(spec, state, fit.id)
  if (proposals.length === 0) return refused('marks-missing', { fit: fit.name })

  const stray = command.others.find(({ position }) => !fit.positions.includes(position))
  if (stray !== undefined) return refused('position-not-in-fit', { position: stray.position, fit: fit.name })
  const others = new Map(command.others.map((other) => [halfKey(other.position, other.half), other]))
  const choices: ShellChoice[] = []
  for (const [position, half] of halvesOf(fit)) {
    const proposal = proposals.find((each) => each.position === position)?.[half] ?? null
    const choice = chooseHalf(position, half, proposal, others.get(halfKey(position, half)))
    if (!choice.ok) return choice
    choices.push(choice.value)
  }
  const pairs = checkPairs(state, fit, choices)
  return pairs.ok
    ? done([{ type: 'shells-chosen', version: 1, step: step.value.id, fit: fit.id, choices }])
    : pairs
}

function withoutShells(state: BuildState, fit: Fit): Outcome<null> {
  const fitted = firstFitted(state, fit)
  return fitted === null ? done(null) : refused('shell-in-place', { position: fitted[0], half: fitted[1] })
}

function chooseHalf(
  position: string,
  half: Half,
  proposal: Proposal[Half],
  other: ChooseShells['others'][number] | undefined,
): Outcome<ShellChoice> {
  if (proposal !== null && (other === undefined || other.grade === proposal.grade))
    return done({ position, half, grade: proposal.grade, by: proposal.by, reason: null })
  if (other === undefined) return refused('shell-undecided', { position, half })
  const reason = readReason(other.reason, `why ${position}, ${half} half, gets ${other.grade}`)
  return reason.ok ? done({ position, half, grade: other.grade, by: 'person', reason: reason.value }) : reason
}

/** A person may overrule a proposal, not the spec's rule for which grades may share a bearing. */
function checkPairs(state: BuildState, fit: Fit, choices: readonly ShellChoice[]): Outcome<null> {
  const known = fit.grades.map(({ grade }) => grade)
  const unknown = choices.find(({ grade }) => !known.includes(grade))
  if (unknown !== undefined)
    return refused('grade-unknown', { place: unknown.position, grade: unknown.grade, known })
  const marks = state.marks[fit.id]
  for (const [index, position] of fit.positions.entries()) {
    const [upper = '', lower = ''] = choices
      .filter((each) => each.position === position)
      .map(({ grade }) => grade)
    const allowed = candidatesFor(
      fit,
      position,
      marks?.housing?.[index] ?? null,
      marks?.journal?.[index] ?? null,
    )
    if (!allowed.some((pair) => pair.upper === upper && pair.lower === lower))
      return refused('pair-not-allowed', { position, upper, lower })
  }
  return done(null)
}
