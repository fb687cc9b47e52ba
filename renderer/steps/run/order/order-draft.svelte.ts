import type { OrderDraftState } from '../../../../core/contract/index.ts'
import type { Problem, ProblemCode } from '../../../../core/problem/index.ts'
import type { EngineSpec, Order, Procedure } from '../../../../core/engine/index.ts'
import {
  isOther,
  namedIn,
  numbersOf,
  orderBy,
  orderRemarks,
  placesOf,
  readOrder,
  reordered,
} from '../../../../core/tightening/index.ts'
import type { PatternName } from '../../../../core/tightening/index.ts'

/** An order of a person's own while it is made: of each order of a procedure the numbers as tapped or typed. */
export class OrderDraft {
  readonly spec: EngineSpec
  readonly procedure: Procedure
  #chosen = $state('')
  #typed = $state.raw<Readonly<Record<string, string>>>({})

  /** The one that is being made. */
  readonly order: Order = $derived.by(
    () => this.procedure.orders.find(({ id }) => id === this.#chosen) ?? this.procedure.orders[0]!,
  )
  /** The fasteners named so far, by id. */
  readonly soFar: readonly string[] = $derived.by(() =>
    namedIn(this.spec, this.order, this.typed).flatMap(({ id }) => id ?? []),
  )
  readonly #read = $derived.by(() => readOrder(this.spec, this.order, this.typed))
  /** What cannot be in it; null where only some are still to come, and for a whole one. */
  readonly fault: Problem | null = $derived.by(() =>
    this.#problem((code) => code !== 'order-numbers-missing'),
  )
  /** What is still to come; null while nothing is named, and for a whole one. */
  readonly missing: Problem | null = $derived.by(() =>
    this.#problem((code) => code === 'order-numbers-missing'),
  )
  readonly isWhole = $derived.by(() => this.#read.ok)
  /** What is unusual about a whole one. */
  readonly remarks: readonly Problem[] = $derived.by(() =>
    this.#read.ok ? orderRemarks(this.spec, this.procedure.face, this.#read.value) : [],
  )
  /** As the spec file has it. */
  readonly forSpec: string | null = $derived.by(() =>
    this.#read.ok ? `"sequence": ${JSON.stringify(this.#read.value).replaceAll(',', ', ')}` : null,
  )
  /** Those that were touched, as the command takes them. */
  readonly orders = $derived.by(() =>
    this.procedure.orders.flatMap(({ id }) => {
      const typed = this.#typed[id]?.trim() ?? ''
      return typed === '' ? [] : [{ order: id, typed }]
    }),
  )
  /** The procedure in these orders; null while one is no order, or all are as they were given. */
  readonly made: Procedure | null = $derived.by(() => this.#make())

  /** The procedure as the run would go through it now; null while an order is not whole. */
  readonly planned: Procedure | null = $derived.by(() => {
    const isUntouched = this.orders.every(({ order, typed }) => this.#isAsGiven(order, typed))
    return this.made ?? (isUntouched ? this.procedure : null)
  })

  constructor(spec: EngineSpec, procedure: Procedure) {
    this.spec = spec
    this.procedure = procedure
  }

  /** As it was left; null where the spec has no such procedure. */
  static from(spec: EngineSpec, { procedure: id, chosen, typed }: OrderDraftState): OrderDraft | null {
    const procedure = spec.procedures.find((each) => each.id === id)
    if (procedure === undefined) return null
    const draft = new OrderDraft(spec, procedure)
    draft.#chosen = chosen
    draft.#typed = typed
    return draft
  }

  /** To be kept, so that it outlasts a power cut. */
  get state(): OrderDraftState {
    return { procedure: this.procedure.id, chosen: this.#chosen, typed: { ...this.#typed } }
  }

  get typed(): string {
    return this.#typed[this.order.id] ?? ''
  }
  set typed(text: string) {
    this.#typed = { ...this.#typed, [this.order.id]: text }
  }

  choose(order: string) {
    this.#chosen = order
  }
  add(fastener: string) {
    this.typed = [this.typed.trim(), ...numbersOf(this.spec, [fastener])].filter(Boolean).join(' ')
  }
  undo() {
    this.typed = this.typed.replace(/[\s,;]*[^\s,;]*[\s,;]*$/, '')
  }
  fill(pattern: PatternName | null) {
    const { sequence } = this.order
    const filled = pattern === null ? sequence : orderBy(pattern, placesOf(this.spec, sequence))
    this.typed = numbersOf(this.spec, filled).join(' ')
  }

  #problem(which: (code: ProblemCode) => boolean): Problem | null {
    if (this.typed.trim() === '' || this.#read.ok) return null
    return which(this.#read.problem.code) ? this.#read.problem : null
  }

  #isAsGiven(id: string, typed: string): boolean {
    const order = this.procedure.orders.find((each) => each.id === id)!
    const read = readOrder(this.spec, order, typed)
    return read.ok && !isOther(order, read.value)
  }

  #make(): Procedure | null {
    const own: { order: string; sequence: string[] }[] = []
    for (const { order: id, typed } of this.orders) {
      const order = this.procedure.orders.find((each) => each.id === id)!
      const read = readOrder(this.spec, order, typed)
      if (!read.ok) return null
      if (isOther(order, read.value)) own.push({ order: id, sequence: [...read.value] })
    }
    return own.length === 0 ? null : reordered(this.procedure, own)
  }
}
