import {
  askedPlaces,
  awaitsSecondPerson,
  placeRounds,
  bearingAt,
  candidatesAt,
  currentStep,
  isStepDone,
  measuringOf,
  serviceLimits,
  unaccountedParts,
  usesAt,
  type BuildCommand,
} from '../../core/builds/index.ts'
import { difference, inMillimetres, millimetres, newtonMetres, torqueIn } from '../../core/quantity/index.ts'
import type { Pass, Step } from '../../core/engine/index.ts'
import { openFlags, plannedPulls } from '../../core/tightening/index.ts'
import { nextCommand } from '../../tests/core/builds/next-command.ts'
import { nextTurn } from '../steps/run/turn/next-turn.ts'
import type { Engine } from './engines.ts'
import { gearsAt } from './sample-photos.ts'
import { MemoryBuild } from '../bench/memory-build.ts'

/** A build at a moment that is worth seeing. */
export interface Moment {
  readonly step: Step
  /** For example `in mid pass`. */
  readonly name: string
  readonly build: MemoryBuild
}

type StepOf<Kind extends Step['kind']> = Extract<Step, { kind: Kind }>
/** Brings a build from the beginning of a step to a moment of it; false where that step has no such moment. */
type Play<Kind extends Step['kind']> = (build: MemoryBuild, step: StepOf<Kind>) => boolean

const atOnce = () => true

const plays: { readonly [Kind in Step['kind']]: Readonly<Record<string, Play<Kind>>> } = {
  'note-marks': { 'marks to note': atOnce },
  'choose-shells': {
    'shells proposed': atOnce,
    'marks and readings differ': measureAnotherSize,
    'out of limits': pinAWrongPair,
  },
  'fit-shells': { 'half of the shells fitted': fitHalf },
  'fit-part': { 'part to fit': atOnce, 'single-use part used again': useAgain },
  turn: { 'crank to turn': atOnce, 'crank too stiff': turnStiffly },
  'measure-limits': { 'limits to measure': atOnce, 'reading outside its limits': measureOutside },
  'measure-rings': { 'ring gap to measure': atOnce, 'ring gap too narrow': measureNarrow },
  'fit-rings': { 'ring gaps to set': atOnce },
  'fit-places': { 'parts to put in one by one': atOnce },
  lubricate: { 'places to oil': atOnce },
  clean: { 'places to clean': atOnce },
  orient: { 'parts to turn the right way': atOnce },
  align: { 'marks to set': atOnce, 'marks to look at again': setMarks },
  note: { 'something to note': atOnce },
  photo: { 'photo to take': atOnce, 'photo left out': finish, 'photos taken': photograph },
  count: { 'parts to count': atOnce, 'parts all there': allCounted },
  'lay-bead': { 'bead to lay': atOnce, 'bead laid': goOn },
  check: {
    'check to answer': atOnce,
    'step skipped': skip,
    'waits for a second person': (build, step) =>
      goOnUntil(build, () => awaitsSecondPerson(build.engine.spec, build.state, step)),
    'step to be done again': redo,
  },
  'run-procedure': {
    'run at its start': (build) => goOnUntil(build, () => nextOf(build).type === 'pull'),
    'run in mid pass': pullTwoFifths,
    'turn by an angle': turnTwo,
    'run with a flag': (build, step) => pullTwoFifths(build, step) && pullTooHard(build, step),
    'gap to measure': comeTo((pass) => pass.kind === 'seat' && pass.gap !== undefined),
    'length to measure': comeTo(({ kind }) => kind === 'length'),
    'stretch to measure': comeTo(({ kind }) => kind === 'stretch'),
    'stretch to tighten to': comeTo(({ kind }) => kind === 'tighten-to-stretch'),
    'wait between passes': comeTo((pass) => pass.kind === 'action' && pass.waitMinutes !== undefined),
    'reading between passes': comeTo((pass) => pass.kind === 'action' && pass.reading !== undefined),
    'loosening backwards': comeTo((pass) => pass.kind === 'loosen' && pass.reversed === true),
    'recheck to repeat': comeTo((pass) => pass.kind === 'recheck' && pass.repeat !== undefined),
    'run done': finish,
  },
}

/** What moments are called, in the order of a build. */
export const momentNames: readonly string[] = Object.values(plays).flatMap((each) => Object.keys(each))

const known = new Map<Engine, readonly Moment[]>()

/** All moments of a build that goes from bare case to finished, in order. */
export function momentsOf(engine: Engine): readonly Moment[] {
  const found = known.get(engine) ?? walk(engine)
  known.set(engine, found)
  return found
}

