import {
  bearingAt,
  clearanceAt,
  proposalsFor,
  shellsWanted,
  type BuildState,
  type ShellsWanted,
} from '../../core/builds/index.ts'
import { halfName, type EngineSpec, type Fit, type Grade, type HalfName } from '../../core/engine/index.ts'
import type { Words } from '../../core/words/index.ts'
import { undersizeCalled, type Clearance } from '../../core/bearing/index.ts'

/** What stands on the label of one half shell. */
export interface LabelRow {
  readonly fit: Fit
  readonly position: string
  readonly half: HalfName
  readonly grade: Grade
  /** As it is called; null for the standard size. */
  readonly undersize: string | null
  /** Null where it is not known. */
  readonly clearance: Clearance | null
  /** Where it lies in the tray, or no place while it is still to be ordered; null where no tray was noted. */
  readonly from: { readonly place: string | null } | null
  /** For a reader of codes: build and position. */
  readonly code: string
}

/** One line of the order list, with the fit it is for. */
export interface OrderRow {
  readonly fit: string
  readonly grade: string
  /** The undersize, as it is called; null for the standard size. */
  readonly size: string | null
  /** How the fit is split, where the shells of both halves are the same part. */
  readonly half: HalfName | Fit['split']
  readonly count: number
  readonly waiting: string
}

/** What a square says: which build, and what of it. In capitals a QR code holds more. */
export function codeOf(build: string, what: string): string {
  return `BEDPLATE ${build} ${what}`.toUpperCase()
}

/** A label for every half whose shell is chosen or, while choosing, proposed. */
export function labelRows(spec: EngineSpec, state: BuildState, build: string): readonly LabelRow[] {
  return spec.fits.flatMap((fit) => {
    const proposals = proposalsFor(spec, state, fit.id)
    return fit.positions.flatMap((position) =>
      (['upper', 'lower'] as const).flatMap((half): readonly LabelRow[] => {
        const proposal = proposals.find((each) => each.position === position)
        const chosen = state.shells[fit.id]?.find((each) => each.position === position && each.half === half)
        const shell = chosen ?? proposal?.[half]
        const grade = fit.grades.find((each) => each.grade === shell?.grade)
        if (!shell || !grade) return []
        const clearance = clearanceAt(state, fit, position)?.clearance ?? proposal?.clearance ?? null
        return [
          {
            fit,
            position,
            half: halfName(fit, half),
            grade,
            undersize: undersizeCalled(fit, bearingAt(state, fit, position).undersize),
            clearance: clearance,
            from: shell.label === undefined ? null : { place: shell.label },
            code: codeOf(build, `${position} ${halfName(fit, half)}`),
          },
        ]
      }),
    )
  })
}

/** What has to be got for every fit, as a person orders it. */
export function orderRows(words: Words, spec: EngineSpec, state: BuildState): readonly OrderRow[] {
  return spec.fits.flatMap((fit) =>
    shellsWanted(spec, state, fit).lines.map(({ grade, undersize, half, count, waiting }) => ({
      fit: fit.name,
      grade,
      size: undersizeCalled(fit, undersize),
      half: half === 'either' ? fit.split : halfName(fit, half),
      count,
      waiting: waiting
        .map(({ position, half }) => words.tray.label.half({ position, half: halfName(fit, half) }))
        .join(', '),
    })),
  )
}

/** For each fit, what its order list means, and which bearings are still open. */
export function orderNotes(spec: EngineSpec, state: BuildState): readonly (ShellsWanted & { fit: string })[] {
  return spec.fits.map((fit) => ({ fit: fit.name, ...shellsWanted(spec, state, fit) }))
}
