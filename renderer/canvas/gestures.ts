/** What hands and wheels ask of a drawing, in px of the element. */
export interface Gestures {
  tap(x: number, y: number): void
  pan(dx: number, dy: number): void
  zoom(factor: number, x: number, y: number): void
  /** What a press takes hold of: it hears where the finger goes, and the sheet stays. Null beside all such things. */
  grab(x: number, y: number): ((x: number, y: number) => void) | null
  /** What was taken hold of is let go; false where the press was broken off and nothing is to come of it. */
  release?(isMeant: boolean): void
}

/** A finger may tremble this far and still tap. */
const still = 8

interface Touch {
  readonly x: number
  readonly y: number
}

/** Listens for drag, pinch, wheel and tap on an element. Gives a function that stops listening. */
export function listen(element: HTMLElement, gestures: Gestures): () => void {
  const down = new Map<number, Touch>()
  /** Where a tap began; null as soon as the hand does something else. */
  let tap: Touch | null = null
  let grip: ReturnType<Gestures['grab']> = null

  const place = (event: PointerEvent | WheelEvent): Touch => {
    const { left, top } = element.getBoundingClientRect()
    return { x: event.clientX - left, y: event.clientY - top }
  }
  const press = (event: PointerEvent): void => {
    if (event.button !== 0) return
    element.setPointerCapture(event.pointerId)
    down.set(event.pointerId, place(event))
    const { x, y } = place(event)
    grip = down.size === 1 ? gestures.grab(x, y) : null
    tap = down.size === 1 && grip === null ? { x, y } : null
  }
  const move = (event: PointerEvent): void => {
    const before = down.get(event.pointerId)
    if (before === undefined) return
    const now = place(event)
    const [other] = [...down].filter(([id]) => id !== event.pointerId).map(([, touch]) => touch)
    if (grip !== null) {
      grip(now.x, now.y)
    } else if (other !== undefined) {
      pinch(gestures, other, before, now)
    } else {
      if (tap !== null && Math.hypot(now.x - tap.x, now.y - tap.y) < still) return
      gestures.pan(now.x - before.x, now.y - before.y)
    }
    tap = null
    down.set(event.pointerId, now)
  }
  const lift = (event: PointerEvent): void => {
    if (!down.delete(event.pointerId)) return
    if (tap !== null && event.type === 'pointerup') gestures.tap(tap.x, tap.y)
    if (grip !== null) gestures.release?.(event.type === 'pointerup')
    tap = null
    grip = null
  }
  const roll = (event: WheelEvent): void => {
    event.preventDefault()
    const { x, y } = place(event)
    gestures.zoom(Math.exp(-event.deltaY * 0.0015), x, y)
  }

  element.style.touchAction = 'none'
  element.addEventListener('pointerdown', press)
  element.addEventListener('pointermove', move)
  element.addEventListener('pointerup', lift)
  element.addEventListener('pointercancel', lift)
  element.addEventListener('wheel', roll, { passive: false })
  return () => {
    element.removeEventListener('pointerdown', press)
    element.removeEventListener('pointermove', move)
    element.removeEventListener('pointerup', lift)
    element.removeEventListener('pointercancel', lift)
    element.removeEventListener('wheel', roll)
  }
}

/** Two fingers: the sheet follows the point between them and grows with their distance. */
function pinch(gestures: Gestures, other: Touch, before: Touch, now: Touch): void {
  const apart = Math.hypot(before.x - other.x, before.y - other.y)
  const middle = { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 }
  gestures.pan((now.x - before.x) / 2, (now.y - before.y) / 2)
  if (apart > 0) gestures.zoom(Math.hypot(now.x - other.x, now.y - other.y) / apart, middle.x, middle.y)
}
