import type { DrawingFacts } from '../../../../core/layout/index.ts'

/** A drawing while an order is made: the fasteners named so far are ticked, with the way to the last of them. */
export function withOrderDraft(facts: DrawingFacts, soFar: readonly string[]): DrawingFacts {
  const named = new Set(soFar)
  const fasteners = Object.fromEntries(
    Object.entries(facts.fasteners).map(([id, fact]) => [
      id,
      named.has(id) ? { ...fact, state: 'done' as const, share: 1 } : fact,
    ]),
  )
  const [from, to] = soFar.slice(-2)
  const path = from === undefined || to === undefined || from === to ? null : { from, to }
  return { ...facts, fasteners, path }
}
