import type { Run } from '../tightening/index.ts'
import type { Half, ShellChoice } from './events.ts'

/** How far a build has come: what its events add up to. Ids are the spec's. */
export interface BuildState {
  /** The last event's sequence number; 0 before the first. */
  readonly seq: number
  readonly started: { readonly name: string; readonly serial: string } | null
  /** By fit id: the marks in the order of the fit's positions; null where a mark is worn away. */
  readonly marks: Readonly<Record<string, { readonly housing: Marks; readonly journal: Marks }>>
  /** By fit id: one choice for each half of each position. */
  readonly shells: Readonly<Record<string, readonly ShellChoice[]>>
  /** Halves in place, as `M2/upper`. */
  readonly fitted: ReadonlySet<string>
  /** Steps of the kind fit-part that are done. */
  readonly partsFitted: ReadonlySet<string>
  /** By bead id: the sequence number of the entry at which it was laid. */
  readonly beads: Readonly<Record<string, number>>
  /** By step id. */
  readonly checks: Readonly<Record<string, CheckAnswer>>
  /** By procedure id. */
  readonly runs: Readonly<Record<string, Run>>
  readonly finished: boolean
}

/** Null until that part's marks were noted. */
export type Marks = readonly (string | null)[] | null

export interface CheckAnswer {
  readonly verdict: 'good' | 'not-good'
  readonly reading: { readonly typed: string; readonly length_nm: number } | null
  readonly note: string
}

export const emptyBuild: BuildState = {
  seq: 0,
  started: null,
  marks: {},
  shells: {},
  fitted: new Set(),
  partsFitted: new Set(),
  beads: {},
  checks: {},
  runs: {},
  finished: false,
}

/** How a half of a bearing is named in `fitted` and on the drawing. */
export function halfKey(position: string, half: Half): string {
  return `${position}/${half}`
}
