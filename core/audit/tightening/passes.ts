import { angleAmount, torqueAmount, type Torque } from '../../quantity/index.ts'
import { fastenersOf, writtenAt, type EngineSpec, type Pass, type Procedure } from '../../engine/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'
import { torquesOf } from './pulls.ts'

/** How far one fastener has come; `torque` is what its wrench clicked at, null once it was turned or stretched after that. */
type Stage = { readonly at: 'loose' | 'seated' } | { readonly at: 'tight'; readonly torque: Torque | null }

/** One pass, with what is said about every finding in it. */
interface Place {
  readonly procedure: string
  /** Counted from 1. */
  readonly pass: number
  readonly path: string
}

/** The fasteners of a pass, each with its number and how far it has come when the pass begins. */
type PassFasteners = readonly { readonly id: string; readonly number: string; readonly stage: Stage }[]

const fullTurn = 360
const loose: Stage = { at: 'loose' }

/** Whether the passes of each procedure follow on one another, fastener by fastener. */
export function auditPasses(spec: EngineSpec): readonly Finding[] {
  const numbers = new Map(spec.fasteners.map(({ id, number }) => [id, number]))
  return spec.procedures.flatMap((procedure, index) =>
    auditProcedure(procedure, numbers, `procedures[${index}]`),
  )
}

function auditProcedure(
  procedure: Procedure,
  numbers: ReadonlyMap<string, string>,
  path: string,
): readonly Finding[] {
  const stages = new Map<string, Stage>()
  const comers = (ids: readonly string[]): PassFasteners =>
    ids.map((id) => ({ id, number: numbers.get(id) ?? id, stage: stages.get(id) ?? loose }))
  const findings = procedure.passes.flatMap((pass, index) => {
    const ids = fastenersOf(procedure, pass)
    const place = {
      procedure: procedure.name,
      pass: index + 1,
      path: `${path}.passes[${writtenAt(procedure.passes, index)}]`,
    }
    const found = auditPass(pass, comers(ids), place)
    const after = stageAfter(pass)
    for (const id of ids) stages.set(id, after(id, stages.get(id) ?? loose))
    return found
  })
  const endingAt = (at: Stage['at']): readonly string[] =>
    comers([...stages.keys()]).flatMap(({ stage, number }) => (stage.at === at ? number : []))
  const left = { procedure: procedure.name, numbers: endingAt('loose') }
  const seated = { procedure: procedure.name, numbers: endingAt('seated') }
  return [
    ...findings,
    ...(left.numbers.length > 0 ? [fault('left-loose', left, path)] : []),
    ...(seated.numbers.length > 0 ? [doubt('only-seated', seated, path)] : []),
  ]
}

function stageAfter(pass: Pass): (id: string, before: Stage) => Stage {
  switch (pass.kind) {
    case 'seat':
      return (_, before) => (before.at === 'loose' ? { at: 'seated' } : before)
    case 'torque': {
      const torqueOf = torquesOf(pass)
      return (id) => ({ at: 'tight', torque: torqueOf(id) })
    }
    case 'angle':
    case 'tighten-to-stretch':
      return () => ({ at: 'tight', torque: null })
    case 'loosen':
      return () => loose
    case 'recheck':
    case 'length':
    case 'stretch':
    case 'action':
      return (_, before) => before
    default:
      return pass satisfies never
  }
}

function auditPass(pass: Pass, comers: PassFasteners, place: Place): readonly Finding[] {
  switch (pass.kind) {
    case 'angle':
      return auditAngle(pass, comers, place)
    case 'torque':
      return [
        ...afterTurn(
          comers.filter(({ stage }) => stage.at === 'tight' && stage.torque === null),
          place,
        ),
        ...auditTorque(pass, comers, place),
      ]
    case 'recheck':
      return [
        ...findingFor(
          'recheck-before-torque',
          comers.filter(({ stage }) => stage.at !== 'tight'),
          place,
        ),
        ...auditTorque(pass, comers, place),
      ]
    case 'seat':
    case 'loosen':
    case 'length':
    case 'stretch':
    case 'tighten-to-stretch':
    case 'action':
      return []
    default:
      return pass satisfies never
  }
}

function auditAngle(
  pass: Extract<Pass, { kind: 'angle' }>,
  comers: PassFasteners,
  place: Place,
): readonly Finding[] {
  const { path, ...common } = place
  const at = `${path}.target`
  const largestTarget = [pass, ...(pass.others ?? [])].reduce((a, b) => (b.target > a.target ? b : a)).target
  const angle = angleAmount(largestTarget)
  return [
    ...findingFor(
      'angle-without-torque',
      comers.filter(({ stage }) => stage.at === 'loose'),
      place,
    ),
    ...(largestTarget > fullTurn ? [fault('angle-beyond-a-turn', { ...common, angle }, at)] : []),
    ...([pass, ...(pass.others ?? [])].some(({ target }) => target === 0)
      ? [fault('angle-missing', common, at)]
      : []),
  ]
}

/** A torque pass that falls below the one before clicks at once; a recheck above it moves what it should only check. */
function auditTorque(
  pass: Extract<Pass, { kind: 'torque' | 'recheck' }>,
  comers: PassFasteners,
  { path, ...common }: Place,
): readonly Finding[] {
  const torqueOf = torquesOf(pass)
  const odd = comers.flatMap(({ id, number, stage }) => {
    if (stage.at !== 'tight' || stage.torque === null) return []
    const target = torqueOf(id)
    const unlike = pass.kind === 'torque' ? target < stage.torque : target > stage.torque
    return unlike ? [{ number, target, last: stage.torque }] : []
  })
  const [first] = odd
  if (first === undefined) return []
  const facts = {
    ...common,
    numbers: odd.map(({ number }) => number),
    target: torqueAmount(first.target, 'N·m'),
    last: torqueAmount(first.last, 'N·m'),
  }
  return [doubt(pass.kind === 'torque' ? 'torque-below-last' : 'recheck-above-last', facts, `${path}.target`)]
}

/** What was turned by an angle holds more than its torque said: a torque after it clicks at once, or stretches further. */
function afterTurn(comers: PassFasteners, { path, ...common }: Place): readonly Finding[] {
  if (comers.length === 0) return []
  return [doubt('torque-after-turn', { ...common, numbers: comers.map(({ number }) => number) }, path)]
}

function findingFor(
  code: 'angle-without-torque' | 'recheck-before-torque',
  comers: PassFasteners,
  { path, ...common }: Place,
): readonly Finding[] {
  if (comers.length === 0) return []
  return [fault(code, { ...common, numbers: comers.map(({ number }) => number) }, path)]
}
