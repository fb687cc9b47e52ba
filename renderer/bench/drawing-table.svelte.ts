import type { View } from '../../core/layout/index.ts'
import type { Face } from '../../core/spec/index.ts'
import { Handle } from './handle.svelte.ts'

/** How the drawing lies before the person: which way each face is looked at, and which part was tapped last. */
export class DrawingTable {
  readonly #face: () => Face
  #chosen = $state.raw<Readonly<Record<string, View>>>({})
  #picked = $state<string | null>(null)

  readonly face = $derived.by(() => this.#face())
  /** A face is first looked at the way it is worked on; after that the way it was left. */
  readonly view: View = $derived.by(
    () => this.#chosen[this.face.id] ?? { from: this.face.workedFrom, turn: 0 },
  )

  readonly handle: Handle

  constructor(face: () => Face) {
    this.#face = face
    this.handle = new Handle(() => ({
      view: this.view,
      workedFrom: this.face.workedFrom,
      plane: this.face.plane,
    }))
  }

  /** What was tapped, as the scene names it: `fastener/C4`, `half/M2/upper`. */
  get picked() {
    return this.#picked
  }

  flip() {
    this.#look({ ...this.view, from: this.view.from === 'above' ? 'below' : 'above' })
  }
  turn() {
    this.#look({ ...this.view, turn: ((this.view.turn + 1) % 4) as View['turn'] })
  }
  pick(about: string | null) {
    this.#picked = about
  }

  #look(view: View) {
    this.#chosen = { ...this.#chosen, [this.face.id]: view }
  }
}
