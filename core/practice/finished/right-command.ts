import { clearanceWith, type Pair } from '../../bearing/index.ts'
import {
  askedPlaces,
  askedRings,
  placeRounds,
  currentStep,
  halfKey,
  unaccountedParts,
  type BuildCommand,
  type BuildState,
  type MeasureStep,
} from '../../builds/index.ts'
import type { EngineSpec, Fit, Pass, Step, TurningTorque } from '../../engine/index.ts'
import { formatNumber, inMillimetres, newtonMetres, torqueIn, type Torque } from '../../quantity/index.ts'
import {
  nextPull,
  plannedPulls,
  prevailingIn,
  waitOf,
  windowOf,
  withRunning,
  type AcceptanceWindow,
} from '../../tightening/index.ts'
import type { Chance } from '../chance.ts'
import { chartAnswers } from '../chart-drill.ts'
import type { Manner } from './manner.ts'

interface BothMarks {
  readonly housing: string
  readonly journal: string
}
export type MarksByFit = ReadonlyMap<string, readonly BothMarks[]>

/** Marks of one bearing for which there are shells inside the limits; by the chart where it says anything. */
function someMarks(fit: Fit, position: string, chance: Chance): BothMarks {
  const byChart = chartAnswers(fit, position)
  const isInside = ({ housing, journal }: BothMarks, { upper, lower }: Pair) => {
    const judged = clearanceWith(fit, housing, journal, upper, lower)
    return !judged.ok || judged.value.within === 'inside'
  }
  if (byChart.length > 0)
    return chance.shuffled(byChart).find((each) => isInside(each, each.key)) ?? chance.one(byChart)
  const grades = fit.grades.map(({ grade }) => grade)
  const pairs = grades.flatMap((upper) => grades.map((lower) => ({ upper, lower })))
  const all = fit.housing.marks.flatMap(({ mark: housing }) =>
    fit.journal.marks.map(({ mark: journal }) => ({ housing, journal })),
  )
  const some = chance.shuffled(all)
  return (
    some.find((marks) => pairs.some((pair) => isInside(marks, pair))) ??
    some[0] ?? { housing: fit.housing.marks[0]?.mark ?? '?', journal: fit.journal.marks[0]?.mark ?? '?' }
  )
}

/** Marks for the whole engine, drawn by chance, with shells that belong to them. */
export function marksOf({ fits }: EngineSpec, chance: Chance): MarksByFit {
  return new Map(fits.map((fit) => [fit.id, fit.positions.map((at) => someMarks(fit, at, chance))]))
}

/** What is next for a person who does everything right. */
export function rightCommand(
  spec: EngineSpec,
  state: BuildState,
  marks: MarksByFit,
  manner: Manner,
): BuildCommand {
  const step = currentStep(spec, state)
  if (step === null) return { type: 'finish-build' }
  switch (step.kind) {
    case 'note-marks': {
      const typed = (marks.get(step.fit) ?? []).map((each) => each[step.part]).join(' ')
      return { type: 'note-marks', step: step.id, typed }
    }
    case 'choose-shells':
      return { type: 'choose-shells', step: step.id, others: [] }
    case 'fit-shells': {
      const positions = spec.fits.find(({ id }) => id === step.fit)?.positions ?? []
      const halves = positions.flatMap((position) =>
        (['upper', 'lower'] as const).map((half) => ({ position, half })),
      )
      const open = halves.find((each) => !state.fitted.has(halfKey(each.position, each.half)))
      return { type: 'fit-half', step: step.id, ...(open ?? halves[0] ?? { position: '', half: 'upper' }) }
    }
    case 'fit-part':
      return { type: 'fit-part', step: step.id }
    case 'lay-bead':
      return { type: 'lay-bead', step: step.id }
    case 'check': {
      const reading = step.reading === undefined ? null : manner.measures(step.reading)
      return { type: 'answer-check', step: step.id, good: true, reading, note: '' }
    }
    case 'lubricate':
    case 'clean':
    case 'orient':
    case 'align':
    case 'fit-places':
    case 'note': {
      const open = placeRounds(state, step).find(({ done }) => done === null)!
      const ofPlace = { step: step.id, place: open.place.id, round: open.round }
      return { type: 'do-place', ...ofPlace, note: step.kind === 'note' ? manner.notes(step) : '' }
    }
    case 'photo':
      return { type: 'skip-photo', step: step.id, reason: manner.withoutPhoto(step) }
    case 'turn':
      return {
        type: 'turn-crank',
        step: step.id,
        typed: step.turning ? turnedSo(spec, step.turning) : null,
        free: true,
        note: '',
      }
    case 'measure-limits':
    case 'measure-rings':
      return readingFor(spec, state, step, manner)
    case 'fit-rings': {
      const open = askedRings(spec, state, step).find(({ fitted }) => fitted === null)
      return { type: 'fit-rings', step: step.id, cylinder: open?.piston.cylinder ?? 0, others: [] }
    }
    case 'count':
      return countFor(spec, state, step, manner)
    case 'run-procedure':
      return pullFor(spec, state, step, manner)
    default:
      return step satisfies never
  }
}

