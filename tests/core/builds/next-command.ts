import {
  askedPlaces,
  awaitsSecondPerson,
  askedRings,
  placeRounds,
  currentStep,
  halfKey,
  proposalsFor,
  unaccountedParts,
  usesAt,
  type BuildCommand,
  type BuildState,
  type PartUse,
} from '../../../core/builds/index.ts'
import { amountsIn, half, inMillimetres, newtonMetres, sum, torqueIn } from '../../../core/quantity/index.ts'
import { en } from '../../../core/words/index.ts'
import type { EngineSpec, Fit, Pass, Step, TurningTorque } from '../../../core/engine/index.ts'
import {
  nextPull,
  openFlags,
  plannedPulls,
  prevailingIn,
  windowOf,
  withRunning,
  type AcceptanceWindow,
  waitOf,
} from '../../../core/tightening/index.ts'

const shown = amountsIn(en)

type StepOf<Kind extends Step['kind']> = Extract<Step, { kind: Kind }>

/**
 * What a person without trouble does next on any engine: readings on target, checks good, proposals taken.
 */
export function nextCommand(spec: EngineSpec, state: BuildState): BuildCommand {
  const step = currentStep(spec, state)
  if (step === null) return { type: 'finish-build' }
  if (awaitsSecondPerson(spec, state, step)) return { type: 'confirm-step', step: step.id, second: 'Berit' }
  switch (step.kind) {
    case 'note-marks':
      return { type: 'note-marks', step: step.id, typed: someMarks(fitOf(spec, step), step.part) }
    case 'choose-shells':
      return { type: 'choose-shells', step: step.id, others: othersWhereNoneIsProposed(spec, state, step) }
    case 'fit-shells':
      return { type: 'fit-half', step: step.id, ...nextHalf(state, fitOf(spec, step)) }
    case 'fit-part': {
      const use = usesAt(spec, state, step.id).find(({ left }) => left > 0)
      return use === undefined ? { type: 'fit-part', step: step.id } : ticked(use)
    }
    case 'lubricate':
    case 'clean':
    case 'orient':
    case 'align':
    case 'fit-places':
    case 'note': {
      const open = placeRounds(state, step).find(({ done }) => done === null)!
      const ofPlace = { step: step.id, place: open.place.id, round: open.round }
      return { type: 'do-place', ...ofPlace, note: step.kind === 'note' ? 'as on the plate' : '' }
    }
    case 'turn':
      return { type: 'turn-crank', step: step.id, typed: turnedSo(step.turning), free: true, note: '' }
    case 'fit-rings': {
      const use = usesAt(spec, state, step.id).find(({ left }) => left > 0)
      if (use !== undefined) return ticked(use)
      const { piston } = askedRings(spec, state, step).find(({ fitted }) => fitted === null)!
      return { type: 'fit-rings', step: step.id, cylinder: piston.cylinder, others: [] }
    }
    case 'measure-limits':
    case 'measure-rings': {
      const { measure, at } = askedPlaces(spec, state, step).find(({ settled }) => !settled)!
      const { least, most } = measure.new
      const between = least !== undefined && most !== undefined ? half(sum(least, most)) : (least ?? most!)
      const place = { step: step.id, measure: measure.id, at }
      return { type: 'measure-limit', ...place, typed: shown.length(between, 'mm') }
    }
    case 'photo':
      return { type: 'skip-photo', step: step.id, reason: 'No camera here' }
    case 'count': {
      const [use] = unaccountedParts(spec, state)
      return use === undefined ? { type: 'count-parts', step: step.id } : ticked(use)
    }
    case 'lay-bead':
      return { type: 'lay-bead', step: step.id }
    case 'check': {
      const middle = step.reading && half(sum(step.reading.least, step.reading.most))
      const reading = middle === undefined ? null : shown.length(middle, 'mm')
      return {
        type: 'answer-check',
        step: step.id,
        good: true,
        reading,
        note: state.checks[step.id]?.verdict === 'not-good' ? 'Put right' : '',
      }
    }
    case 'run-procedure':
      return nextInRun(spec, state, step)
    default:
      return step satisfies never
  }
}

/** All that is left of a part at one step, new. */
function ticked({ part, step, left }: PartUse): BuildCommand {
  const as = { condition: 'new', reason: '', number: '' } as const
  return { type: 'tick-parts', step: step.id, part: part.id, count: left, ...as }
}

function fitOf(spec: EngineSpec, step: { readonly fit: string }): Fit {
  return spec.fits.find(({ id }) => id === step.fit)!
}

/**
 * A string of marks off an engine that is neither all new nor all worn: each mark of the alphabet in turn.
 */
function someMarks(fit: Fit, part: 'housing' | 'journal'): string {
  const { marks } = fit[part]
  return fit.positions.map((_, index) => marks[index % marks.length]!.mark).join(' ')
}

