import type { EngineSpec } from './schema.ts'
import type { Step } from './step.ts'

/** The steps whose outcome a step works with, whether or not it is said to come after them. */
export function stepsUsedBy({ steps, parts }: EngineSpec, step: Step): readonly Step[] {
  switch (step.kind) {
    case 'choose-shells':
      return steps.filter((each) => each.kind === 'note-marks' && each.fit === step.fit)
    case 'fit-shells':
      return steps.filter((each) => each.kind === 'choose-shells' && each.fit === step.fit)
    case 'fit-rings':
      return steps.filter((each) => each.kind === 'measure-rings' && each.rings === step.rings)
    case 'count': {
      const filled = new Set(parts.flatMap(({ usedIn }) => usedIn.map((use) => use.step)))
      return steps.filter(({ id }) => filled.has(id))
    }
    default:
      return []
  }
}

/** Whether the step puts something into the engine or tightens it. */
export function putsTogether({ kind }: Step): boolean {
  return kind === 'fit-part' || kind === 'fit-shells' || kind === 'lay-bead' || kind === 'run-procedure'
}

/** Whether anything is put into the engine in the step. */
export function fitsParts({ kind }: Pick<Step, 'kind'>): boolean {
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
