import { degrees, type Angle } from '../quantity/index.ts'
import type { AcceptanceWindow } from './reading/window.ts'

type AngleWindow = Extract<AcceptanceWindow, { readonly kind: 'angle' }>

/**
 * Which way tightening goes round on the drawing. A right-hand thread turns clockwise seen from its head, and
 * so anticlockwise on a drawing that is seen from the other side.
 */
export type Sense = 'clockwise' | 'anticlockwise'

/**
 * Directions of a handle, in degrees clockwise from straight up on the drawing, from 0 up to but not
 * including 360.
 */
export interface Protractor {
  readonly start: Angle
  /** Where the handle is at the target, and where it comes within the limits and leaves them again. */
  readonly end: Angle
  readonly least: Angle
  readonly most: Angle
  /** Full turns that come before `end` is meant. */
  readonly fullTurns: number
  /** Where the handle is after each whole flat of a hexagon, up to and including the target. */
  readonly flats: readonly Angle[]
}

/** Where the handle goes from a start direction, any number of degrees, to be within an angle window. */
export function protractor(start: Angle, window: AngleWindow, sense: Sense): Protractor {
  const after = (turn: number) => direction(start + signOf(sense) * turn)
  return {
    start: direction(start),
    end: after(window.target),
    least: after(window.least),
    most: after(window.most),
    fullTurns: Math.floor(window.target / 360),
    flats: Array.from({ length: Math.floor(window.target / 60) }, (_, index) => after((index + 1) * 60)),
  }
}

/**
 * How far a fastener has been turned when the handle comes from one direction to another: the shorter way
 * round is added, so that a hand that is followed in small steps may go round more than once, and a step back
 * is taken off.
 */
export function turnedOn(turned: Angle, from: Angle, to: Angle, sense: Sense): Angle {
  const step = direction(signOf(sense) * (to - from))
  return degrees(turned + (step > 180 ? step - 360 : step))
}

function signOf(sense: Sense): 1 | -1 {
  return sense === 'clockwise' ? 1 : -1
}

function direction(angle: number): Angle {
  return degrees(((angle % 360) + 360) % 360)
}
