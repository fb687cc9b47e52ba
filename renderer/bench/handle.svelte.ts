import type { HandleState } from '../../core/contract/index.ts'
import type { View } from '../../core/layout/index.ts'
import type { Face } from '../../core/engine/index.ts'
import { degrees } from '../../core/quantity/index.ts'
import type { Angle } from '../../core/quantity/index.ts'
import { turnedOn } from '../../core/tightening/index.ts'
import type { Grip, Sense } from '../../core/tightening/index.ts'

/** Where the face is looked at from, and where its heads are. */
export interface ViewedFace {
  readonly view: View
  readonly workedFrom: View['from']
  readonly plane: Face['plane']
}

/**
 * The wrench's handle: where it stands, what room it has, and how far it has come. Directions on the sheet are in degrees
 * clockwise from straight up. The handle stays where it stands at the engine when the drawing is turned or flipped.
 */
export class Handle {
  readonly #looked: () => ViewedFace
  /** On the sheet as the face is first drawn. */
  #standing = $state(0)
  #room = $state<number | null>(null)
  #grip = $state<Grip>('ratchet')
  /** What was reached and counted for one pull; for another it begins again. */
  #turn = $state.raw<{ readonly of: string; readonly reached: Angle | null; readonly swings: number }>({
    of: '',
    reached: null,
    swings: 0,
  })

  /** `left` is how it was left at the last look, null where it was never moved. */
  constructor(looked: () => ViewedFace, left: HandleState | null = null) {
    this.#looked = looked
    if (left === null) return
    this.#standing = left.standing
    this.#room = left.room
    this.#grip = left.grip
    const reached = left.reached === null ? null : degrees(left.reached)
    this.#turn = { of: left.pull, reached, swings: left.swings }
  }

  /** To be kept, so that counted swings outlast a power cut. */
  get state(): HandleState {
    const { of, reached, swings } = this.#turn
    return { standing: this.#standing, room: this.#room, grip: this.#grip, pull: of, reached, swings }
  }

  /** Where the handle starts, on the sheet as it lies now. */
  readonly start: Angle = $derived.by(() => this.#onSheet(this.#standing))
  readonly sense: Sense = $derived.by(() => {
    // A side or an end of the case is never looked at through the metal: there a flip turns the sheet half round.
    return this.#isFlipped && this.#looked().plane === 'plan' ? 'anticlockwise' : 'clockwise'
  })

  /** Degrees the handle can swing in one go; null where nothing is in its way. */
  get room() {
    return this.#room
  }
  get grip() {
    return this.#grip
  }

  allow(room: number | null) {
    this.#room = room
  }
  hold(grip: Grip) {
    this.#grip = grip
  }
  /** The handle stands in this direction of the sheet; to whole degrees. */
  point(onSheet: number) {
    this.#standing = this.#standingOf(Math.round(onSheet))
  }
  pointBy(by: number) {
    this.point(this.start + by)
  }

  /** What was reached in a pull, in degrees since the start; null while the target is meant. */
  reached(pull: string): Angle | null {
    return this.#turn.of === pull ? this.#turn.reached : null
  }
  reach(pull: string, turned: number) {
    const rounded = degrees(Math.max(0, Math.round(turned)))
    this.#turn = { of: pull, reached: rounded, swings: this.swings(pull) }
  }
  /** The end of the handle was moved to a direction of the sheet, on from where it was. */
  drag(pull: string, target: Angle, to: Angle) {
    const so = this.reached(pull) ?? target
    const at = degrees(this.start + (this.sense === 'clockwise' ? so : 0 - so))
    this.reach(pull, turnedOn(so, at, to, this.sense))
  }

  /** Swings of a pull that are counted off. */
  swings(pull: string): number {
    return this.#turn.of === pull ? this.#turn.swings : 0
  }
  countSwing(pull: string) {
    this.#turn = { of: pull, reached: this.reached(pull), swings: this.swings(pull) + 1 }
  }

  #onSheet(standing: number): Angle {
    const { view } = this.#looked()
    return direction(this.#flip(standing) + 90 * view.turn)
  }
  #standingOf(onSheet: number): Angle {
    const unturned = onSheet - 90 * this.#looked().view.turn
    return direction(this.#flip(unturned))
  }
  /** Its own inverse. A flipped plan is mirrored about the crank axis, which lies level before the sheet is turned. */
  #flip(angle: number): number {
    if (!this.#isFlipped) return angle
    return this.#looked().plane === 'plan' ? 180 - angle : angle + 180
  }

  get #isFlipped(): boolean {
    const { view, workedFrom } = this.#looked()
    return view.from !== workedFrom
  }
}

function direction(angle: number): Angle {
  return degrees(((angle % 360) + 360) % 360)
}
