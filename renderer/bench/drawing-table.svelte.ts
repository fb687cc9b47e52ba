import type { View } from '../../core/layout/index.ts'

/** How the drawing lies before the person: which way it is looked at, and which part was tapped last. */
export class DrawingTable {
  #view = $state.raw<View>({ from: 'above', turn: 0 })
  #picked = $state<string | null>(null)

  get view() {
    return this.#view
  }
  /** What was tapped, as the scene names it: `fastener/C4`, `half/M2/upper`. */
  get picked() {
    return this.#picked
  }

  lookFrom(from: View['from']) {
    this.#view = { ...this.#view, from }
  }
  flip() {
    this.lookFrom(this.#view.from === 'above' ? 'below' : 'above')
  }
  turn() {
    this.#view = { ...this.#view, turn: ((this.#view.turn + 1) % 4) as View['turn'] }
  }
  pick(about: string | null) {
    this.#picked = about
  }
}
