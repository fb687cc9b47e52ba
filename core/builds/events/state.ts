import type { Run } from '../../tightening/index.ts'
import type { BenchName } from './bench-events.ts'
import { untouched, type BearingRecord } from './bearing-record.ts'
import type { LimitsRecord } from './limit-record.ts'
import type { PlacedRecord } from './placed-record.ts'
import type { RingsRecord } from './ring-record.ts'
import type { TurningsRecord } from './turning-record.ts'
import { noParts, type PartsRecord } from './part-record.ts'
import type { PhotoRecord } from './photo-record.ts'
import { asPlanned, type PlanRecord } from './plan-record.ts'
import type { Half, ShellChoice } from './events.ts'

/** How far a build has come: what its events add up to. Ids are the spec's. */
export interface BuildState extends PhotoRecord {
  /** The last event's sequence number; 0 before the first. */
  readonly seq: number
  readonly started: { readonly name: string; readonly serial: string; readonly apprentice: boolean } | null
  /** By fit id: the marks in the order of the fit's positions; null where a mark is worn away. */
  readonly marks: Readonly<Record<string, { readonly housing: Marks; readonly journal: Marks }>>
  /**
   * By fit id: one choice for each half of each position. Absent once the marks that it was made from have
   * changed.
   */
  readonly shells: Readonly<Record<string, readonly ShellChoice[]>>
  /** By fit id: readings, undersizes, pins, the tray. Ask `bearingsIn`. */
  readonly bearings: Readonly<Record<string, BearingRecord>>
  /** Halves in place, as `M2/upper`. */
  readonly fitted: ReadonlySet<string>
  /** Steps of the kind fit-part that are done. */
  readonly partsFitted: ReadonlySet<string>
  readonly parts: PartsRecord
  /** What was measured against limits. */
  readonly limits: LimitsRecord
  /** What was done place by place. */
  readonly placed: PlacedRecord
  /** How the rings lie on each piston. */
  readonly rings: RingsRecord
  /** What the crank took to turn. */
  readonly turnings: TurningsRecord
  /** By bead id: those that are laid. */
  readonly beads: Readonly<Record<string, BeadLaid>>
  /** By step id: the last answer. */
  readonly checks: Readonly<Record<string, CheckAnswer>>
  /** By procedure id. */
  readonly runs: Readonly<Record<string, Run>>
  /** What is done again, and what is skipped. */
  readonly plan: PlanRecord
  /** What the last entry was about, so that a person comes back to where the work was left. */
  readonly workedOn: { readonly step: string } | { readonly procedure: string } | null
  /** By step id: who looked at it as a second person. Falls away when anything more is done in the step. */
  readonly confirmed: Readonly<Record<string, Confirmation>>
  /** By step id: who wants it done again, and why. Falls away when anything more is done in the step. */
  readonly sentBack: Readonly<Record<string, Confirmation & { readonly reason: string }>>
  /** The bench that has the build. Null for the one that began it, which its entries do not name. */
  readonly bench: BenchName | null
  readonly finished: boolean
  /** Void: nothing is added any more. */
  readonly voided: boolean
}

/** Null until that part's marks were noted. */
export type Marks = readonly (string | null)[] | null

export interface BeadLaid {
  /** The sequence number of the entry at which it was laid. */
  readonly seq: number
  /** UTC, ISO 8601. */
  readonly at: string
  /** Why its joint is closed although its open time is over; null while nobody was asked. */
  readonly overTime: string | null
}

interface NotedWasher {
  readonly name: string
  readonly thickness_nm: number
}

export interface CheckAnswer {
  readonly verdict: 'good' | 'not-good'
  readonly reading: { readonly typed: string; readonly length_nm: number } | null
  readonly note: string
  /** The thrust washers that were in, and those that the table asks for: see `checkNote`. */
  readonly fittedWashers?: string | undefined
  readonly washersByTable?: NotedWasher | null | undefined
  readonly measuredWith?: readonly string[] | undefined
  readonly thrustPair?:
    | { readonly first: NotedWasher; readonly second: NotedWasher; readonly float_nm: number }
    | null
    | undefined
}

export interface Confirmation {
  readonly second: string
  /** Of a step that runs one; null for any other. */
  readonly procedure: string | null
}

export const emptyBuild: BuildState = {
  seq: 0,
  started: null,
  marks: {},
  shells: {},
  bearings: {},
  fitted: new Set(),
  partsFitted: new Set(),
  parts: noParts,
  limits: {},
  placed: {},
  photos: [],
  notes: [],
  photosSkipped: {},
  photosWithdrawn: [],
  rings: {},
  turnings: {},
  beads: {},
  checks: {},
  runs: {},
  plan: asPlanned,
  workedOn: null,
  confirmed: {},
  sentBack: {},
  bench: null,
  finished: false,
  voided: false,
}

/** How a half of a bearing is named in `fitted` and on the drawing. */
export function halfKey(position: string, half: Half): string {
  return `${position}/${half}`
}

/** What was measured of a fit's bearings and decided about them. */
export function bearingsIn(state: BuildState, fit: string): BearingRecord {
  return state.bearings[fit] ?? untouched
}
