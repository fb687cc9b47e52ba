import type { PictureLine } from '../../../core/contract/index.ts'
import {
  lyingBy,
  pinnedByDistance,
  pinnedToPlaces,
  shifted,
  turnedAbout,
  placeOf,
  type LineRuns,
  type PicturePlacement,
  type PictureLook,
  type Pins,
} from '../../../core/drafts/index.ts'
import type { Point } from '../../../core/plane/index.ts'
import { problem, type Outcome, type Problem } from '../../../core/problem/index.ts'
import { jpegOf } from '../../photos/jpeg-of.ts'
import type { EditorDesk } from '../editor-desk.svelte.ts'

/** What of the drawing a picture is placed on: in nanometres of the engine's frame, as it is looked at. */
export interface Ground {
  /** Whether the drawing shows the engine's frame reversed. */
  readonly mirrored: boolean
  /** The ends of a line across the middle of the drawing, the left one first. */
  readonly left: Point
  readonly right: Point
}

type OpenedPicture = ImageBitmap | 'opening' | Problem

/** The manual's pictures under the drawings of a draft: which there are, and how the one of this face is placed. */
export class PictureWork {
  readonly #desk: EditorDesk
  readonly #ground: () => Ground | null
  readonly #open: (file: Blob) => Promise<ImageBitmap>
  #lines = $state.raw<readonly PictureLine[]>([])
  /** By face and hash. */
  #opened = $state.raw<Readonly<Record<string, OpenedPicture>>>({})
  #problem = $state.raw<Problem | null>(null)
  /** Where it is held while it is drawn about. */
  #held = $state.raw<Pins | null>(null)
  /** The points that were chosen on the picture, in its pixels; null while none are asked for. */
  #points = $state.raw<readonly Point[] | null>(null)
  /** Where the cross stands that the next point comes from. */
  #cross = $state.raw<Point | null>(null)
  #last: Promise<unknown> = Promise.resolve()

  /** The picture of the face that is looked at, as it lies now; null for none. */
  readonly current = $derived.by(() => {
    const line = this.#lines.find(({ face }) => face === this.#desk.face)
    if (line === undefined) return null
    return this.#held === null ? line : { ...line, look: { ...line.look, pins: this.#held } }
  })
  readonly lying: PicturePlacement | null = $derived.by(() => {
    const ground = this.#ground()
    return this.current === null || ground === null ? null : lyingBy(this.current.look.pins, ground.mirrored)
  })
  readonly #openedNow = $derived.by(() =>
    this.current === null ? null : (this.#opened[keyOf(this.current)] ?? null),
  )
  /** What can be drawn of it; null while it is opened, hidden or damaged. */
  readonly image = $derived.by(() => {
    const opened = this.#openedNow
    const isShown = this.current?.look.shown === true && opened instanceof ImageBitmap
    return isShown ? opened : null
  })
  /** Why it cannot be seen, or why something was not done. */
  readonly problem = $derived.by(() => {
    const opened = this.#openedNow
    const isBroken = opened !== null && opened !== 'opening' && 'code' in opened
    return this.#problem ?? (isBroken ? opened : null)
  })

  constructor(
    desk: EditorDesk,
    ground: () => Ground | null,
    open: (file: Blob) => Promise<ImageBitmap> = (file) => createImageBitmap(file),
  ) {
    this.#desk = desk
    this.#ground = ground
    this.#open = open
  }

  get points() {
    return this.current === null ? null : this.#points
  }
  /** Whether the next tap is for a point of the picture. */
  get choosing() {
    return this.points !== null && this.points.length < 2
  }
  get cross() {
    return this.choosing ? this.#cross : null
  }
  dismiss() {
    this.#problem = null
  }

