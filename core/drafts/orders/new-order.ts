import { idFrom } from '../id-from.ts'
import type { SpecDocument } from '../placing/index.ts'
import type { OrderNamed } from './order-edits.ts'

const isId = /^[A-Za-z0-9][A-Za-z0-9.-]{0,35}$/

/** An order more for a procedure, with the name that is typed; over the fasteners of the first one until it is tapped. */
export function withNewOrder(
  document: SpecDocument,
  procedure: string,
  typed: string,
): { readonly document: SpecDocument; readonly named: OrderNamed } {
  const orders = document.procedures.find(({ id }) => id === procedure)?.orders ?? []
  const taken = new Set(orders.map(({ id }) => id))
  const name = typed.trim()
  const order = isId.test(name) && !taken.has(name) ? name : idFrom(name, taken)
  const sequence = orders[0]?.sequence ?? []
  return {
    named: { procedure, order },
    document: withOrders(document, procedure, [...orders, { id: order, name, sequence }]),
  }
}

/** Whether an order can go: no pass goes through it, and it is not the only one. */
export function isSpareOrder(document: SpecDocument, { procedure, order }: OrderNamed): boolean {
  const of = document.procedures.find(({ id }) => id === procedure)
  if (of === undefined || of.orders.length < 2) return false
  return of.passes.every((pass) => !('order' in pass) || pass.order !== order)
}

/** The document without a spare order. */
export function withoutOrder(document: SpecDocument, { procedure, order }: OrderNamed): SpecDocument {
  const orders = document.procedures.find(({ id }) => id === procedure)?.orders ?? []
  return withOrders(
    document,
    procedure,
    orders.filter(({ id }) => id !== order),
  )
}

type Orders = SpecDocument['procedures'][number]['orders']

function withOrders(document: SpecDocument, procedure: string, orders: Orders): SpecDocument {
  return {
    ...document,
    procedures: document.procedures.map((each) => (each.id === procedure ? { ...each, orders } : each)),
  }
}
