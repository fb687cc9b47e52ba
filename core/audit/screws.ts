import { fastenedJoint } from '../joint/index.ts'
import { formatLength } from '../quantity/index.ts'
import type { EngineSpec } from '../engine/index.ts'
import { fault, type Finding } from './finding.ts'

/** Groups whose thread, class or head cannot be. */
export function auditScrews({ fastenerGroups }: EngineSpec): readonly Finding[] {
  return fastenerGroups.flatMap((group, index) => {
    const path = `fastenerGroups[${index}]`
    const joint = fastenedJoint(group)
    if (!joint.ok) return [{ weight: 'fault' as const, problem: { ...joint.problem, path } }]
    const { acrossFlats, thread } = group
    if (acrossFlats > thread.diameter) return []
    const facts = {
      group: group.name,
      acrossFlats: formatLength(acrossFlats, 'mm'),
      thread: formatLength(thread.diameter, 'mm'),
    }
    return [fault('head-smaller-than-thread', facts, `${path}.acrossFlats`)]
  })
}
