import type { EngineSpec } from '../../engine/index.ts'
import { torqueAmount } from '../../quantity/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'

/** What the spec says of a torque and of what it takes to run a fastener down go together. */
export function auditPrevailing({ fastenerGroups }: EngineSpec): readonly Finding[] {
  return fastenerGroups.flatMap(({ name: group, prevailing, torqueIncludesPrevailing }, index) => {
    const path = `fastenerGroups[${index}]`
    if (prevailing === undefined)
      return torqueIncludesPrevailing === undefined
        ? []
        : [fault('prevailing-missing', { group }, `${path}.torqueIncludesPrevailing`)]
    const facts = { group, torque: torqueAmount(prevailing, 'N·m') }
    return torqueIncludesPrevailing === undefined
      ? [doubt('prevailing-not-said', facts, `${path}.prevailing`)]
      : []
  })
}
