import { grownOrder, orderNamed, tapped, withSequence, type OrderNamed } from '../../../core/drafts/index.ts'
import type { PatternName } from '../../../core/tightening/index.ts'
import type { EditorDesk } from '../editor-desk.svelte.ts'

/** The order that is tapped in on the drawing. */
export class OrderWork {
  readonly #desk: EditorDesk
  #named = $state.raw<OrderNamed | null>(null)
  /** Whether the next tap begins the order again: an order is never without a fastener, so that it is not emptied first. */
  #begins = $state(false)

  readonly procedures = $derived.by(() =>
    this.#desk.spec.procedures.filter(({ face }) => face === this.#desk.face),
  )
  readonly named: OrderNamed | null = $derived.by(() => {
    const { document, face } = this.#desk
    const chosen = this.#named
    const isHere = document.procedures.some((each) => each.id === chosen?.procedure && each.face === face)
    if (chosen !== null && isHere && orderNamed(document, chosen) !== undefined) return chosen
    const first = document.procedures.find((each) => each.face === face)
    return first === undefined ? null : { procedure: first.id, order: first.orders[0]!.id }
  })
  readonly sequence: readonly string[] = $derived.by(() => {
    if (this.named === null || this.#begins) return []
    return orderNamed(this.#desk.document, this.named)?.sequence ?? []
  })
  readonly onFace = $derived.by(() =>
    this.#desk.document.fasteners.flatMap(({ id, face }) => (face === this.#desk.face ? [id] : [])),
  )
  /** What a pattern goes over: all on the face that are of one group with those in the order, as an order has all of a group or none. */
  readonly grownOver = $derived.by(() => {
    const { fasteners } = this.#desk.document
    const groups = fasteners.flatMap(({ id, group }) => (this.sequence.includes(id) ? [group] : []))
    if (groups.length === 0) return this.onFace
    return fasteners.flatMap(({ id, face, group }) =>
      face === this.#desk.face && groups.includes(group) ? [id] : [],
    )
  })

  constructor(desk: EditorDesk) {
    this.#desk = desk
  }

  get begins() {
    return this.#begins
  }
  choose(named: OrderNamed) {
    this.#named = named
    this.#begins = false
  }
  begin() {
    this.#begins = true
  }
  /** Counted from what is in the draft then: taps may come faster than the draft is kept. */
  tap(fastener: string) {
    const { named } = this
    if (named === null) return
    const begins = this.#begins
    this.#begins = !begins && this.sequence.length === 1 && this.sequence[0] === fastener
    if (this.#begins) return
    void this.#desk.change(this.#editMessage(named), (document) =>
      withSequence(
        document,
        named,
        tapped(begins ? [] : (orderNamed(document, named)?.sequence ?? []), fastener),
      ),
    )
  }
  mend(sequence: readonly string[]) {
    const { named } = this
    if (named === null) return
    void this.#desk.change(this.#editMessage(named), (document) => withSequence(document, named, sequence))
  }
  grow(pattern: PatternName) {
    const { named } = this
    if (named === null) return
    this.#begins = false
    const { grownOver } = this
    void this.#desk.change(this.#editMessage(named), (document) =>
      grownOrder(document, named, pattern, grownOver),
    )
  }

  /** An order without a name is called as its procedure is. */
  #editMessage(named: OrderNamed) {
    const procedure = this.#desk.spec.procedures.find(({ id }) => id === named.procedure)
    const { name } = procedure?.orders.find(({ id }) => id === named.order) ?? {}
    return { code: 'orderTapped', facts: { order: name ?? procedure?.name ?? '' } } as const
  }
}
