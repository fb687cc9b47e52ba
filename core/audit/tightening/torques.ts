import { formatThread, torqueAgainstProof, type TorqueAgainstProof } from '../../joint/index.ts'
import type { Amount } from '../../words/index.ts'
import { forceAmount, torqueAmount, type Torque } from '../../quantity/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'
import { pullsOf, type Pull } from './pulls.ts'
import { slipOf, tooLittle, tooMuch } from './slip.ts'

/** Every torque, with its limits, against the proof load of the fasteners it is for, over the friction of their threads. */
export function auditTorques(spec: EngineSpec): readonly Finding[] {
  return pullsOf(spec).flatMap(auditPull)
}

function auditPull(pull: Pull): readonly Finding[] {
  const { target, last, path } = pull
  const weighed = torqueAgainstProof(pull.screw, pull)
  const atTarget = torqueAgainstProof(pull.screw, { target }).verdict
  const isPlausible = (torque: Torque): boolean =>
    torqueAgainstProof(pull.screw, { target: torque }).verdict === 'plausible'
  switch (weighed.verdict) {
    case 'overload':
    case 'likely-overload': {
      // What the target alone does not do, its upper limit does: no mistake of unit explains that.
      const byTarget = atTarget === weighed.verdict
      const slip = byTarget ? slipOf(target, tooMuch, isPlausible) : null
      const torque = byTarget ? target : (pull.most ?? target)
      const facts = {
        ...factsOf(pull, byTarget ? torqueAgainstProof(pull.screw, { target }) : weighed),
        slip,
      }
      return weighed.verdict === 'overload'
        ? [fault('torque-overload', { ...facts, torque: inNewtonMetres(torque) }, path)]
        : [doubt('torque-likely-overload', { ...facts, torque: inNewtonMetres(torque) }, path)]
    }
    case 'next-to-no-clamp': {
      if (!last) return []
      const slip = slipOf(target, tooLittle, isPlausible)
      const finding = slip === null ? doubt : fault
      const facts = { ...factsOf(pull, weighed), torque: inNewtonMetres(target), slip }
      return [finding('torque-clamps-nothing', facts, path)]
    }
    case 'plausible':
      return []
    default:
      return weighed.verdict satisfies never
  }
}

function factsOf(pull: Pull, weighed: TorqueAgainstProof) {
  const [preload, bears] = {
    overload: [weighed.preloadAtMostFriction, weighed.proofLoad] as const,
    'likely-overload': [weighed.preloadAtUsualFriction, weighed.bears] as const,
    plausible: [weighed.preloadAtUsualFriction, weighed.bears] as const,
    'next-to-no-clamp': [weighed.preloadAtLeastFriction, weighed.proofLoad] as const,
  }[weighed.verdict]
  return {
    procedure: pull.procedure,
    pass: pull.pass,
    group: pull.group.name,
    thread: formatThread(pull.screw.thread),
    propertyClass: pull.group.propertyClass,
    preload: forceAmount(preload),
    proof: forceAmount(bears),
  }
}

function inNewtonMetres(torque: Torque): Amount {
  return torqueAmount(torque, 'N·m')
}
