/** The colours of the window, each the CSS property of that name behind `--`. */
export type WindowColours = {
  /** The ground of the window. */
  readonly paper: string
  /** The ground of what lies on it: panels, fields, dialogs. */
  readonly sheet: string
  readonly grid: string
  readonly ink: string
  readonly 'ink-soft': string
  readonly line: string
  readonly 'line-thin': string
  /** Act here, now (blue for what is mandatory: IEC 60073); nothing else has this colour. */
  readonly act: string
  readonly 'on-act': string
  readonly 'act-wash': string
  readonly alarm: string
  readonly 'alarm-wash': string
  readonly done: string
  readonly 'on-done': string
}

/** The colours of the drawing by what they are for. Hues are Okabe and Ito's, told apart by colour-blind eyes too. */
export interface DrawingColours {
  readonly paper: string
  /** The squares of drafting paper; the paper's own colour where there are none. */
  readonly grid: string
  /** The face of the case, and its openings. */
  readonly metal: string
  readonly hollow: string
  readonly ink: string
  readonly quiet: string
  /** Lines to find one's way by, which carry no meaning of their own. */
  readonly faint: string
  /** As in the window. */
  readonly act: string
  readonly actHalo: string
  readonly onAct: string
  readonly warning: string
  readonly warningText: string
  readonly sealant: string
}

const blue = { light: '#0072b2', dark: '#56b4e9' } as const
const ink = { light: '#1d2228', dark: '#f0ece2' } as const
const orange = '#e69f00'

export const windowColours: Readonly<Record<'light' | 'dark', WindowColours>> = {
  light: {
    paper: '#f4f1e8',
    sheet: '#fcfbf6',
    grid: '#e7e2d3',
    ink: ink.light,
    'ink-soft': '#474e57',
    line: ink.light,
    'line-thin': '#8b8f90',
    act: blue.light,
    'on-act': '#ffffff',
    'act-wash': '#d6e8f3',
    alarm: '#8a3500',
    'alarm-wash': '#f9e3d3',
    done: ink.light,
    'on-done': '#fcfbf6',
  },
  dark: {
    paper: '#14171a',
    sheet: '#1a1e22',
    grid: '#262c32',
    ink: ink.dark,
    'ink-soft': '#bdc2c6',
    line: '#d9d6cd',
    'line-thin': '#727a81',
    act: blue.dark,
    'on-act': '#0b0e10',
    'act-wash': '#16354a',
    alarm: '#f0a45c',
    'alarm-wash': '#3b2413',
    done: ink.dark,
    'on-done': '#14171a',
  },
}

export const drawingColours: Readonly<Record<'light' | 'dark' | 'print', DrawingColours>> = {
  light: {
    paper: '#f8f5ed',
    grid: '#ebe6d9',
    metal: '#fefdfa',
    hollow: '#f4f0e6',
    ink: ink.light,
    quiet: '#56606b',
    faint: '#b9b29e',
    act: blue.light,
    actHalo: '#7fb8d8',
    onAct: '#ffffff',
    warning: '#d55e00',
    warningText: '#9c4400',
    sealant: orange,
  },
  dark: {
    paper: '#1a1e22',
    grid: '#23292f',
    metal: '#262c32',
    hollow: '#171b1f',
    ink: ink.dark,
    quiet: '#a8b0b8',
    faint: '#4c555e',
    act: blue.dark,
    actHalo: '#2f6e92',
    onAct: '#0b1116',
    warning: '#e8772e',
    warningText: '#f29a5e',
    sealant: orange,
  },
  print: {
    paper: '#ffffff',
    grid: '#ffffff',
    metal: '#ffffff',
    hollow: '#f1f1f1',
    ink: '#000000',
    quiet: '#404040',
    faint: '#9a9a9a',
    act: blue.light,
    actHalo: '#7fb8d8',
    onAct: '#ffffff',
    warning: '#d55e00',
    warningText: '#8a3c00',
    sealant: orange,
  },
}
