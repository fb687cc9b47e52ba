import type { Pattern } from '../engine/index.ts'
import type { DrawingSubject } from './content.ts'

/** Which way the face is looked at. Seen from below is the engine rolled about its crank axis: the nose stays where it was. */
export interface View {
  readonly from: 'above' | 'below'
  /** Quarter turns clockwise. */
  readonly turn: 0 | 1 | 2 | 3
}

/** The room for the drawing. Text sizes are in these pixels, so that a number stays readable whatever the engine's size. */
export interface Sheet {
  readonly widthPx: number
  readonly heightPx: number
  /**
   * Height of the capitals of what is next: its number and its value. Other numbers have this height too up to 18 px, and
   * are smaller where fasteners are close to each other; names are smaller still.
   */
  readonly capitalPx: number
  /** For who reads from afar: only what is next and its neighbours have numbers. */
  readonly onlyNext?: boolean
}

export type FastenerState = 'waiting' | 'next' | 'after-next' | 'partly-done' | 'done' | 'flagged'

export interface FastenerFact {
  /** What stands in its disc. */
  readonly number: string
  readonly state: FastenerState
  /** Share of its passes that are done, 0 to 1. */
  readonly share: number
}

export interface HalfFact {
  readonly grade: string
  readonly colour: string
  readonly pattern: Pattern
  readonly fitted: boolean
}

export interface BearingFact {
  readonly upper: HalfFact | null
  readonly lower: HalfFact | null
  /** For example `38 µm`; null while unknown. */
  readonly clearance: string | null
  readonly withinLimits: boolean
  /** How the clearance leaves its limits, for example `too loose, 20 to 47 µm allowed`; absent where it does not. */
  readonly judged?: string
  /** What a person has to look at here, for example `marks and readings differ`; absent where nothing is. */
  readonly flag?: string
}

export type BeadState = 'to-lay' | 'laid'

/** What is noted of one thing of the drawing. What is said of bearings stands in `BearingFact`. */
export interface NoteFact {
  /** The thing as the scene names it: `fastener/C4`, `thrust/M3`, `face/joint`. */
  readonly about: string
  /** `open` wants an answer or another look; `measured` only says what was found. */
  readonly kind: 'open' | 'measured'
  /** Each short and plain, without the name of the thing: `reads 18 N·m, 22.8 to 25.2`. At least one. */
  readonly texts: readonly string[]
}

/** What the build adds to the bare case of the spec: everything on the drawing that can change. */
export interface DrawingFacts {
  /** Which joint face is drawn. */
  readonly face: string
  /** What the drawing is about: nothing else is shown. */
  readonly subject: DrawingSubject
  /** By id of saddle, rod or balance bearing. */
  readonly bearings: Readonly<Record<string, BearingFact>>
  /** By fastener id; a fastener of the face that is not named here is drawn waiting with its own number. */
  readonly fasteners: Readonly<Record<string, FastenerFact>>
  /** The cap that is worked on, where the procedure goes cap by cap: the rest is drawn quietly. Null elsewhere. */
  readonly cap?: { readonly bearing: string; readonly fasteners: readonly string[] } | null
  /** From the last fastener pulled to the next one. */
  readonly path: { readonly from: string; readonly to: string } | null
  /** The half to be fitted next, as `M2/upper`. */
  readonly nextHalf: string | null
  /** Whether the crank lies open in the case, so that it is drawn where its spec says how. */
  readonly crank?: boolean
  /** Whether the gasket of the face is being laid. */
  readonly gasket?: boolean
  /** The thing that is checked, as the scene names it: `thrust/M3`. Null where it is no single thing. */
  readonly checked: string | null
  /** The flagged thing that has to be answered for, as the scene names it; nothing is next while there is one. */
  readonly actOn: string | null
  /** What stands in the callout beside the number of what is next, for example `24 N·m` or `fit T`. */
  readonly callout: string | null
  /** What else is noted of the face, the most pressing first. */
  readonly notes: readonly NoteFact[]
  /** By bead id: to be laid now, or laid. Any other bead is not drawn. */
  readonly beads: Readonly<Record<string, BeadState>>
}

/** A face of which the build says nothing: the bare case, every fastener waiting. */
export function bareFacts(face: string): DrawingFacts {
  return {
    face,
    subject: 'everything',
    bearings: {},
    fasteners: {},
    path: null,
    nextHalf: null,
    checked: null,
    actOn: null,
    callout: null,
    notes: [],
    beads: {},
  }
}
