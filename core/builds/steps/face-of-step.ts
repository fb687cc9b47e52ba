import type { EngineSpec, Face, Step } from '../../engine/index.ts'
import { fitOf, procedureOf } from './steps.ts'

const shownFor = { main: 'saddles', 'big-end': 'rods', balance: 'balance' } as const

/**
 * The joint face that is drawn while a step is worked on: its own, or the one that shows its bearings, or
 * else the first.
 */
export function faceOfStep(spec: EngineSpec, step: Step): string {
  const [first] = spec.case.faces
  switch (step.kind) {
    case 'note-marks':
    case 'choose-shells':
    case 'fit-shells': {
      const { kind } = fitOf(spec, step.fit)
      return faceShowing(spec, shownFor[kind])?.id ?? first!.id
    }
    case 'run-procedure':
      return procedureOf(spec, step.procedure).face
    case 'lay-bead':
      return spec.beads.find(({ id }) => id === step.bead)?.face ?? first!.id
    case 'measure-limits':
    case 'measure-rings':
    case 'fit-rings':
    case 'fit-places':
    case 'lubricate':
    case 'clean':
    case 'orient':
    case 'align':
    case 'note':
    case 'photo':
    case 'turn':
    case 'fit-part':
    case 'check':
      return step.face ?? first!.id
    case 'count':
      return first!.id
    default:
      return step satisfies never
  }
}

function faceShowing(spec: EngineSpec, what: Face['shows']): Face | undefined {
  return spec.case.faces.find(({ shows }) => shows === what)
}