function walk(engine: Engine): readonly Moment[] {
  const begun = {
    ...{ id: crypto.randomUUID(), number: '2026-003', name: 'Port side, second rebuild' },
    ...{ serial: 'A 117', person: 'I. Brandvold' },
  }
  const started = MemoryBuild.start(engine, begun)
  if (!started.ok) throw new Error(`no build of ${engine.spec.name} can be begun`)
  const build = started.value
  const moments: Moment[] = []
  // In the order of the work: a step that waits for a later one comes after it.
  for (;;) {
    const step = currentStep(engine.spec, build.state)
    if (step === null) return moments
    for (const [name, play] of Object.entries(plays[step.kind] as Record<string, Play<Step['kind']>>)) {
      const branch = build.branch()
      if (play(branch, step)) moments.push({ step, name, build: branch })
    }
    if (!finish(build, step)) throw new Error(`${step.id} of ${engine.spec.name} does not come to its end`)
  }
}

const nextOf = (build: MemoryBuild): BuildCommand => nextCommand(build.engine.spec, build.state)

function goOn(build: MemoryBuild): true {
  build.does(nextOf(build))
  return true
}

function goOnUntil(build: MemoryBuild, isThere: () => boolean): boolean {
  while (!isThere() && !build.state.finished) goOn(build)
  return isThere()
}

function finish(build: MemoryBuild, step: Step): boolean {
  return goOnUntil(build, () => isStepDone(build.engine.spec, build.state, step))
}

const fitOf = (build: MemoryBuild, { fit }: { readonly fit: string }) =>
  build.engine.spec.fits.find(({ id }) => id === fit)!

/** The second journal is measured 10 µm below what its mark says. */
function measureAnotherSize(build: MemoryBuild, step: StepOf<'choose-shells'>): boolean {
  const fit = fitOf(build, step)
  const position = fit.positions[1] ?? fit.positions[0]!
  const mark = bearingAt(build.state, fit, position).marks.journal
  const band = fit.journal.marks.find((each) => each.mark === mark)?.band
  if (!band) return false
  const typed = String(inMillimetres(difference(band.over, millimetres(0.01))))
  const { planes, directions } = measuringOf(fit)
  const cells = Array.from({ length: planes }, () =>
    Array.from({ length: directions }, () => ({ typed, unit: 'mm' as const })),
  )
  const notMeasured = { partTemperature: '', gaugeTemperature: '', uncertainty: '' }
  const noted = build.act({
    type: 'note-readings',
    step: step.id,
    position,
    part: 'journal',
    cells,
    ...notMeasured,
  })
  return noted.ok && bearingAt(build.state, fit, position).basis === 'undecided'
}

/** The first bearing that has one gets a pair that lies outside the limits. */
function pinAWrongPair(build: MemoryBuild, step: StepOf<'choose-shells'>): boolean {
  const fit = fitOf(build, step)
  const wrong = fit.positions.flatMap((position) =>
    candidatesAt(bearingAt(build.state, fit, position)).flatMap(({ upper, lower, judged }) =>
      judged === null || judged.within === 'inside' ? [] : [{ position, upper, lower }],
    ),
  )[0]
  if (!wrong) return false
  const [upper, lower] = [{ grade: wrong.upper }, { grade: wrong.lower }]
  const reason = 'nothing else in the tray'
  return build.act({ type: 'pin-shells', step: step.id, position: wrong.position, upper, lower, reason }).ok
}

function fitHalf(build: MemoryBuild, step: StepOf<'fit-shells'>): boolean {
  for (let count = 0; count < fitOf(build, step).positions.length; count++) goOn(build)
  return true
}

const procedureOf = (build: MemoryBuild, { procedure }: StepOf<'run-procedure'>) =>
  build.engine.spec.procedures.find(({ id }) => id === procedure)!

function pullTwoFifths(build: MemoryBuild, step: StepOf<'run-procedure'>): boolean {
  const wanted = Math.floor(plannedPulls(procedureOf(build, step)).length * 0.4)
  return goOnUntil(build, () => (build.state.runs[step.procedure]?.pulls.length ?? 0) >= wanted)
}

/** The last pull of the first such pass is next. */
function comeTo(isMeant: (pass: Pass) => boolean): Play<'run-procedure'> {
  return (build, step) => {
    const procedure = procedureOf(build, step)
    const last = plannedPulls(procedure).findLast(({ pass }) => pass === procedure.passes.findIndex(isMeant))
    if (last === undefined) return false
    return goOnUntil(build, () => {
      const next = nextOf(build)
      return next.type === 'pull' && next.pass === last.pass && next.fastener === last.fastener
    })
  }
}

