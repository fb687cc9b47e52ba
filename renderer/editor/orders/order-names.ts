import type { EngineSpec } from '../../../core/engine/index.ts'
import type { Words } from '../../../core/words/index.ts'

type Orders = EngineSpec['procedures'][number]['orders']

/** What the orders of a procedure are called, for choosing one: by their names, and those without one by their places among them. */
export function orderNames(
  words: Words,
  orders: Orders = [],
): readonly { readonly value: string; readonly text: string }[] {
  return orders.map(({ id, name }, at) => ({
    value: id,
    text: name ?? words.editor.order.called({ number: at + 1 }),
  }))
}

export function orderName(words: Words, orders: Orders | undefined, order: string): string {
  return orderNames(words, orders).find(({ value }) => value === order)?.text ?? order
}
