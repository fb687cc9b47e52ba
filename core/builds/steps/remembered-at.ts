import type { EngineSpec, Step } from '../../engine/index.ts'

type Work<Part, Asked, Result> = (spec: EngineSpec, part: Part, step: Asked) => Result

/**
 * Remembers what follows for a step from one part of a build's state: that part stays the same object over every entry about
 * anything else, and each confirmation asks it of all steps.
 */
export function rememberedAt<Part extends object, Asked extends Step, Result>(
  work: Work<Part, Asked, Result>,
): Work<Part, Asked, Result> {
  const known = new WeakMap<Part, WeakMap<Asked, { readonly spec: EngineSpec; readonly result: Result }>>()
  return (spec, part, step) => {
    let ofPart = known.get(part)
    if (ofPart === undefined) known.set(part, (ofPart = new WeakMap()))
    const found = ofPart.get(step)
    if (found?.spec === spec) return found.result
    const result = work(spec, part, step)
    ofPart.set(step, { spec, result })
    return result
  }
}
