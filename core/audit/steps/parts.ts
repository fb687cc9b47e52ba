import type { EngineSpec, Part, Step } from '../../engine/index.ts'
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
      return fits(step) ? [] : [fault('part-where-nothing-is-fitted', { part: name, step: step.name }, place)]
    }),
  ]
}

/** Whether anything is put into the engine in the step. */
function fits({ kind }: Step): boolean {
  switch (kind) {
    case 'fit-part':
    case 'fit-shells':
    case 'fit-rings':
    case 'fit-places':
    case 'lay-bead':
    case 'run-procedure':
      return true
    case 'note-marks':
    case 'choose-shells':
    case 'check':
    case 'count':
    case 'measure-limits':
    case 'measure-rings':
    case 'lubricate':
    case 'clean':
    case 'orient':
    case 'align':
    case 'note':
    case 'photo':
    case 'turn':
      return false
    default:
      return kind satisfies never
  }
}