/** The next place reads what it should. */
function readingFor(spec: EngineSpec, state: BuildState, step: MeasureStep, manner: Manner): BuildCommand {
  const open = askedPlaces(spec, state, step).find(({ settled }) => !settled)
  const place = { step: step.id, measure: open?.measure.id ?? '', at: open?.at ?? '' }
  return { type: 'measure-limit', ...place, typed: manner.measures(open?.measure.new ?? {}) }
}

/** Ticks what the parts list still has open, and counts it then. */
function countFor(spec: EngineSpec, state: BuildState, { id }: Step, manner: Manner): BuildCommand {
  const [open] = unaccountedParts(spec, state)
  if (open === undefined) return { type: 'count-parts', step: id }
  const condition = manner.usesAgain(open.part) ? ('used-again' as const) : ('new' as const)
  const before = condition === 'used-again' ? { before: 1 } : {}
  const ticked = { step: open.step.id, part: open.part.id, count: open.left }
  return { type: 'tick-parts', ...ticked, condition, ...before, reason: '', number: '' }
}

function pullFor(
  spec: EngineSpec,
  state: BuildState,
  step: Extract<Step, { kind: 'run-procedure' }>,
  manner: Manner,
): BuildCommand {
  const { procedure: id } = step
  const procedure = spec.procedures.find((each) => each.id === id)
  const run = state.runs[id]
  if (procedure === undefined || run === undefined) return { type: 'start-run', procedure: id }
  const pulled = new Set(plannedPulls(procedure).map(({ fastener }) => fastener))
  const group = spec.fastenerGroups.find(
    (each) =>
      each.reuse === 'new-each-time' &&
      !run.declaredNew.includes(each.id) &&
      spec.fasteners.some((fastener) => fastener.group === each.id && pulled.has(fastener.id)),
  )
  if (group !== undefined) return { type: 'declare-new', procedure: id, group: group.id }
  const next = nextPull(procedure, run)
  const pass = next === null ? undefined : procedure.passes[next.pass]
  // Nothing is left to pull and the step is not done: `decide` says why.
  if (next === null || pass === undefined) return { type: 'start-run', procedure: id }
  const window = windowOf(pass, next.fastener)
  const before = lengthOfFree(spec, next.fastener)
  const torque = window?.kind === 'length' ? window.torque : undefined
  const seconds = waitOf(pass)
  const running = runningOf(spec, pass, next.fastener)
  const onTop = (free: TorqueWindow) => withRunning(free, running ?? noTorque)
  return {
    ...{ type: 'pull', procedure: id, ...next },
    reading:
      window === null
        ? null
        : shownReading(spec, window.kind === 'torque' ? onTop(window) : window, before, manner),
    ...(torque !== undefined && { torque: shownReading(spec, onTop(torque), before, manner) }),
    ...(running !== null && { running: { typed: running.toFixed(3), unit: 'N·m' as const } }),
    ...(seconds !== null && { waited: { seconds, shortened: null } }),
    ...{ moved: false, outOfOrder: null },
  }
}

const noTorque = newtonMetres(0)
type TorqueWindow = Extract<AcceptanceWindow, { kind: 'torque' }>

/** What a fastener takes to run down, where that goes on top: half of the most, at each pull alike. Null elsewhere. */
function runningOf(spec: EngineSpec, pass: Pass, fastener: string | null): Torque | null {
  const prevailing = prevailingIn(spec, pass, fastener)
  return prevailing?.counts === 'on-top' ? newtonMetres(prevailing.most / 2) : null
}

/** What a fastener measures before it is pulled, in mm: its grip, or 80 where that is longer. */
function lengthOfFree(spec: EngineSpec, fastener: string | null): number {
  const id = spec.fasteners.find((each) => each.id === fastener)?.group
  const grip = spec.fastenerGroups.find((each) => each.id === id)?.grip
  return Math.max(80, grip === undefined ? 0 : inMillimetres(grip))
}

/** What the crank takes: half of the smallest most of the engine, each time alike, so that it never rises; more where a least asks it. */
function turnedSo(spec: EngineSpec, { least, unit }: TurningTorque): string {
  const all = [
    ...spec.steps.flatMap((step) => (step.kind === 'turn' ? (step.turning ?? []) : [])),
    ...spec.procedures.flatMap(({ passes }) =>
      passes.flatMap((pass) => (pass.kind === 'action' ? (pass.turning ?? []) : [])),
    ),
  ]
  const smallest = Math.min(...all.map(({ most }) => most ?? 2))
  const torque = newtonMetres(Math.max(least ?? 0, smallest / 2))
  return `${formatNumber(torqueIn(torque, unit), 4)} ${unit}`
}

/** What the instrument shows. */
function shownReading(spec: EngineSpec, window: AcceptanceWindow, before: number, manner: Manner) {
  switch (window.kind) {
    case 'angle':
      return { typed: manner.pulls({ ...window, unit: '°' }), unit: '°' } as const
    case 'torque':
      return { typed: manner.pulls({ ...window, unit: 'N·m' }), unit: 'N·m' } as const
    case 'length': {
      const from = window.of === 'stretch' ? before : 0
      return { typed: String(from + inMillimetres(window.most)), unit: 'mm' } as const
    }
    case 'free-length':
      return { typed: String(before), unit: 'mm' } as const
    case 'turning':
      return { typed: turnedSo(spec, window), unit: window.unit }
    default:
      return window satisfies never
  }
}
