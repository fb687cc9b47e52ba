import { sentenceOf } from '../../core/problem/index.ts'
import {
  askedPlaces,
  awaitsSecondPerson,
  askedRings,
  placeRounds,
  currentStep,
  evolve,
  halfKey,
  replay,
  unaccountedParts,
  type BuildCommand,
  type BuildState,
  type RecordedEvent,
} from '../../core/builds/index.ts'
import type { Answer } from '../../core/contract/index.ts'
import { readSpec, type EngineSpec, type Procedure, type Step } from '../../core/engine/index.ts'
import { nextPull, windowOf, waitOf } from '../../core/tightening/index.ts'
import { lengthBefore, onTarget, runningOf, turnedSo } from '../core/builds/next-command.ts'

/** What a mechanic who does everything right, and reads off only what must be measured, does next; null when the build is finished. */
export function nextCommand(spec: EngineSpec, state: BuildState): BuildCommand | null {
  if (state.finished) return null
  const step = currentStep(spec, state)
  return step === null ? { type: 'finish-build' } : commandFor(spec, state, step)
}

function commandFor(spec: EngineSpec, state: BuildState, step: Step): BuildCommand {
  if (awaitsSecondPerson(spec, state, step)) return { type: 'confirm-step', step: step.id, second: 'Berit' }
  switch (step.kind) {
    case 'note-marks': {
      const { positions, ...fit } = found(spec.fits, step.fit)
      const mark = fit[step.part].marks[0]?.mark ?? ''
      return { type: 'note-marks', step: step.id, typed: positions.map(() => mark).join(' ') }
    }
    case 'choose-shells':
      return { type: 'choose-shells', step: step.id, others: [] }
    case 'fit-shells': {
      const halves = found(spec.fits, step.fit).positions.flatMap((position) =>
        (['upper', 'lower'] as const).map((half) => ({ position, half })),
      )
      const open = halves.find(({ position, half }) => !state.fitted.has(halfKey(position, half)))
      if (!open) throw new Error(`${step.id} has nothing left to fit`)
      return { type: 'fit-half', step: step.id, ...open }
    }
    case 'fit-part':
      return { type: 'fit-part', step: step.id }
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
      const { piston } = askedRings(spec, state, step).find(({ fitted }) => fitted === null)!
      return { type: 'fit-rings', step: step.id, cylinder: piston.cylinder, others: [] }
    }
    case 'measure-limits':
    case 'measure-rings': {
      const { measure, at } = askedPlaces(spec, state, step).find(({ settled }) => !settled)!
      const typed = `${Number(measure.new.least ?? measure.new.most) / 1e6} mm`
      return { type: 'measure-limit', step: step.id, measure: measure.id, at, typed }
    }
    case 'photo':
      return { type: 'skip-photo', step: step.id, reason: 'No camera here' }
    case 'count': {
      const [use] = unaccountedParts(spec, state)
      if (use === undefined) return { type: 'count-parts', step: step.id }
      const { part, left } = use
      const as = { condition: 'new', reason: '', number: '' } as const
      return { type: 'tick-parts', step: use.step.id, part: part.id, count: left, ...as }
    }
    case 'lay-bead':
      return { type: 'lay-bead', step: step.id }
    case 'check': {
      const reading = step.reading ? `${Number(step.reading.least) / 1e6} mm` : null
      return {
        type: 'answer-check',
        step: step.id,
        good: true,
        reading,
        note: state.checks[step.id]?.verdict === 'not-good' ? 'Put right' : '',
      }
    }
    case 'run-procedure':
      return pullIn(spec, state, found(spec.procedures, step.procedure))
  }
}

function pullIn(spec: EngineSpec, state: BuildState, procedure: Procedure): BuildCommand {
  const run = state.runs[procedure.id]
  if (!run) return { type: 'start-run', procedure: procedure.id }
  const next = nextPull(procedure, run)
  if (!next) throw new Error(`${procedure.id} has nothing left to pull`)
  const group = spec.fasteners.find(({ id }) => id === next.fastener)?.group
  const single = spec.fastenerGroups.find(({ id, reuse }) => id === group && reuse === 'new-each-time')
  if (single && !run.declaredNew.includes(single.id))
    return { type: 'declare-new', procedure: procedure.id, group: single.id }
  const window = windowOf(procedure.passes[next.pass]!, next.fastener)
  const isMeasured = window?.kind === 'length' || window?.kind === 'free-length' || window?.kind === 'turning'
  const reading = isMeasured ? onTarget(window, lengthBefore(spec, next.fastener)) : null
  const torque = window?.kind === 'length' && window.torque !== undefined ? onTarget(window.torque, 0) : null
  const seconds = waitOf(procedure.passes[next.pass]!)
  const running = runningOf(spec, procedure.passes[next.pass]!, next.fastener)
  return {
    type: 'pull',
    procedure: procedure.id,
    ...next,
    reading,
    ...(torque !== null && { torque }),
    ...(running !== null && { running }),
    ...(seconds !== null && { waited: { seconds, shortened: null } }),
    moved: false,
    outOfOrder: null,
  }
}

function found<Part extends { readonly id: string }>(parts: readonly Part[], id: string): Part {
  const part = parts.find((it) => it.id === id)
  if (!part) throw new Error(`the spec has no ${id}`)
  return part
}

/** Does everything that is left of a build; answers with the number of its entries. */
export async function finishBuild(work: {
  readonly build: string
  readonly specText: string
  readonly events: readonly RecordedEvent[]
  readonly act: (build: string, after: number, command: BuildCommand) => Promise<Answer<'builds.act'>>
}): Promise<number> {
  const read = readSpec(work.specText)
  if (!read.ok) throw new Error('the spec cannot be read')
  let state = replay(work.events)
  for (let command = nextCommand(read.spec, state); command; command = nextCommand(read.spec, state)) {
    const answer = await work.act(work.build, state.seq, command)
    if (!answer.ok) throw new Error(`${command.type}: ${sentenceOf(answer.problem)}`)
    state = answer.value.events.reduce(evolve, state)
  }
  return state.seq
}
