import { stepsUsedBy, type EngineSpec, type Step } from '../../engine/index.ts'

/** What `standingOn` found, by step id: a spec never changes. */
const known = new WeakMap<EngineSpec, Map<string, readonly Step[]>>()

/**
 * The steps that stand on a step, near and far, in the spec's order: those that come after it, and those that work with what
 * came of it.
 */
export function standingOn(spec: EngineSpec, { id }: Step): readonly Step[] {
  const ofSpec = known.get(spec) ?? new Map<string, readonly Step[]>()
  known.set(spec, ofSpec)
  const found = ofSpec.get(id) ?? find(spec, id)
  ofSpec.set(id, found)
  return found
}

function find(spec: EngineSpec, id: string): readonly Step[] {
  const under = new Map(
    spec.steps.map((step) => [step, [...step.after, ...stepsUsedBy(spec, step).map((used) => used.id)]]),
  )
  const found = new Set([id])
  // A set visits what is added while it is walked.
  for (const each of found) for (const [step, ids] of under) if (ids.includes(each)) found.add(step.id)
  return spec.steps.filter((step) => step.id !== id && found.has(step.id))
}
