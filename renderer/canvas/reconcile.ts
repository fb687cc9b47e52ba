import type { Shape } from '../../core/layout/index.ts'

/** What can be done with the nodes of one layer of a drawing surface. */
export interface Surface<Node> {
  create(shape: Shape): Node
  change(node: Node, shape: Shape): void
  remove(node: Node): void
  /** Moves the node to a place in the order of drawing, if it is not there. */
  settle(node: Node, index: number): void
}

/**
 * Keeps the nodes of one layer equal to shapes, with the least to do: a shape that is the same object as last time is
 * skipped, one with a known id changes its node, others come and go. The order of drawing is that of the shapes.
 */
export class Reconciler<Node> {
  readonly #surface: Surface<Node>
  #known = new Map<string, { readonly shape: Shape; readonly node: Node }>()

  constructor(surface: Surface<Node>) {
    this.#surface = surface
  }

  /** Whether anything had to be done, so that the layer must be drawn again. `redrawAll` repeats every node's look. */
  show(shapes: readonly Shape[], redrawAll = false): boolean {
    const next = new Map<string, { readonly shape: Shape; readonly node: Node }>()
    let touched = false
    let moved = false
    for (const shape of shapes) {
      const before = this.#known.get(shape.id)
      if (before === undefined) {
        next.set(shape.id, { shape, node: this.#surface.create(shape) })
        touched = moved = true
        continue
      }
      if (before.shape !== shape || redrawAll) {
        this.#surface.change(before.node, shape)
        touched = true
      }
      next.set(shape.id, { shape, node: before.node })
    }
    for (const [id, { node }] of this.#known) {
      if (next.has(id)) continue
      this.#surface.remove(node)
      touched = moved = true
    }
    moved ||= !sameOrder(this.#known, next)
    this.#known = next
    if (moved) [...next.values()].forEach(({ node }, index) => this.#surface.settle(node, index))
    return touched || moved
  }
}

function sameOrder(one: ReadonlyMap<string, unknown>, other: ReadonlyMap<string, unknown>): boolean {
  const ids = one.keys()
  for (const id of other.keys()) if (ids.next().value !== id) return false
  return true
}
