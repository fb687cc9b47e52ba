import { wholeRange, type Verdict } from '../../bearing/index.ts'
import type {
  BeadState,
  BearingFact,
  DrawingFacts,
  DrawingSubject,
  FastenerFact,
  HalfFact,
} from '../../layout/index.ts'
import { angleAmount, lengthAmount, torqueAmount, type TorqueUnit } from '../../quantity/index.ts'
import type { Words } from '../../words/index.ts'
import { isPlacedStep, type EngineSpec, type Fit, type Procedure, type Step } from '../../engine/index.ts'
import {
  asRun,
  capOfPull,
  fastenerStates,
  flagInShort,
  lastLivePull,
  nextPull,
  openFlags,
  prevailingIn,
  runningBefore,
  runningTorque,
  windowNow,
  withRunning,
  type Run,
} from '../../tightening/index.ts'
import { bearingAt, type BearingCase } from '../shells/bearing-at.ts'
import { clearanceAt } from '../shells/clearance-at.ts'
import { halves, type Half } from '../events/events.ts'
import { faceOfStep } from '../steps/face-of-step.ts'
import { placeRounds } from '../placed/placed-places.ts'
import { proposalsFor } from '../shells/proposals.ts'
import { nextHalf } from '../shells/next-half.ts'
import { notesOn, placeOfCheck } from './notes.ts'
import { halfKey, type BuildState } from '../events/state.ts'
import { procedureOf } from '../steps/steps.ts'

/**
 * What the drawing of a step shows of the build: the step's face, every shell chosen or, while choosing,
 * proposed, the fasteners of the face as far as they have come, whose turn it is where the step is a run or fits
 * shells, and what is to be noted beside it. While a flag of the run waits for its answer nothing is next, unless it is
 * among those that were put off (`putOff`, by number). `unit` is the one of the wrench in use, `picked` what was tapped.
 */
export function drawingFacts(
  words: Words,
  spec: EngineSpec,
  state: BuildState,
  step: Step,
  unit: TorqueUnit = 'N·m',
  picked: string | null = null,
  putOff: readonly number[] = [],
): DrawingFacts {
  const next = nextHalf(spec, state, step, picked)
  const face = faceOfStep(spec, step)
  const procedure = step.kind === 'run-procedure' ? procedureOf(spec, step.procedure) : null
  const run = procedure === null ? undefined : state.runs[procedure.id]
  const flag = openFlags(run).find(({ number }) => !putOff.includes(number)) ?? null
  const shown = step.kind === 'choose-shells' ? withProposal(spec, state, step.fit) : state
  return {
    face,
    subject: subjectOf(step),
    bearings: Object.fromEntries(spec.fits.flatMap((fit) => bearingsOf(words, shown, fit))),
    fasteners: fastenersOn(spec, state, face, procedure),
    cap: procedure === null ? null : capNow(procedure, run),
    path: procedure === null ? null : pathOf(procedure, run),
    crank: 'shows' in step && step.shows === 'crank',
    gasket: step.kind === 'fit-part',
    nextHalf: next && halfKey(next.position, next.half),
    checked: checkedIn(spec, state, step, face),
    actOn: flag && (flag.fastener === null ? `face/${face}` : `fastener/${flag.fastener}`),
    callout: next
      ? words.described.fit(next)
      : procedure === null
        ? null
        : flag !== null && run !== undefined
          ? flagInShort(words, procedure, run, flag)
          : calloutOf(words, spec, procedure, run, unit),
    notes: notesOn(words, spec, state, face),
    beads: beadsOn(spec, state, step, face),
  }
}

/** What the drawing of a step is about. */
export function subjectOf({ kind }: Step): DrawingSubject {
  return subjects[kind]
}

/** What the step is about now: where a check belongs, or the part in the face at which the next place is. */
function checkedIn(spec: EngineSpec, state: BuildState, step: Step, face: string): string | null {
  if (step.kind === 'check') return placeOfCheck(spec, step, face)
  if (!isPlacedStep(step)) return null
  const part = placeRounds(state, step).find(({ done }) => done === null)?.place.facePart
  return part === undefined ? null : `face-part/${part}`
}

const subjects: Readonly<Record<Step['kind'], DrawingSubject>> = {
  'note-marks': 'shells',
  'choose-shells': 'shells',
  'fit-shells': 'shells',
  'fit-part': 'check',
  'lay-bead': 'bead',
  check: 'check',
  count: 'check',
  'measure-limits': 'check',
  'measure-rings': 'check',
  'fit-rings': 'check',
  'fit-places': 'check',
  lubricate: 'check',
  clean: 'check',
  orient: 'check',
  align: 'check',
  note: 'check',
  photo: 'check',
  turn: 'check',
  'run-procedure': 'tightening',
}

/**
 * While shells are being chosen, those that are proposed are on the drawing already; none of them can be in
 * place.
 */
function withProposal(spec: EngineSpec, state: BuildState, fit: string): BuildState {
  if (state.shells[fit] !== undefined) return state
  const proposed = proposalsFor(spec, state, fit).flatMap((proposal) =>
    halves.flatMap((half) => {
      const { position } = proposal
      const wanted = proposal[half]
      if (wanted === null) return []
      const { grade, by, label } = wanted
      return [{ position, half, grade, by, reason: null, ...(label !== undefined && { label }) }]
    }),
  )
  return { ...state, shells: { ...state.shells, [fit]: proposed } }
}

