import { fastenedJoint } from '../../joint/index.ts'
import { lengthAmount, sum } from '../../quantity/index.ts'
import type { EngineSpec, FastenerGroup } from '../../engine/index.ts'
import { fault, type Finding } from '../finding.ts'

/** Groups whose thread, class or head cannot be. */
export function auditScrews({ fastenerGroups }: EngineSpec): readonly Finding[] {
  return fastenerGroups.flatMap((group, index) => {
    const path = `fastenerGroups[${index}]`
    const joint = fastenedJoint(group)
    if (!joint.ok) return [{ weight: 'fault' as const, problem: { ...joint.problem, path } }]
    return [...auditHead(group, path), ...auditShank(group, path), ...auditLayers(group, path)]
  })
}

function auditHead({ name, head, acrossFlats, thread }: FastenerGroup, path: string): readonly Finding[] {
  if (head === 'socket' || acrossFlats > thread.diameter) return []
  const facts = {
    group: name,
    acrossFlats: lengthAmount(acrossFlats, 'mm'),
    thread: lengthAmount(thread.diameter, 'mm'),
  }
  return [fault('head-smaller-than-thread', facts, `${path}.acrossFlats`)]
}

/** A waisted shank is thinner than the thread, and a good half of it: a thinner one would be no bolt. */
const thinnestShank = 0.5

function auditShank({ name, shank, thread }: FastenerGroup, path: string): readonly Finding[] {
  if (shank === undefined) return []
  if (shank < thread.diameter && shank > thinnestShank * thread.diameter) return []
  const facts = { group: name, shank: lengthAmount(shank, 'mm'), thread: lengthAmount(thread.diameter, 'mm') }
  return [fault('shank-not-waisted', facts, `${path}.shank`)]
}

/** The layers within the grip are the grip. */
function auditLayers({ name, layers, grip }: FastenerGroup, path: string): readonly Finding[] {
  if (layers === undefined) return []
  const together = sum(...layers.map(({ thickness }) => thickness))
  if (together === grip) return []
  const facts = { group: name, layers: lengthAmount(together, 'mm'), grip: lengthAmount(grip, 'mm') }
  return [fault('layers-not-grip', facts, `${path}.layers`)]
}