/** The third turn of an angle pass is next. */
function turnTwo(build: MemoryBuild, step: StepOf<'run-procedure'>): boolean {
  const turns = () => nextTurn(build.engine.spec, build.state, step) !== null
  const isDone = () => isStepDone(build.engine.spec, build.state, step)
  goOnUntil(build, () => turns() || isDone())
  for (let count = 0; count < 2 && turns(); count++) goOn(build)
  return turns()
}

/** What is pulled next reads a quarter too much; what has no reading has a problem. */
function pullTooHard(build: MemoryBuild, step: StepOf<'run-procedure'>): boolean {
  const next = nextOf(build)
  if (next.type !== 'pull') return false
  const { procedure, fastener, reading } = next
  if (reading === null || reading.unit === 'mm')
    return build.act({ type: 'note-problem', procedure, fastener, text: 'Thread is rough' }).ok
  const typed = (Number(reading.typed) * 1.25).toFixed(1)
  build.does({ ...next, reading: { ...reading, typed } })
  return openFlags(build.state.runs[step.procedure]).length > 0
}

/** The first part that is new each time goes in a second time. */
function useAgain(build: MemoryBuild, step: StepOf<'fit-part'>): boolean {
  const single = usesAt(build.engine.spec, build.state, step.id).find(
    ({ part }) => part.reuse === 'new-each-time',
  )
  if (single === undefined) return false
  const { part, left } = single
  const as = { condition: 'used-again', reason: 'the new ones come tomorrow', number: '' } as const
  return build.act({ type: 'tick-parts', step: step.id, part: part.id, count: left, ...as }).ok
}

function allCounted(build: MemoryBuild): boolean {
  return goOnUntil(build, () => unaccountedParts(build.engine.spec, build.state).length === 0)
}

/** The first place reads ten times the most of a used part. */
function turnStiffly(build: MemoryBuild, step: StepOf<'turn'>): boolean {
  const { most = null, unit = 'N·m' } = step.turning ?? {}
  if (most === null) return false
  const typed = `${torqueIn(newtonMetres(most * 1.5), unit).toFixed(1)} ${unit}`
  return build.act({ type: 'turn-crank', step: step.id, typed, free: true, note: '' }).ok
}

function measureOutside(build: MemoryBuild, step: StepOf<'measure-limits'>): boolean {
  const [place] = askedPlaces(build.engine.spec, build.state, step)
  if (place === undefined) return false
  const { measure, at } = place
  const upperLimit = serviceLimits(measure)?.most ?? measure.new.most
  if (upperLimit === undefined) return false
  const typed = String(10 * inMillimetres(upperLimit))
  return build.act({ type: 'measure-limit', step: step.id, measure: measure.id, at, typed }).ok
}

/** The first ring gap reads two thirds of its least. */
function measureNarrow(build: MemoryBuild, step: StepOf<'measure-rings'>): boolean {
  const [place] = askedPlaces(build.engine.spec, build.state, step)
  const least = place?.measure.new.least
  if (place === undefined || least === undefined) return false
  const typed = ((2 / 3) * inMillimetres(least)).toFixed(2)
  return build.act({ type: 'measure-limit', step: step.id, measure: place.measure.id, at: place.at, typed })
    .ok
}

/** The marks are set, and the crank was turned. */
function setMarks(build: MemoryBuild, step: StepOf<'align'>): boolean {
  return goOnUntil(build, () =>
    placeRounds(build.state, step).every(({ round, done }) => round === 2 || done !== null),
  )
}

function skip(build: MemoryBuild, { id: step }: Step): boolean {
  return build.act({ type: 'skip-step', step, reason: 'The dial gauge is at the calibration' }).ok
}

/** Nothing stands on it yet. */
function redo(build: MemoryBuild, step: StepOf<'check'>): boolean {
  const reason = 'A bolt was loose'
  return finish(build, step) && build.act({ type: 'redo-step', step: step.id, reason, opens: [] }).ok
}

/** Two photos and a note, the second photo lost since. */
function photograph(build: MemoryBuild, { id }: StepOf<'photo'>): boolean {
  const lost = gearsAt(id, 'From the nose')
  build.does(gearsAt(id, 'Lines meet'))
  build.does({ ...lost, photo: { ...lost.photo, sha256: 'f'.repeat(64) } })
  build.does({ type: 'write-note', step: id, text: 'The line of the shaft gear is faint.' })
  return true
}