function bearingsOf(words: Words, state: BuildState, fit: Fit): readonly (readonly [string, BearingFact])[] {
  return fit.positions.map((position) => {
    const upper = halfFact(state, fit, position, 'upper')
    const lower = halfFact(state, fit, position, 'lower')
    const known = clearanceAt(state, fit, position)
    const clearance =
      known === null ? null : words.amounts.amount(lengthAmount(known.clearance.nominal, 'µm'))
    const flag = flagOf(words, bearingAt(state, fit, position))
    const withinLimits = known === null || known.within === 'inside'
    return [
      position,
      {
        ...{ upper, lower, clearance, withinLimits },
        ...(known !== null && !withinLimits && { judged: judgedText(words, fit, known.within) }),
        ...(flag !== null && { flag }),
      },
    ]
  })
}

/** `too loose, 20 to 47 µm allowed`. */
function judgedText(words: Words, { clearance }: Fit, within: Verdict): string {
  const verdict = words.clearance.verdicts[within]
  return words.described.judged({ verdict, limits: wholeRange(words, clearance) })
}

/** What a person has to look at before the bearing is closed; null where nothing is. */
function flagOf(words: Words, { basis, sizeDispute, shapeFaults }: BearingCase): string | null {
  const { bearingFlags } = words.described
  if (basis === 'undecided')
    return bearingFlags[sizeDispute?.reason === null ? 'sizes-differ' : 'mark-differs']
  return shapeFaults.length > 0 ? bearingFlags['out-of-shape'] : null
}

function halfFact(state: BuildState, fit: Fit, position: string, half: Half): HalfFact | null {
  const choice = state.shells[fit.id]?.find((each) => each.position === position && each.half === half)
  const grade = fit.grades.find((each) => each.grade === choice?.grade)
  if (grade === undefined) return null
  const { colour, pattern } = grade
  return { grade: grade.grade, colour, pattern, fitted: state.fitted.has(halfKey(position, half)) }
}

/**
 * The fasteners of a face that were or are to be pulled: by the procedure under way, else by the last one that
 * was begun.
 */
function fastenersOn(
  spec: EngineSpec,
  state: BuildState,
  face: string,
  current: Procedure | null,
): DrawingFacts['fasteners'] {
  const begun = spec.procedures.filter(({ id }) => state.runs[id] !== undefined && id !== current?.id)
  const progress = new Map(
    [...begun, ...(current === null ? [] : [current])].flatMap((procedure) => [
      ...fastenerStates(procedure, state.runs[procedure.id]),
    ]),
  )
  return Object.fromEntries(
    spec.fasteners
      .filter((fastener) => fastener.face === face && progress.has(fastener.id))
      .map(({ id, number }): [string, FastenerFact] => {
        const { state, share } = progress.get(id)!
        return [id, { number, state, share }]
      }),
  )
}

/** The cap that is worked on, where the procedure goes cap by cap and is under way. */
function capNow(procedure: Procedure, run: Run | undefined): NonNullable<DrawingFacts['cap']> | null {
  const next = run === undefined ? null : nextPull(asRun(procedure, run), run)
  const cap = next && capOfPull(procedure, next)
  return cap && { bearing: cap.id, fasteners: cap.fasteners }
}

function pathOf(procedure: Procedure, run: Run | undefined): DrawingFacts['path'] {
  const from = lastLivePull(run)?.fastener ?? null
  const to = nextPull(procedure, run)?.fastener ?? null
  return from === null || to === null || from === to ? null : { from, to }
}

function calloutOf(
  { amounts, described }: Words,
  spec: EngineSpec,
  procedure: Procedure,
  run: Run | undefined,
  unit: TorqueUnit,
): string | null {
  const next = run === undefined ? null : nextPull(procedure, run)
  const pass = next === null ? undefined : procedure.passes[next.pass]
  if (next === null || pass === undefined) return null
  const window = windowNow(procedure, run, next)
  const isOnTop = prevailingIn(spec, pass, next.fastener)?.counts === 'on-top'
  if (window?.kind === 'torque' && isOnTop) {
    const running = runningBefore(procedure, run, next.fastener)
    // Until it is read what goes on top, there is nothing to pull to.
    if (running === null) return described.runDown
    return amounts.amount(torqueAmount(withRunning(window, runningTorque(running)).target, unit))
  }
  if (window?.kind === 'angle') return amounts.amount(angleAmount(window.target))
  if (window?.kind === 'torque') return amounts.amount(torqueAmount(window.target, unit))
  switch (pass.kind) {
    case 'seat':
      return isOnTop ? described.runDown : described.byHand
    case 'loosen':
      return described.loosen
    case 'length':
    case 'stretch':
      return described.measure
    case 'tighten-to-stretch':
      return described.tighten
    default:
      return null
  }
}

/** The bead that the step lays, and those of the face that are laid. */
function beadsOn(spec: EngineSpec, state: BuildState, step: Step, face: string): DrawingFacts['beads'] {
  const toLay = step.kind === 'lay-bead' ? step.bead : null
  return Object.fromEntries(
    spec.beads
      .filter((bead) => bead.face === face)
      .flatMap(({ id }): readonly (readonly [string, BeadState])[] => {
        if (state.beads[id] !== undefined) return [[id, 'laid']]
        return id === toLay ? [[id, 'to-lay']] : []
      }),
  )
}
