import type { Pattern } from '../../engine/index.ts'
import type { Box } from '../../plane/index.ts'

export type { Box }

/**
 * The drawing as plain, ordered data. Millimetres on the sheet, across the engine stretched where the sheet says so: x to the right, y down, the view (from above or below,
 * quarter turns) already applied. Nothing here knows pixels or colours: a `Role` says what a shape means and each
 * renderer (canvas, SVG) has one table from role to look. Later shapes lie over earlier ones of the same layer.
 */
export interface Scene {
  /** What must be in sight at zoom 1. */
  readonly frame: Box
  readonly shapes: readonly Shape[]
  /** The same content in words, in reading order: for those who cannot see the canvas, and for tests. */
  readonly rows: readonly SceneRow[]
}

/** `ground` never changes while a face is worked on; `parts` follow the build; `overlay` points at what is next. */
export type Layer = 'ground' | 'parts' | 'overlay'

export type Role =
  | 'grid'
  | 'outline'
  | 'opening'
  | 'crank'
  | 'crank-journal'
  | 'crank-web'
  | 'crank-shaft'
  | 'crank-wheel'
  | 'crank-line'
  | 'crank-sign'
  | 'crank-dot'
  | 'face-part'
  | 'face-part-fill'
  | 'face-part-edge'
  | 'face-part-line'
  | 'gasket'
  | 'cap'
  | 'quiet-cap'
  | 'axis'
  | 'centre-mark'
  | 'bore'
  | 'rod'
  | 'dowel'
  | 'oil-passage'
  | 'keep-out'
  | 'bead-start'
  | 'bead-way'
  | 'bead-to-lay'
  | 'bead-laid'
  | 'shell'
  | 'shell-unknown'
  | 'shell-fitted'
  | 'landmark'
  | 'plate'
  | 'grade'
  | 'plate-fitted'
  | 'grade-fitted'
  | 'tick-fitted'
  | 'thrust'
  | 'thrust-groove'
  | 'hole'
  | 'waiting'
  | 'next'
  | 'next-halo'
  | 'next-value'
  | 'next-half'
  | 'after-next'
  | 'distant'
  | 'partly-done'
  | 'done'
  | 'tick-done'
  | 'flagged'
  | 'out-of-limits'
  | 'path'
  | 'path-head'
  | 'crosshair'
  | 'callout'
  | 'callout-flagged'
  | 'checked'
  | 'open-note'
  | 'measured-note'
  | 'note-text'
  | 'tick-line'
  | 'fastener-tick'
  | 'label'
  | 'quiet-label'
  | 'warning-label'
  | 'nose'
  | 'clamp-cell'
  | 'clamp-line'
  | 'clamp-open'
  | 'protractor-ring'
  | 'protractor-wedge'
  | 'protractor-swept'
  | 'protractor-flat'
  | 'protractor-start'
  | 'protractor-end'
  | 'protractor-start-knob'
  | 'protractor-end-knob'
  | 'handle'
  | 'gauge-body'
  | 'gauge-face'
  | 'gauge-line'
  | 'gauge-number'
  | 'gauge-pointer'
  | 'gauge-strip'
  | 'gauge-pressed'

interface Common {
  /** Unique in the scene and the same from one scene to the next, for example `fastener/C4/ring`. */
  readonly id: string
  readonly layer: Layer
  readonly role: Role
  /** What a tap on this shape is about, for example `fastener/C4` or `half/M2/upper`. */
  readonly about?: string
}

export interface LineShape extends Common {
  readonly kind: 'line'
  /** x0, y0, x1, y1, … */
  readonly points: readonly number[]
  readonly closed: boolean
  /** Line width in mm; the look decides when absent. */
  readonly width?: number
}

export interface CircleShape extends Common {
  readonly kind: 'circle'
  readonly x: number
  readonly y: number
  readonly radius: number
}

/** A ring filled clockwise from the top by `share` (0 to 1). */
export interface RingShape extends Common {
  readonly kind: 'ring'
  readonly x: number
  readonly y: number
  readonly inner: number
  readonly outer: number
  readonly share: number
}

/** An area with a colour of its own from the spec, and a pattern so that colour is never alone. */
export interface SwatchShape extends Common {
  readonly kind: 'swatch'
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
  readonly colour: string
  readonly pattern: Pattern
}

export interface TextShape extends Common {
  readonly kind: 'text'
  /** The anchor: on the middle of the capitals' height, at the start, middle or end of the text. */
  readonly x: number
  readonly y: number
  readonly text: string
  /** Height of capitals in mm. */
  readonly capital: number
  readonly anchor: 'start' | 'middle' | 'end'
  readonly weight: 'regular' | 'bold'
}

export type Shape = LineShape | CircleShape | RingShape | SwatchShape | TextShape

export interface SceneRow {
  /** The same key as the shapes' `about`. */
  readonly about: string
  readonly text: string
  /** What state it is in, in one word of the drawing: waiting, next, done … */
  readonly state: string
}
