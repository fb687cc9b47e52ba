import type { SpecDocument } from '../../engine/index.ts'
import { done, type Outcome } from '../../problem/index.ts'
import type { StepInDocument } from './new-step.ts'
import { withoutStep } from './step-edits.ts'

/**
 * Without a bead and the steps that lay it: what waited for these waits for what they waited for. Refuses what `withoutStep` refuses
 * of one of them.
 */
export function withoutBead(document: SpecDocument, id: string): Outcome<SpecDocument> {
  const beads = (document.beads ?? []).filter((bead) => bead.id !== id)
  return withoutSteps({ ...document, beads }, (step) => step.kind === 'lay-bead' && step.bead === id)
}

/** The same of a fit and the steps of its shells. */
export function withoutFit(document: SpecDocument, id: string): Outcome<SpecDocument> {
  const fits = document.fits.filter((fit) => fit.id !== id)
  return withoutSteps({ ...document, fits }, (step) => 'fit' in step && step.fit === id)
}

function withoutSteps(
  document: SpecDocument,
  isOne: (step: StepInDocument) => boolean,
): Outcome<SpecDocument> {
  return document.steps
    .filter(isOne)
    .reduce<Outcome<SpecDocument>>(
      (left, { id }) => (left.ok ? withoutStep(left.value, id) : left),
      done(document),
    )
}
