import type { Role } from '../../core/layout/index.ts'
import { drawingColours, type DrawingColours } from '../look/colours.ts'

export type Theme = 'light' | 'dark' | 'print'

/** The families a text is set in, where the first is there; the last is whatever the reader has. */
export const drawingFont = "'Atkinson Hyperlegible Next', sans-serif"

/** How a role is drawn. Widths and dashes in px at zoom 1; what is absent is not drawn. */
export interface Look {
  readonly fill?: string
  readonly stroke?: string
  readonly width?: number
  readonly dash?: readonly number[]
  /** Slanting lines over the area. */
  readonly hatch?: string
  /** A wider line of this colour under the line itself. */
  readonly casing?: string
  /** Colour of a text. */
  readonly text?: string
  /** Colour behind the letters, so that a line under them does not disturb. */
  readonly halo?: string
}

const heavy = 2.6
const medium = 1.7
const thin = 1

/** The one table from what a shape means to how it looks. */
function lookOf(palette: DrawingColours): Readonly<Record<Role, Look>> {
  const {
    paper,
    grid,
    metal,
    hollow,
    ink,
    quiet,
    faint,
    act,
    actHalo,
    onAct,
    warning,
    warningText,
    sealant,
  } = palette
  const letters = { halo: paper }
  return {
    grid: grid === paper ? {} : { stroke: grid, width: thin },
    outline: { fill: metal, stroke: ink, width: heavy },
    opening: { fill: hollow, stroke: faint, width: thin },
    crank: { fill: metal, stroke: quiet, width: thin },
    'crank-journal': { fill: metal, stroke: ink, width: medium },
    'crank-web': { fill: hollow, stroke: ink, width: medium },
    'crank-shaft': { fill: metal, stroke: quiet, width: thin },
    'crank-wheel': { fill: metal, stroke: ink, width: medium },
    'crank-line': { stroke: quiet, width: thin },
    'crank-sign': { stroke: ink, width: thin },
    'crank-dot': { fill: ink },
    'face-part': { fill: metal, stroke: ink, width: medium },
    'face-part-fill': { fill: metal },
    'face-part-edge': { stroke: ink, width: medium },
    'face-part-line': { stroke: quiet, width: thin },
    gasket: { stroke: quiet, width: thin },
    'quiet-cap': { fill: metal, stroke: quiet, width: thin },
    cap: { fill: metal, stroke: ink, width: medium },
    rod: { fill: metal, stroke: ink, width: medium },
    axis: { stroke: ink, width: thin, dash: [16, 4, 3, 4] },
    'centre-mark': { stroke: quiet, width: thin },
    bore: { stroke: quiet, width: thin, dash: [6, 4] },
    dowel: { fill: metal, stroke: ink, width: thin },
    'oil-passage': { fill: metal, stroke: ink, width: thin, hatch: quiet },
    'keep-out': { fill: metal, stroke: warning, width: medium, hatch: warning },
    'bead-start': { fill: act, stroke: ink, width: thin },
    'bead-way': { stroke: ink, width: medium },
    'bead-to-lay': { stroke: sealant, casing: ink, dash: [0, 2] },
    'bead-laid': { stroke: sealant, casing: ink },
    shell: { stroke: ink, width: thin, dash: [4, 2.5] },
    'shell-fitted': { stroke: ink, width: medium },
    'shell-unknown': { fill: metal, stroke: quiet, width: thin, hatch: quiet },
    plate: { fill: metal, stroke: ink, width: thin },
    grade: { text: ink },
    'plate-fitted': { fill: ink },
    'grade-fitted': { text: paper },
    'tick-fitted': { stroke: paper, width: 2 },
    landmark: { fill: hollow, stroke: faint, width: thin },
    thrust: { fill: quiet, stroke: ink, width: thin },
    'thrust-groove': { fill: paper, stroke: ink, width: 0.6 },
    hole: { fill: paper, stroke: ink, width: thin },
    waiting: { fill: metal, stroke: ink, width: 1.4, text: ink },
    next: { fill: act, stroke: ink, width: heavy, text: onAct },
    'next-half': { stroke: act, width: 4 },
    'next-halo': { stroke: actHalo, width: 3 },
    'next-value': { text: ink },
    'after-next': { stroke: quiet, width: 1.4, dash: [3, 3] },
    'partly-done': { fill: ink },
    done: { fill: ink, stroke: ink, width: 1.4, text: paper },
    'tick-done': { stroke: paper, width: 2 },
    distant: { fill: metal, stroke: quiet, width: 1.2 },
    flagged: { fill: metal, stroke: warning, width: heavy },
    'out-of-limits': { stroke: warning, width: heavy },
    path: { stroke: act, width: medium, dash: [7, 5] },
    'path-head': { fill: act },
    crosshair: { stroke: act, width: medium },
    callout: { fill: metal, stroke: act, width: heavy },
    'callout-flagged': { fill: metal, stroke: warning, width: heavy },
    checked: { stroke: act, width: 4 },
    'open-note': { fill: metal, stroke: warning, width: medium },
    'measured-note': { fill: metal, stroke: quiet, width: thin },
    'note-text': { text: ink },
    'tick-line': { stroke: quiet, width: thin },
    'fastener-tick': { stroke: quiet, width: thin },
    label: { text: ink, ...letters },
    'quiet-label': { text: quiet, ...letters },
    'warning-label': { text: warningText, ...letters },
    nose: { fill: ink },
    'clamp-cell': {},
    'clamp-line': { stroke: ink, width: thin },
    'clamp-open': { stroke: warning, width: medium },
    'protractor-ring': { stroke: quiet, width: thin },
    'protractor-wedge': { fill: actHalo, stroke: ink, width: thin },
    'protractor-swept': { stroke: act, width: 4 },
    'protractor-flat': { stroke: ink, width: medium },
    'protractor-start': { stroke: ink, width: medium, dash: [6, 4] },
    'protractor-end': { stroke: act, width: heavy },
    handle: { fill: paper, stroke: ink, width: medium },
    'protractor-start-knob': { fill: metal, stroke: ink, width: heavy },
    'protractor-end-knob': { fill: act, stroke: ink, width: heavy },
    'gauge-body': { fill: hollow, stroke: ink, width: thin },
    'gauge-face': { fill: metal, stroke: ink, width: thin },
    'gauge-line': { stroke: ink, width: thin },
    'gauge-number': { text: ink },
    'gauge-pointer': { stroke: ink, width: heavy },
    'gauge-strip': { fill: ink },
    'gauge-pressed': { fill: quiet },
  }
}

const byTheme: Readonly<Record<Theme, Readonly<Record<Role, Look>>>> = {
  light: lookOf(drawingColours.light),
  dark: lookOf(drawingColours.dark),
  print: lookOf(drawingColours.print),
}

/** The looks of a theme, the same table each time. */
export function looks(theme: Theme): Readonly<Record<Role, Look>> {
  return byTheme[theme]
}
