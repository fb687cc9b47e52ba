import type { BuildCommand, PartUse } from '../../../core/builds/index.ts'

/** All that is left of a part at a step goes in, new. */
export function tickNew({ part, step, left }: PartUse): BuildCommand {
  const as = { condition: 'new', reason: '', number: '' } as const
  return { type: 'tick-parts', step: step.id, part: part.id, count: left, ...as }
}
