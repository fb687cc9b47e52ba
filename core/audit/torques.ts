import { formatThread, torqueAgainstProof } from '../joint/index.ts'
import { formatForce, formatTorque, type Torque } from '../quantity/index.ts'
import type { EngineSpec } from '../engine/index.ts'
import { doubt, fault, type Finding } from './finding.ts'
import { pullsOf, type Pull } from './pulls.ts'
import { slipOf, tooLittle, tooMuch } from './slip.ts'

/** Every torque against the proof load of the fasteners it is for, at low and at high friction. */
export function auditTorques(spec: EngineSpec): readonly Finding[] {
  return pullsOf(spec).flatMap(auditPull)
}

function auditPull(pull: Pull): readonly Finding[] {
  const { target, most = target, last, path } = pull
  const { verdict } = weigh(pull, target)
  const isPlausible = (torque: Torque): boolean => weigh(pull, torque).verdict === 'plausible'
  switch (verdict) {
    case 'overload': {
      const slip = slipOf(target, tooMuch, isPlausible)
      return [fault('torque-overload', { ...factsOf(pull, target), slip }, path)]
    }
    case 'likely-overload': {
      const slip = slipOf(target, tooMuch, isPlausible)
      return [doubt('torque-likely-overload', { ...factsOf(pull, target), slip }, path)]
    }
    case 'next-to-no-clamp': {
      if (!last) return []
      const slip = slipOf(target, tooLittle, isPlausible)
      const finding = slip === null ? doubt : fault
      return [finding('torque-clamps-nothing', { ...factsOf(pull, target), slip }, path)]
    }
    case 'plausible':
      return weigh(pull, most).verdict === 'overload'
        ? [fault('torque-overload', { ...factsOf(pull, most), slip: null }, path)]
        : []
    default:
      return verdict satisfies never
  }
}

function weigh({ group, screw }: Pull, torque: Torque) {
  const weighed = torqueAgainstProof({ ...screw, propertyClass: group.propertyClass, torque })
  if (!weighed.ok) throw new Error(`class ${group.propertyClass} was known and is not any more`)
  return weighed.value
}

function factsOf(pull: Pull, torque: Torque) {
  const weighed = weigh(pull, torque)
  const preload = {
    overload: weighed.preloadAtMostFriction,
    'likely-overload': weighed.preloadAtUsualFriction,
    plausible: weighed.preloadAtUsualFriction,
    'next-to-no-clamp': weighed.preloadAtLeastFriction,
  }[weighed.verdict]
  return {
    procedure: pull.procedure,
    pass: pull.pass,
    torque: formatTorque(torque, 'N·m'),
    group: pull.group.name,
    thread: formatThread(pull.screw.thread),
    propertyClass: pull.group.propertyClass,
    preload: formatForce(preload),
    proof: formatForce(weighed.proofLoad),
  }
}
