import { nameInSpec, type SpecDocument } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import type { StepInDocument } from './new-step.ts'

/** With a step behind another one; at the beginning where that is null. */
export function withStep(document: SpecDocument, step: StepInDocument, behind: string | null): SpecDocument {
  const at = behind === null ? 0 : placeOf(document, behind) + 1
  return { ...document, steps: document.steps.toSpliced(at, 0, step) }
}

/** The same steps with one of them moved by so many places in the list, as far as there are any. */
export function withStepMoved(document: SpecDocument, id: string, by: number): SpecDocument {
  const from = placeOf(document, id)
  const step = document.steps[from]
  if (step === undefined) return document
  const to = Math.max(0, Math.min(document.steps.length - 1, from + by))
  return { ...document, steps: document.steps.toSpliced(from, 1).toSpliced(to, 0, step) }
}

/**
 * Without a step. What waited for it waits for what it waited for. Refuses `draft-step-uses-part` where a part of the list goes in
 * there, and `draft-step-has-caution` where a caution stands beside this step alone: without a step it would stand beside all.
 */
export function withoutStep(document: SpecDocument, id: string): Outcome<SpecDocument> {
  const step = document.steps[placeOf(document, id)]
  if (step === undefined) return done(document)
  const name = nameInSpec(step.name)
  const part = document.parts?.find(({ usedIn }) => usedIn.some((use) => use.step === id))
  if (part !== undefined) return refused('draft-step-uses-part', { step: name, part: nameInSpec(part.name) })
  if (document.cautions.some(({ steps }) => steps?.length === 1 && steps[0] === id))
    return refused('draft-step-has-caution', { step: name })
  const before = step.after ?? []
  return done({
    ...document,
    steps: document.steps
      .filter((each) => each.id !== id)
      .map((each) => {
        if (!each.after?.includes(id)) return each
        const after = each.after.flatMap((other) => (other === id ? before : [other]))
        return { ...each, after: [...new Set(after)].filter((other) => other !== each.id) }
      }),
    cautions: document.cautions.map((caution) =>
      caution.steps?.includes(id)
        ? { ...caution, steps: caution.steps.filter((each) => each !== id) }
        : caution,
    ),
  })
}

/** A list of ids with one more, in the order of all there are, or with one less; undefined for none. */
export function toggled(
  all: readonly string[],
  chosen: readonly string[] | undefined,
  id: string,
): string[] | undefined {
  const next = chosen?.includes(id) === true ? chosen.filter((each) => each !== id) : [...(chosen ?? []), id]
  return next.length === 0 ? undefined : all.filter((each) => next.includes(each))
}

function placeOf({ steps }: SpecDocument, id: string): number {
  return steps.findIndex((step) => step.id === id)
}
