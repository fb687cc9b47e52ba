import type { HandleState } from '../../core/contract/index.ts'
import { acrossAnEnd, noseSide, viewOriented, viewWithNose } from '../../core/layout/index.ts'
import type { BenchOrientation, SheetSide, View } from '../../core/layout/index.ts'
import type { Face } from '../../core/engine/index.ts'
import { Handle } from './handle.svelte.ts'
import type { FaceViews } from './kept-by-build.ts'

interface TableSetting {
  /** What is drawn now. */
  readonly face: () => Face
  /** How the faces were left. */
  readonly views: FaceViews
  /** How the wrench's handle was left; null where it was never moved. */
  readonly handle: HandleState | null
  readonly letterKeys: () => boolean
  /** Called whenever a face is looked at another way. */
  readonly onlook: (views: FaceViews) => void
}

/** How the drawing lies before the person: which way each face is looked at, from how near, and what was tapped last. */
export class DrawingTable {
  readonly #laid: TableSetting
  #chosen = $state.raw<FaceViews>({})
  #picked = $state<string | null>(null)
  #onPick: ((about: string) => boolean) | null = null
  #fromTheBench = $state(false)
  #showsAll = $state(false)
  #putOff = $state.raw<readonly number[]>([])

  readonly face = $derived.by(() => this.#laid.face())
  /** A face is first looked at the way it is worked on; after that the way it was left. */
  readonly view: View = $derived.by(
    () => this.#chosen[this.face.id] ?? { from: this.face.workedFrom, turn: 0 },
  )
  /** Null for a face across an end. */
  readonly nose: SheetSide | null = $derived.by(() =>
    acrossAnEnd(this.face) ? null : noseSide(this.face, this.view),
  )

  readonly handle: Handle

  constructor(laid: TableSetting) {
    this.#laid = laid
    this.#chosen = laid.views
    this.handle = new Handle(
      () => ({
        view: this.view,
        workedFrom: this.face.workedFrom,
        plane: this.face.plane,
      }),
      laid.handle,
    )
  }

  /** What was tapped, as the scene names it: `fastener/C4`, `half/M2/upper`. */
  get picked() {
    return this.#picked
  }
  /** Whether only what is next is shown, large, for somebody who stands at the engine. */
  get fromTheBench() {
    return this.#fromTheBench
  }
  /** Whether everything is drawn, not only what the step is about. */
  get showsAll() {
    return this.#showsAll
  }
  /** The flags, by number, whose answers were put off: they come back at the end. */
  get putOff() {
    return this.#putOff
  }

  /** Whether keys of one character do anything. */
  get letterKeys() {
    return this.#laid.letterKeys()
  }

  flip() {
    this.#look({ ...this.view, from: this.view.from === 'above' ? 'below' : 'above' })
  }
  turn() {
    this.#look({ ...this.view, turn: ((this.view.turn + 1) % 4) as View['turn'] })
  }
  orient(orientation: BenchOrientation) {
    this.#look(viewOriented(this.face, orientation, this.view))
  }
  pointNose(side: SheetSide) {
    this.#look(viewWithNose(this.face, this.view, side))
  }
  pick(about: string | null) {
    if (about === null || !this.#onPick?.(about)) this.#picked = about
  }
  /**
   * Hands every tap on a part to one listener, until the function given back is called. Where it answers true, that was
   * all, and nothing is picked.
   */
  listen(onPick: (about: string) => boolean): () => void {
    this.#onPick = onPick
    return () => {
      if (this.#onPick === onPick) this.#onPick = null
    }
  }
  showAll(all: boolean) {
    this.#showsAll = all
  }
  putOffFlag(flag: number) {
    this.#putOff = [...this.#putOff, flag]
  }
  recallFlag(flag: number) {
    this.#putOff = this.#putOff.filter((each) => each !== flag)
  }
  stepBack(toTheBench: boolean) {
    this.#fromTheBench = toTheBench
  }

  #look(view: View) {
    this.#chosen = { ...this.#chosen, [this.face.id]: view }
    this.#laid.onlook(this.#chosen)
  }
}
