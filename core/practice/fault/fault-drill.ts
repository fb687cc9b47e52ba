import { drawingFacts, faceOfStep, type BuildState } from '../../builds/index.ts'
import type { EngineSpec, Step } from '../../engine/index.ts'
import { bareFacts, type DrawingFacts, type FastenerFact } from '../../layout/index.ts'
import { plannedIn } from '../../tightening/index.ts'
import type { Words } from '../../words/index.ts'
import { faultKindsOf, spoil, type BuildFault, type FaultyBuild } from './build-fault.ts'
import { Chance } from '../chance.ts'
import { finishedBuild } from '../finished/finished-build.ts'
import type { Tally } from '../round.ts'

/** Finished builds of one engine, each with one thing wrong. At least one. */
export interface FaultDrill {
  readonly builds: readonly FaultyBuild[]
}

const mostBuilds = 2

/** Null where nothing can be wrong with the engine that is seen on drawing and sheet. `person` has done the builds. */
export function faultDrill(spec: EngineSpec, seed: string, person: string): FaultDrill | null {
  const chance = new Chance(seed)
  const kinds = chance.shuffled(faultKindsOf(spec))
  const builds = kinds.slice(0, mostBuilds).flatMap((kind) => {
    const right = finishedBuild(spec, chance, person)
    return right.ok ? (spoil[kind](spec, right.value, chance) ?? []) : []
  })
  return builds.length === 0 ? null : { builds }
}

/** What of the drawing is the wrong part: to point at one of them is right. The first is counted by. */
export function partsAtFault(fault: BuildFault): readonly string[] {
  switch (fault.kind) {
    case 'missed-pull':
      return [`fastener/${fault.fastener}`]
    case 'shells-swapped':
      return fault.shells.flatMap(({ position, half }) => {
        const other = half === 'upper' ? 'lower' : 'upper'
        return [`half/${position}/${half}`, `half/${position}/${other}`]
      })
    case 'bead-over-passage':
      return [`bead/${fault.bead}`, `oil-passage/${fault.passage}`]
    case 'cap-turned':
      return [`half/${fault.bearing}/upper`, `half/${fault.bearing}/lower`, `cap/${fault.bearing}`]
    case 'gaps-in-line':
      return fault.rings.map((ring) => `ring/${fault.cylinder}/${ring}`)
    default:
      return fault satisfies never
  }
}

/** The joint face on which it is seen. */
export function faceOfFault(spec: EngineSpec, fault: BuildFault): string {
  const { faces, saddles, rods } = spec.case
  const showing = (position: string) => {
    const shows = saddles.some(({ id }) => id === position)
      ? 'saddles'
      : rods.some(({ id }) => id === position)
        ? 'rods'
        : 'balance'
    return faces.find((face) => face.shows === shows)!.id
  }
  switch (fault.kind) {
    case 'missed-pull':
      return spec.fasteners.find(({ id }) => id === fault.fastener)!.face
    case 'shells-swapped':
      return showing(fault.shells[0].position)
    case 'bead-over-passage':
      return spec.beads.find(({ id }) => id === fault.bead)!.face
    case 'cap-turned':
      return showing(fault.bearing)
    case 'gaps-in-line':
      return faceOfStep(
        spec,
        spec.steps.find(({ id }) => id === fault.step)!,
      )
    default:
      return fault satisfies never
  }
}

/** The faces of a build that have something to see, in the spec's order. */
export function facesWorkedOn(spec: EngineSpec): readonly string[] {
  const worked = new Set(spec.steps.map((step) => faceOfStep(spec, step)))
  return spec.case.faces.map(({ id }) => id).filter((id) => worked.has(id))
}

/** All that a finished build shows on one of its faces; nothing is next, whatever is missing. */
export function finishedFacts(words: Words, spec: EngineSpec, state: BuildState, face: string): DrawingFacts {
  const step = spec.steps.findLast((each) => faceOfStep(spec, each) === face)
  if (step === undefined) return bareFacts(face)
  const facts = drawingFacts(words, spec, state, quiet(step, spec, face))
  const fasteners = Object.entries(facts.fasteners).map(([id, fact]) => [id, withoutTurn(fact)] as const)
  return {
    ...facts,
    ...{ subject: 'everything', fasteners: Object.fromEntries(fasteners) },
    ...{ path: null, nextHalf: null, checked: null, actOn: null, callout: null },
  }
}

/** Of the steps of a face rather its run, which knows the fasteners of the procedure. */
function quiet(last: Step, spec: EngineSpec, face: string): Step {
  return (
    spec.steps.findLast((each) => each.kind === 'run-procedure' && faceOfStep(spec, each) === face) ?? last
  )
}

function withoutTurn({ number, state, share }: FastenerFact): FastenerFact {
  const isTurn = state === 'next' || state === 'after-next'
  const still = share === 1 ? 'done' : share === 0 ? 'waiting' : 'partly-done'
  return { number, share, state: isTurn ? still : state }
}

/** How many fasteners a pass goes over. */
export function pulledInPass(spec: EngineSpec, procedure: string, pass: number): number {
  const found = spec.procedures.find(({ id }) => id === procedure)
  return found === undefined ? 0 : plannedIn(found, pass).filter(({ fastener }) => fastener !== null).length
}

/** One question for the part and one for what is wrong with it, with the wrong answers to each. */
export function faultTally(fault: BuildFault, wrongParts: number, wrongKinds: number): Tally {
  const [about = ''] = partsAtFault(fault)
  return [wrongParts, wrongKinds].map((errors) => ({ about, errors }))
}
