import { done, type Outcome } from '../../problem/index.ts'
import { inMillimetres, nanometres } from '../../quantity/index.ts'
import { orderBy, type PatternName } from '../../tightening/index.ts'
import { leftEmpty, placedThings, type SpecDocument } from '../placing/index.ts'

type Order = SpecDocument['procedures'][number]['orders'][number]

/** Which order of which procedure, by their ids. */
export interface OrderNamed {
  readonly procedure: string
  readonly order: string
}

/** The order of this name; undefined where there is none. */
export function orderNamed(document: SpecDocument, { procedure, order }: OrderNamed): Order | undefined {
  return document.procedures.find(({ id }) => id === procedure)?.orders.find(({ id }) => id === order)
}

/** An order of a person's own making: it was grown by no pattern any more. Refuses `draft-order-left-empty`. */
export function withSequence(
  document: SpecDocument,
  named: OrderNamed,
  sequence: readonly string[],
): Outcome<SpecDocument> {
  if (sequence.length === 0) return leftEmpty(document, named)
  return done(
    withOrder(document, named, ({ pattern: _, ...order }) => ({ ...order, sequence: [...sequence] })),
  )
}

/** An order grown by a named pattern over these fasteners. Refuses `draft-order-left-empty`. */
export function grownOrder(
  document: SpecDocument,
  named: OrderNamed,
  pattern: PatternName,
  fasteners: readonly string[],
): Outcome<SpecDocument> {
  if (fasteners.length === 0) return leftEmpty(document, named)
  const things = fasteners.map((id) => ({ kind: 'fastener', id }) as const)
  const places = placedThings(document, things).map(({ id, at }) => ({
    ...{ id, x: inMillimetres(nanometres(at.x)), y: inMillimetres(nanometres(at.y)) },
  }))
  const sequence = [...orderBy(pattern, places)]
  return done(withOrder(document, named, (order) => ({ ...order, sequence, pattern })))
}

/** Fasteners painted with a group by tapping them. */
export function painted(document: SpecDocument, fasteners: ReadonlySet<string>, group: string): SpecDocument {
  return {
    ...document,
    fasteners: document.fasteners.map((each) => (fasteners.has(each.id) ? { ...each, group } : each)),
  }
}

function withOrder(
  document: SpecDocument,
  { procedure, order }: OrderNamed,
  change: (order: Order) => Order,
): SpecDocument {
  return {
    ...document,
    procedures: document.procedures.map((each) =>
      each.id === procedure
        ? { ...each, orders: each.orders.map((one) => (one.id === order ? change(one) : one)) }
        : each,
    ),
  }
}
