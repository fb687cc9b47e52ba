import { done, refused, type Outcome } from '../../problem/index.ts'
import type { Cap, EngineSpec, Order, Procedure } from '../../engine/index.ts'
import type { RunCommand } from '../run/commands.ts'
import type { OwnOrder, RunEvent } from '../run/events.ts'
import { numberOf } from './fastener-number.ts'
import { readReason } from '../run/reason.ts'
import type { Run } from '../run/run.ts'

const ordered = new WeakMap<OwnOrder, { readonly from: Procedure; readonly procedure: Procedure }>()

/**
 * A procedure as a run goes through it: in the run's own order where it has one, else as the spec has it. The same
 * object each time, so that what was found for it can be kept.
 */
export function asRun(procedure: Procedure, run: Pick<Run, 'ownOrder'> | undefined): Procedure {
  const own = run?.ownOrder
  if (own === undefined || own === null) return procedure
  const known = ordered.get(own)
  if (known?.from === procedure) return known.procedure
  const made = reordered(procedure, own.orders)
  ordered.set(own, { from: procedure, procedure: made })
  return made
}

/** A procedure with the sequences of some of its orders exchanged. They were grown by no pattern any more. */
export function reordered(procedure: Procedure, own: OwnOrder['orders']): Procedure {
  const orders = procedure.orders.map((order) => {
    const sequence = own.find((each) => each.order === order.id)?.sequence
    return sequence === undefined ? order : { id: order.id, sequence: [...sequence] }
  })
  const { caps } = procedure
  return { ...procedure, orders, ...(caps !== undefined && { caps: capsInOrder(caps, orders) }) }
}

/** Caps, and the fasteners of each, in the order in which the sequences first come to them. */
function capsInOrder(caps: readonly Cap[], orders: readonly Pick<Order, 'sequence'>[]): readonly Cap[] {
  const sequence = [...new Set(orders.flatMap((order) => order.sequence))]
  const inOrder = caps.map(({ id, fasteners }) => ({
    id,
    fasteners: sequence.filter((fastener) => fasteners.includes(fastener)),
  }))
  const first = ({ fasteners: [id = ''] }: Cap) => sequence.indexOf(id)
  return inOrder.toSorted((one, other) => first(one) - first(other))
}

/** The numbers of a sequence as `readOrder` reads them back. */
export function numbersOf(spec: EngineSpec, sequence: readonly string[]): readonly string[] {
  return sequence.map((id) => numberOf(spec, id) ?? id)
}

/**
 * The numbers in a text, with blanks, commas or semicolons between them, each with the fastener of an order that it
 * names; undefined for none.
 */
export function namedIn(spec: EngineSpec, { sequence }: Order, typed: string) {
  const numbers = numbersOf(spec, sequence)
  const written = typed.toUpperCase().match(/[^\s,;]+/g) ?? []
  return written.map((number) => ({ number, id: sequence[numbers.indexOf(number)] }))
}

/**
 * Reads an order of a person's own: the numbers of an order's fasteners, each once.
 *
 * Refuses `order-number-unknown`, `order-number-twice`, `order-numbers-missing`.
 */
export function readOrder(spec: EngineSpec, order: Order, typed: string): Outcome<readonly string[]> {
  const { sequence } = order
  const read: string[] = []
  for (const { number, id } of namedIn(spec, order, typed)) {
    if (id === undefined)
      return refused('order-number-unknown', { typed: number, numbers: numbersOf(spec, sequence) })
    if (read.includes(id)) return refused('order-number-twice', { fastener: number })
    read.push(id)
  }
  const missing = sequence.filter((id) => !read.includes(id))
  if (missing.length > 0) return refused('order-numbers-missing', { numbers: numbersOf(spec, missing) })
  return done(read)
}

/**
 * A run is begun in the spec's order, or in one of a person's own with a reason. What is the spec's order after all is
 * recorded as that.
 *
 * Refuses what `readOrder` refuses, `order-unknown`, `reason-missing`.
 */
export function decideStart(
  spec: EngineSpec,
  procedure: Procedure,
  { own }: Extract<RunCommand, { type: 'start-run' }>,
): Outcome<readonly RunEvent[]> {
  const started = { type: 'run-started', version: 1, procedure: procedure.id } as const
  const orders: OwnOrder['orders'] = []
  for (const { order: id, typed } of own?.orders ?? []) {
    const order = procedure.orders.find((each) => each.id === id)
    if (order === undefined) return refused('order-unknown', { order: id, name: procedure.name })
    const read = readOrder(spec, order, typed)
    if (!read.ok) return read
    if (isOther(order, read.value)) orders.push({ order: id, sequence: [...read.value] })
  }
  if (own === undefined || orders.length === 0) return done([started])
  const reason = readReason(own.reason, { what: 'own-order' })
  return reason.ok ? done([{ ...started, ownOrder: { reason: reason.value, orders } }]) : reason
}

/** Whether a sequence differs from that of an order. */
export function isOther({ sequence }: Order, own: readonly string[]): boolean {
  return sequence.some((id, place) => own[place] !== id)
}
