import {
  clampingTorque,
  fastenedJoint,
  preloadFromTorque,
  usualScrew,
  type FastenedJoint,
  type FlangePull,
} from '../../joint/index.ts'
import { done, type Outcome } from '../../problem/index.ts'
import { inMillimetres, newtons } from '../../quantity/index.ts'
import type { EngineSpec, Pass, Procedure } from '../../engine/index.ts'
import { plannedPulls } from '../run/plan.ts'

/**
 * A procedure as pulls of a flange, in the order in which they are made, which goes cap by cap where the procedure does: a torque gives the preload of the usual friction, the same for all
 * fasteners of a group, a stretch that of the bolt as a spring, a turn brings the nut down by its share of the pitch. What is done by hand or
 * measured moves no load, and a fastener on another face than the procedure's is left out.
 *
 * Refuses what `fastenedJoint` refuses.
 */
export function pullsOf(spec: EngineSpec, procedure: Procedure): Outcome<readonly FlangePull[]> {
  const joints = new Map<string, FastenedJoint>()
  for (const group of spec.fastenerGroups) {
    const joint = fastenedJoint(group)
    if (!joint.ok) return joint
    for (const fastener of spec.fasteners)
      if (fastener.group === group.id && fastener.face === procedure.face)
        joints.set(fastener.id, joint.value)
  }
  return done(
    plannedPulls(procedure).flatMap(({ pass: place, fastener }) => {
      const pass = procedure.passes[place]
      if (pass === undefined || fastener === null) return []
      if (pass.kind === 'action' || pass.kind === 'length' || pass.kind === 'stretch') return []
      const joint = joints.get(fastener)
      return joint === undefined ? [] : [pullOf(pass, place, fastener, joint)]
    }),
  )
}

type Loading = Exclude<Pass, { readonly kind: 'action' | 'length' | 'stretch' }>

function pullOf(pass: Loading, place: number, bolt: string, joint: FastenedJoint): FlangePull {
  const pull = { pass: place, bolt }
  switch (pass.kind) {
    case 'seat':
      return { ...pull, kind: 'raise', to: newtons(0) }
    case 'torque':
    case 'recheck': {
      const own = pass.others.find(({ fasteners }) => fasteners.includes(bolt)) ?? pass
      return {
        ...pull,
        kind: 'raise',
        to: preloadFromTorque(usualScrew(joint), clampingTorque(joint, own.target)),
      }
    }
    case 'angle': {
      const own = pass.others?.find(({ fasteners }) => fasteners.includes(bolt)) ?? pass
      return { ...pull, kind: 'turn', byMm: (own.target / 360) * inMillimetres(joint.thread.pitch) }
    }
    case 'tighten-to-stretch': {
      const middleMm = (inMillimetres(pass.least) + inMillimetres(pass.most)) / 2
      return { ...pull, kind: 'raise', to: newtons(middleMm / joint.boltMmPerN) }
    }
    case 'loosen':
      return { ...pull, kind: 'release' }
    default:
      return pass satisfies never
  }
}
