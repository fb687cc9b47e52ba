import type { Clearance } from '../../bearing/index.ts'
import type { Length } from '../../quantity/index.ts'
import type { EngineSpec, Fit, Pattern } from '../../engine/index.ts'
import { clearanceAt } from '../shells/clearance-at.ts'
import type { Half, RecordedEvent, ShellChoice } from '../events/events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import { measuredOn, trayOn, type SheetMeasured, type SheetTray } from './measured.ts'
import type { BuildState } from '../events/state.ts'

/** One fit's marks and shells: what was read, what was chosen, what was put in by whom. */
export interface SheetFit {
  readonly name: string
  readonly split: Fit['split']
  /** Oil clearance allowed when new, both included. */
  readonly limits: { readonly least: Length; readonly most: Length }
  readonly housing: SheetMarks
  readonly journal: SheetMarks
  readonly chosen: Stamp | null
  /** Null where no shells were counted. */
  readonly tray: SheetTray | null
  readonly rows: readonly SheetBearing[]
}

export interface SheetMarks {
  readonly part: string
  readonly noted: Stamp | null
  /** As typed off the part; null before it was. */
  readonly typed: string | null
}

export interface SheetBearing {
  readonly position: string
  /** Null where not noted or worn away. */
  readonly housing: string | null
  readonly journal: string | null
  readonly upper: SheetHalf | null
  readonly lower: SheetHalf | null
  /** Null where marks or grades have no sizes. */
  readonly clearance: Clearance | null
  /** True where nothing says otherwise. */
  readonly withinLimits: boolean
  readonly measured: SheetMeasured
}

export interface SheetHalf {
  readonly grade: string
  readonly pattern: Pattern | null
  readonly by: ShellChoice['by']
  readonly reason: string | null
  /** As in `ShellChoice`. */
  readonly label?: string | null
  /** It was still to be ordered, and the person who put it in said that it had arrived. */
  readonly arrived: boolean
  /** When it was put in and stayed. */
  readonly fitted: Stamp | null
}

export function fitsOn(
  spec: EngineSpec,
  state: BuildState,
  entries: readonly RecordedEvent[],
): readonly SheetFit[] {
  return spec.fits.map((fit) => {
    const marks = state.marks[fit.id]
    return {
      name: fit.name,
      split: fit.split,
      limits: { least: fit.clearance.least, most: fit.clearance.most },
      housing: marksOf(fit, 'housing', marks?.housing ? entries : []),
      journal: marksOf(fit, 'journal', marks?.journal ? entries : []),
      chosen: state.shells[fit.id] === undefined ? null : chosenAt(fit, entries),
      tray: trayOn(state, fit, entries),
      rows: fit.positions.map((position, index) => {
        const known = clearanceAt(state, fit, position)
        return {
          position,
          housing: marks?.housing?.[index] ?? null,
          journal: marks?.journal?.[index] ?? null,
          upper: halfOf(state, fit, position, 'upper', entries),
          lower: halfOf(state, fit, position, 'lower', entries),
          clearance: known?.clearance ?? null,
          withinLimits: known === null || known.within === 'inside',
          measured: measuredOn(state, fit, position, entries),
        }
      }),
    }
  })
}

function marksOf(fit: Fit, part: 'housing' | 'journal', entries: readonly RecordedEvent[]): SheetMarks {
  const entry = entries.findLast(
    ({ event }) => event.type === 'marks-noted' && event.fit === fit.id && event.part === part,
  )
  const typed = entry?.event.type === 'marks-noted' ? entry.event.typed : null
  return { part: fit[part].name, noted: entry === undefined ? null : stampOf(entry), typed }
}

function chosenAt(fit: Fit, entries: readonly RecordedEvent[]): Stamp | null {
  const entry = entries.findLast(({ event }) => event.type === 'shells-chosen' && event.fit === fit.id)
  return entry === undefined ? null : stampOf(entry)
}

function halfOf(
  state: BuildState,
  fit: Fit,
  position: string,
  half: Half,
  entries: readonly RecordedEvent[],
): SheetHalf | null {
  const choice = state.shells[fit.id]?.find((each) => each.position === position && each.half === half)
  if (choice === undefined) return null
  const { grade, by, reason, label } = choice
  const moved = entries.findLast(
    ({ event }) =>
      (event.type === 'half-fitted' || event.type === 'half-taken-out') &&
      event.position === position &&
      event.half === half,
  )
  const fitted = moved?.event.type === 'half-fitted' ? stampOf(moved) : null
  const arrived = moved?.event.type === 'half-fitted' && moved.event.arrived === true
  const pattern = fit.grades.find((each) => each.grade === grade)?.pattern ?? null
  return { grade, pattern, by, reason, ...(label !== undefined && { label }), arrived, fitted }
}