  async load(): Promise<void> {
    const listed = await this.#pictures.list()
    if (!listed.ok) {
      this.#problem = listed.problem
      return
    }
    this.#lines = listed.value
    await Promise.all(listed.value.map((line) => this.#openOf(line)))
  }

  /** Another window has changed them: they are as it left them, once what is under way here is done. */
  follow(): Promise<unknown> {
    const turn = this.#last.then(() => this.load())
    this.#last = turn.catch(() => undefined)
    return turn
  }

  /** Puts a picture under this face, in the middle of its drawing. */
  async put(base64: string, { widthPx, heightPx }: { widthPx: number; heightPx: number }): Promise<boolean> {
    const ground = this.#ground()
    if (ground === null) return false
    const { left, right } = ground
    const pins: Pins = [
      { px: { x: 0, y: heightPx / 2 }, at: left },
      { px: { x: widthPx, y: heightPx / 2 }, at: right },
    ]
    const { face } = this.#desk
    return this.#inTurn(() => this.#pictures.put(face, { pins, opacity: 70, shown: true }, base64))
  }
  remove(): Promise<boolean> {
    const { face } = this.#desk
    this.leavePoints()
    return this.#inTurn(async () => {
      const removed = await this.#pictures.remove(face)
      if (removed.ok) this.#lines = this.#lines.filter((line) => line.face !== face)
      return removed.ok ? null : removed
    })
  }
  show(shown: boolean): Promise<boolean> {
    return this.#place((look) => ({ ...look, shown }))
  }
  fade(opacity: number): Promise<boolean> {
    return this.#place((look) => ({ ...look, opacity }))
  }
  /** By a way in the engine's frame. */
  move(by: Point): Promise<boolean> {
    return this.#place((look) => ({ ...look, pins: shifted(look.pins, by) }))
  }
  /** Turns it to the right about its middle, as it is seen, and makes it larger. */
  turn(degrees: number, factor = 1): Promise<boolean> {
    const [ground, { current }] = [this.#ground(), this]
    if (ground === null || current === null) return Promise.resolve(false)
    const middle = { x: current.widthPx / 2, y: current.heightPx / 2 }
    const way = ground.mirrored ? -degrees : degrees
    return this.#place((look) => {
      const about = placeOf(lyingBy(look.pins, ground.mirrored), middle)
      return { ...look, pins: turnedAbout(look.pins, about, way, factor) }
    })
  }

  hold(by: Point) {
    const line = this.#lines.find(({ face }) => face === this.#desk.face)
    if (line !== undefined) this.#held = shifted(line.look.pins, by)
  }
  async letGo(isMeant: boolean): Promise<void> {
    const held = this.#held
    if (held !== null && isMeant) await this.#place((look) => ({ ...look, pins: held }))
    this.#held = null
  }

  beginPoints() {
    const { current } = this
    if (current === null) return
    this.#points = []
    this.#cross = { x: current.widthPx / 2, y: current.heightPx / 2 }
  }
  leavePoints() {
    this.#points = null
    this.#cross = null
  }
  moveCross(to: Point) {
    const { current } = this
    if (current === null) return
    const within = (value: number, most: number) => Math.min(most, Math.max(0, value))
    this.#cross = { x: within(to.x, current.widthPx), y: within(to.y, current.heightPx) }
  }
  /** The cross becomes the next point. */
  setPoint() {
    if (this.#points !== null && this.#cross !== null && this.choosing)
      this.#points = [...this.#points, this.#cross]
  }

  /** The two points lie so far apart, in nanometres. */
  placeByDistance(distance: number, runs: LineRuns): Promise<boolean> {
    const { lying } = this
    if (lying === null) return Promise.resolve(false)
    return this.#pin((points) => pinnedByDistance(lying, points, distance, runs))
  }
  placeAt(places: readonly [Point, Point]): Promise<boolean> {
    return this.#pin((points) => pinnedToPlaces(points, places))
  }

  async #pin(make: (points: readonly [Point, Point]) => Outcome<Pins>): Promise<boolean> {
    const [one, other] = this.#points ?? []
    if (one === undefined || other === undefined) return false
    const pins = make([one, other])
    if (!pins.ok) {
      this.#problem = pins.problem
      return false
    }
    const isPlaced = await this.#place((look) => ({ ...look, pins: pins.value }))
    if (isPlaced) this.leavePoints()
    return isPlaced
  }

  #place(make: (look: PictureLook) => PictureLook): Promise<boolean> {
    const { face } = this.#desk
    return this.#inTurn(() => {
      const line = this.#lines.find((each) => each.face === face)
      return line === undefined ? Promise.resolve(null) : this.#pictures.place(face, make(line.look))
    })
  }

  /** What is shown is on disk: one change after the other. */
  #inTurn(
    work: () => Promise<Outcome<PictureLine> | { ok: false; problem: Problem } | null>,
  ): Promise<boolean> {
    const turn = this.#last.then(async () => {
      this.#problem = null
      const kept = await work()
      if (kept === null) return true
      if (kept.ok) await this.#take(kept.value)
      else {
        this.#problem = kept.problem
        if (kept.problem.code === 'picture-missing') await this.load()
      }
      return kept.ok
    })
    this.#last = turn.catch(() => undefined)
    return turn
  }
  async #take(line: PictureLine) {
    this.#lines = [...this.#lines.filter(({ face }) => face !== line.face), line]
    await this.#openOf(line)
  }
  async #openOf(line: PictureLine) {
    const key = keyOf(line)
    if (key in this.#opened) return
    this.#keepOpened(key, 'opening')
    const read = await this.#pictures.read(line.face)
    if (!read.ok) this.#keepOpened(key, read.problem)
    else {
      const opened = await this.#open(jpegOf(read.value.base64)).catch(() =>
        problem('picture-damaged', {}, 'face'),
      )
      this.#keepOpened(key, opened)
    }
  }
  #keepOpened(key: string, opened: OpenedPicture) {
    this.#opened = { ...this.#opened, [key]: opened }
  }
  get #pictures() {
    return this.#desk.draft.beside.pictures
  }
}

const keyOf = ({ face, sha256 }: PictureLine) => `${face}/${sha256}`
