import { nameInSpec } from '../../engine/index.ts'
import { refused, type Outcome } from '../../problem/index.ts'
import { grownOrder } from '../orders/index.ts'
import type { SpecDocument } from '../placing/index.ts'

type Procedure = SpecDocument['procedures'][number]

/**
 * A tightening procedure over all fasteners of a face, from the middle outwards until somebody taps the manual's order, with a
 * pass by hand; a step at the end carries it out. Refuses `draft-face-without-fasteners`.
 */
export function withProcedure(
  document: SpecDocument,
  face: string,
  name: Procedure['name'],
): Outcome<SpecDocument> {
  const fasteners = document.fasteners.flatMap((each) => (each.face === face ? [each.id] : []))
  if (fasteners.length === 0) {
    const named = document.case.faces.find(({ id }) => id === face)?.name
    return refused('draft-face-without-fasteners', { face: nameInSpec(named) })
  }
  const taken = new Set(document.procedures.map(({ id }) => id))
  let id = face.slice(0, 36)
  for (let more = 2; taken.has(id); more += 1) id = `${face.slice(0, 36)}-${more}`
  const order = { id: 'order', sequence: fasteners }
  const procedure: Procedure = {
    ...{ id, name, face, orders: [order] },
    passes: [{ kind: 'seat', order: order.id }],
  }
  const steps = new Set(document.steps.map((step) => step.id))
  let stepId = id
  for (let more = 2; steps.has(stepId); more += 1) stepId = `${id}-${more}`
  const added = {
    ...document,
    procedures: [...document.procedures, procedure],
    steps: [...document.steps, { id: stepId, kind: 'run-procedure' as const, name, procedure: id }],
  }
  return grownOrder(added, { procedure: id, order: order.id }, 'centre-out', fasteners)
}

/** Without a procedure and the steps that carry it out. */
export function withoutProcedure(document: SpecDocument, id: string): SpecDocument {
  return {
    ...document,
    procedures: document.procedures.filter((each) => each.id !== id),
    steps: document.steps.filter((step) => step.kind !== 'run-procedure' || step.procedure !== id),
  }
}
