import type { EngineSpec, Part, Step } from '../../engine/index.ts'
import { useKey, type LeftOver, type PartTick } from '../events/part-record.ts'
import type { BuildState } from '../events/state.ts'

/** One part at one of the steps that use it, and how far that has come. */
export interface PartUse {
  readonly part: Part
  readonly step: Step
  /** How many the spec wants there. */
  readonly count: number
  readonly ticks: readonly PartTick[]
  /** How many are not ticked yet. */
  readonly left: number
  /** Where those are, where somebody said so when the parts were counted. */
  readonly leftOver: LeftOver | null
}

/** Every part at every step that uses it, in the order of the parts list. */
export function partUses(spec: EngineSpec, state: BuildState): readonly PartUse[] {
  return spec.parts.flatMap((part) => part.usedIn.flatMap((use) => useOf(spec, state, part, use)))
}

/** The parts that one step uses. */
export function usesAt(spec: EngineSpec, state: BuildState, step: string): readonly PartUse[] {
  return spec.parts.flatMap((part) =>
    part.usedIn.filter((use) => use.step === step).flatMap((use) => useOf(spec, state, part, use)),
  )
}

/** What the count has to ask for: not ticked, and nobody has said where it is. */
export function unaccountedParts(spec: EngineSpec, state: BuildState): readonly PartUse[] {
  return partUses(spec, state).filter(({ left, leftOver }) => left > 0 && leftOver === null)
}

function useOf(
  spec: EngineSpec,
  { parts }: BuildState,
  part: Part,
  { step: id, count }: Part['usedIn'][number],
): readonly PartUse[] {
  const step = spec.steps.find((each) => each.id === id)
  if (step === undefined) return []
  const ticks = (parts.ticks[part.id] ?? []).filter((tick) => tick.step === id)
  const left = count - ticks.reduce((sum, tick) => sum + tick.count, 0)
  return [{ part, step, count, ticks, left, leftOver: parts.leftOver[useKey(part.id, id)] ?? null }]
}

/** Why a reason is asked for where a part goes in that was in an engine before; null where it may. */
export function againstReuse({ reuse }: Part, before: number | null): 'new-each-time' | 'used-up' | null {
  if (reuse === 'new-each-time') return 'new-each-time'
  return reuse.uses !== undefined && before !== null && before >= reuse.uses ? 'used-up' : null
}
