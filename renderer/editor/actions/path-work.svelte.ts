import {
  leastPoints,
  withBead,
  withBeadPath,
  withOutline,
  type SketchedThing,
  type Sketch,
} from '../../../core/drafts/index.ts'
import type { Point } from '../../../core/plane/index.ts'
import { done } from '../../../core/problem/index.ts'
import type { EditorDesk } from '../editor-desk.svelte.ts'

type TypedBead = Extract<SketchedThing, { kind: 'bead' }>['typed']

/** An outline or a bead while it is drawn point by point. It is in the document as soon as its points make one; before, beside it. */
export class PathWork {
  readonly #desk: EditorDesk
  #drawn = $state.raw<SketchedThing | null>(null)
  #points = $state.raw<readonly Point[]>([])
  #face = ''
  /** The bead in the document, once it is there. */
  #bead: string | null = null

  constructor(desk: EditorDesk) {
    this.#desk = desk
  }

  /** What is drawn now; null for nothing. On another face nothing is. */
  get kind(): SketchedThing['kind'] | null {
    return this.#drawn !== null && this.#face === this.#desk.face ? this.#drawn.kind : null
  }
  get points() {
    return this.kind === null ? [] : this.#points
  }
  get least() {
    return this.kind === null ? 0 : leastPoints[this.kind]
  }

  beginOutline() {
    this.#begin({ kind: 'outline' })
  }
  beginBead(typed: TypedBead) {
    this.#begin({ kind: 'bead', typed })
  }
  /** Goes on where the window was closed: nothing that was on the drawing is lost. */
  resume({ face, drawn, points }: Sketch) {
    this.#drawn = drawn
    this.#points = points
    this.#bead = null
    this.#face = face
  }
  finish() {
    this.#drawn = null
    this.#points = []
    void this.#sketch(null)
  }
  async add(at: Point) {
    await this.#keep([...this.#points, at])
  }
  async takeBack() {
    await this.#keep(this.#points.slice(0, -1))
  }

  #begin(drawn: SketchedThing) {
    this.#drawn = drawn
    this.#points = []
    this.#bead = null
    this.#face = this.#desk.face
    this.#desk.choose([])
  }

  /** What the document cannot take does not stay on the drawing either. */
  async #keep(points: readonly Point[]) {
    const [drawn, face] = [this.#drawn, this.#face]
    if (drawn === null) return
    const before = this.#points
    this.#points = points
    if (points.length < leastPoints[drawn.kind]) {
      await this.#sketch(points.length === 0 ? null : { face, drawn, points: [...points] })
      return
    }
    const isKept =
      drawn.kind === 'outline'
        ? await this.#desk.change({ code: 'outlineDrawn', facts: { face: this.#faceName } }, (document) =>
            done(withOutline(document, face, points)),
          )
        : await this.#keepBead(drawn.typed, face, points)
    if (!isKept) this.#points = before
    else await this.#sketch(null)
  }

  async #sketch(sketch: Sketch | null) {
    const { beside } = this.#desk.draft
    if (sketch !== null || beside.sketch() !== null) await beside.keepSketch(sketch)
  }

  /** As the drawing calls it. */
  get #faceName(): string {
    return this.#desk.spec.case.faces.find(({ id }) => id === this.#face)?.name ?? this.#face
  }

  #keepBead(typed: TypedBead, face: string, points: readonly Point[]): Promise<boolean> {
    const bead = this.#bead
    const name = typeof typed.name === 'string' ? typed.name : face
    return this.#desk.change({ code: 'beadDrawn', facts: { name } }, (document) => {
      if (bead !== null) return withBeadPath(document, bead, points)
      const made = withBead(document, face, typed, points)
      if (!made.ok) return made
      this.#bead = made.value.bead
      return done(made.value.document)
    })
  }
}
