import { fitsParts, type EngineSpec, type Part, type Step } from '../../engine/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'
import { mustWait } from './steps.ts'

/** Parts: as many as their steps use, each in a step that fits something, and counted after the last of them. */
export function auditParts(spec: EngineSpec): readonly Finding[] {
  const { parts, steps } = spec
  const counts = steps.filter(({ kind }) => kind === 'count')
  const used = new Set(parts.flatMap(({ usedIn }) => usedIn.map(({ step }) => step)))
  return [
    ...parts.flatMap((part, index) => auditPart(part, steps, `parts[${index}]`)),
    ...(parts.length > 0 && counts.length === 0 ? [doubt('parts-never-counted', {}, 'parts')] : []),
    ...counts.flatMap((count) =>
      parts.length === 0
        ? [fault('count-without-parts', { step: count.name }, `steps[${steps.indexOf(count)}]`)]
        : steps.filter(({ id }) => used.has(id)).flatMap((step) => mustWait(steps, count, step)),
    ),
  ]
}

function auditPart({ name, count, usedIn }: Part, steps: readonly Step[], path: string): readonly Finding[] {
  const used = usedIn.reduce((sum, use) => sum + use.count, 0)
  return [
    ...(used === count ? [] : [fault('part-count-differs', { part: name, count, used }, path)]),
    ...usedIn.flatMap(({ step: id }, index) => {
      const step = steps.find((each) => each.id === id)
      const place = `${path}.usedIn[${index}]`
      if (step === undefined) return []
      if (usedIn.findIndex((use) => use.step === id) < index)
        return [fault('part-twice-in-step', { part: name, step: step.name }, place)]
      return fitsParts(step)
        ? []
        : [fault('part-where-nothing-is-fitted', { part: name, step: step.name }, place)]
    }),
  ]
}