function othersWhereNoneIsProposed(spec: EngineSpec, state: BuildState, step: StepOf<'choose-shells'>) {
  const grade = fitOf(spec, step).grades[0]!.grade
  const reason = 'measured with the bore gauge'
  return proposalsFor(spec, state, step.fit)
    .filter(({ upper }) => upper === null)
    .flatMap(({ position }) => [
      { position, half: 'upper' as const, grade, reason },
      { position, half: 'lower' as const, grade, reason },
    ])
}

function nextHalf(state: BuildState, fit: Fit) {
  const halves = fit.positions.flatMap((position) => [
    { position, half: 'upper' as const },
    { position, half: 'lower' as const },
  ])
  return halves.find((each) => !state.fitted.has(halfKey(each.position, each.half)))!
}

function nextInRun(spec: EngineSpec, state: BuildState, step: StepOf<'run-procedure'>): BuildCommand {
  const { procedure } = step
  const plan = spec.procedures.find(({ id }) => id === procedure)!
  const run = state.runs[procedure]
  if (run === undefined) return { type: 'start-run', procedure }
  if (run.paused !== null) return { type: 'resume-run', procedure }
  const pulled = new Set(plannedPulls(plan).map(({ fastener }) => fastener))
  const group = spec.fastenerGroups.find(
    ({ id, reuse }) =>
      reuse === 'new-each-time' &&
      !run.declaredNew.includes(id) &&
      spec.fasteners.some((fastener) => fastener.group === id && pulled.has(fastener.id)),
  )
  if (group !== undefined) return { type: 'declare-new', procedure, group: group.id }
  const next = nextPull(plan, run)
  if (next === null)
    return { type: 'answer-flag', procedure, flag: openFlags(run)[0]!.number, answer: 'Put right.' }
  const window = windowOf(plan.passes[next.pass]!, next.fastener)
  const running = runningOf(spec, plan.passes[next.pass]!, next.fastener)
  const onTop = (torqueWindow: TorqueWindow) =>
    withRunning(torqueWindow, newtonMetres(running === null ? 0 : Number(running.typed)))
  const target = window?.kind === 'torque' ? onTop(window) : window
  const reading = target === null ? null : onTarget(target, lengthBefore(spec, next.fastener))
  const torque =
    window?.kind === 'length' && window.torque !== undefined ? onTarget(onTop(window.torque), 0) : null
  const wait = waitOf(plan.passes[next.pass]!)
  return {
    type: 'pull',
    procedure,
    ...next,
    reading,
    ...(torque !== null && { torque }),
    ...(running !== null && { running }),
    ...(wait !== null && { waited: { seconds: wait, shortened: null } }),
    moved: false,
    outOfOrder: null,
  }
}

type TorqueWindow = Extract<AcceptanceWindow, { kind: 'torque' }>

/** What a fastener takes to run down, where that goes on top of its torque: a quarter of the most. */
export function runningOf(spec: EngineSpec, pass: Pass, fastener: string | null) {
  const prevailing = prevailingIn(spec, pass, fastener)
  if (prevailing?.counts !== 'on-top') return null
  return { typed: (prevailing.most / 4).toFixed(3), unit: 'N·m' } as const
}

/** What a fastener measures before it is pulled, in mm: 80, or its grip where that is longer. */
export function lengthBefore(spec: EngineSpec, fastener: string | null): number {
  const id = spec.fasteners.find((each) => each.id === fastener)?.group
  const grip = spec.fastenerGroups.find((each) => each.id === id)?.grip
  return Math.max(80, grip === undefined ? 0 : inMillimetres(grip))
}

/** What the crank takes: 1.6 N·m each time, as far as the limits let it. Null where it is turned by hand. */
export function turnedSo(turning: TurningTorque | undefined): string | null {
  if (turning === undefined) return null
  const torque = Math.max(Math.min(turning.most ?? 2, 1.6), turning.least ?? 0)
  return `${torqueIn(newtonMetres(torque), turning.unit).toFixed(4)} ${turning.unit}`
}

/** What the scale shows where the target is met to a thousandth; the upper limit of what is measured. */
export function onTarget(window: AcceptanceWindow, before: number) {
  switch (window.kind) {
    case 'angle':
      return { typed: window.target.toFixed(3), unit: '°' } as const
    case 'torque':
      return { typed: window.target.toFixed(3), unit: 'N·m' } as const
    case 'length': {
      const from = window.of === 'stretch' ? before : 0
      return { typed: String(from + inMillimetres(window.most)), unit: 'mm' } as const
    }
    case 'turning':
      return { typed: turnedSo(window)!, unit: window.unit } as const
    case 'free-length':
      return { typed: String(before), unit: 'mm' } as const
    default:
      return window satisfies never
  }
}
