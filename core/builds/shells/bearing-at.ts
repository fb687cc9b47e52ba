import {
  partAtTemperature,
  candidatesBetween,
  candidatesFor,
  combinedUncertainty,
  disagreement,
  drawnIn,
  measure,
  proposeBySizes,
  proposeShells,
  shapeFaults,
  sizesFrom,
  undersizeCalled,
  undersized,
  undersizeOf,
  type Candidate,
  type MeasuredSize,
  type Proposal,
  type Sizes,
} from '../../bearing/index.ts'
import { problem, type Outcome, type Problem } from '../../problem/index.ts'
import { celsius, lengthAmount, nanometres, type Length } from '../../quantity/index.ts'
import type { Fit } from '../../engine/index.ts'
import type { BasisDecision, NotedPins, NotedReadings } from '../events/bearing-record.ts'
import { bearingsIn, type BuildState } from '../events/state.ts'
import { memoized } from './memoized.ts'

/** All that is known of one bearing before its shells are chosen, and what follows from it. */
export interface BearingCase {
  readonly position: string
  /** The fit as it is for this journal: with thicker walls where it was reground. */
  readonly fit: Fit
  /** Null where not noted or worn away. */
  readonly marks: { readonly housing: string | null; readonly journal: string | null }
  readonly measured: { readonly bore: MeasuredSize | null; readonly journal: MeasuredSize | null }
  /** The undersize that the journal is ground to, as entries name it; null for the standard size. */
  readonly undersize: string | null
  /** What the measured journal is ground to by its size; null where it was not measured. */
  readonly groundTo: Outcome<string | null> | null
  /** Null where the journal measures what it is declared, or nothing gives its size. */
  readonly sizeDispute: SizeDispute | null
  /** What a clearance from the readings is uncertain by; null where that was not stated of a part that was measured. */
  readonly uncertainty: Length | null
  /** Marks that the readings speak against. */
  readonly disagreements: readonly Problem[]
  /** Out-of-round and taper beyond what the spec allows. */
  readonly shapeFaults: readonly Problem[]
  readonly decision: BasisDecision | null
  readonly pins: NotedPins | null
  /**
   * What decides about the shells. `undecided`: a mark, or the size that the journal is declared, and the readings
   * differ, and nobody has said which count.
   */
  readonly basis: 'marks' | 'readings' | 'undecided'
  readonly sizes: Outcome<Sizes>
  readonly byMarks: Proposal
  /** Null while nothing was measured. A part that was not measured is known by its mark. */
  readonly byReadings: Proposal<'readings'> | null
}

/** A journal declared of one size, standard or an undersize as entries name it, that measures as another. */
export interface SizeDispute {
  readonly problem: Problem
  readonly declared: string | null
  readonly measured: string | null
  /** Why the declared size counts all the same; null while nobody has decided. */
  readonly reason: string | null
}

/** Thermal expansion of a gauge in 10⁻⁶ per kelvin: steel, NIST J. Res. 99, 31. */
const gaugeExpansion = 11.5

/** Throws unless the fit has the position. */
export const bearingAt = memoized(findBearing)

function findBearing(state: BuildState, fitOfSpec: Fit, position: string): BearingCase {
  const index = fitOfSpec.positions.indexOf(position)
  if (index < 0) throw new Error(`${fitOfSpec.id} has no position ${position}`)
  const record = bearingsIn(state, fitOfSpec.id)
  const undersize = record.undersizes[position] ?? null
  const sized = undersize === null ? null : undersized(fitOfSpec, undersize)
  const fit = sized?.ok === true ? sized.value : fitOfSpec
  const noted = state.marks[fit.id]
  const marks = { housing: noted?.housing?.[index] ?? null, journal: noted?.journal?.[index] ?? null }
  const bore = record.housing[position]
  const journal = record.journal[position]
  const measured = {
    bore: measuredFrom(fit, position, 'housing', bore),
    journal: measuredFrom(fit, position, 'journal', journal),
  }
  const uncertainty = clearanceUncertainty([bore, journal])
  const groundTo = measured.journal === null ? null : undersizeOf(fitOfSpec, position, measured.journal.mean)
  const sizeReason = record.sizeReasons[position] ?? null
  const sizeDispute = disputeOf(fitOfSpec, position, undersize, groundTo, measured.journal, sizeReason)
  const disagreements = [
    ...(measured.bore === null
      ? []
      : disagreement(fit.housing, position, marks.housing, measured.bore.mean, statedOr0(bore))),
    // A journal of another size is asked about as a whole, not by its mark.
    ...(measured.journal === null || sizeDispute !== null
      ? []
      : disagreement(fit.journal, position, marks.journal, measured.journal.mean, statedOr0(journal))),
  ]
  const decision = record.basis[position] ?? null
  const byMarks = proposeShells({ ...fit, positions: [position] }, [marks.housing], [marks.journal])[0]!
  const isMeasured = measured.bore !== null || measured.journal !== null
  const basis =
    sizeDispute?.reason === null ? 'undecided' : basisOf(isMeasured, decision, disagreements, byMarks)
  const measuredSizes = sizesFrom(fit, position, { marks, measured })
  return {
    position,
    fit,
    marks,
    measured,
    undersize,
    groundTo,
    sizeDispute,
    uncertainty,
    disagreements,
    shapeFaults: [
      ...(measured.bore === null ? [] : shapeFaults(fit, position, 'bore', measured.bore)),
      ...(measured.journal === null ? [] : shapeFaults(fit, position, 'journal', measured.journal)),
    ],
    decision,
    pins: record.pins[position] ?? null,
    basis,
    sizes:
      basis === 'undecided'
        ? { ok: false, problem: undecidedProblem({ position, sizeDispute }) }
        : basis === 'readings'
          ? measuredSizes
          : sizesFrom(fit, position, { marks, measured: { bore: null, journal: null } }),
    byMarks,
    byReadings: !isMeasured
      ? null
      : measuredSizes.ok
        ? proposeBySizes(fit, position, measuredSizes.value, uncertainty ?? nanometres(0))
        : withoutSizes(position, measuredSizes.problem),
  }
}

/** The pairs that may be fitted there, from the thinnest to the thickest, each with its clearance where it is known. */
export function candidatesAt(bearing: BearingCase): readonly Candidate[] {
  const { fit, position, marks, basis, sizes } = bearing
  if (basis !== 'readings' || !sizes.ok) return candidatesFor(fit, position, marks.housing, marks.journal)
  return candidatesBetween({ ...fit, clearance: provedLimits(bearing) }, position, sizes.value)
}

/**
 * The limits that a clearance is weighed by, whatever way its shells are chosen: those of the fit, drawn in by what the
 * readings are uncertain by where readings decide.
 */
export function provedLimits({ fit, basis, uncertainty }: BearingCase): Fit['clearance'] {
  return basis === 'readings' && uncertainty !== null ? drawnIn(fit.clearance, uncertainty) : fit.clearance
}

/**
 * Readings count by themselves only where the marks give no shells; where both are there, they go before the marks only
 * when a person says so.
 */
function basisOf(
  isMeasured: boolean,
  decision: BasisDecision | null,
  disagreements: readonly Problem[],
  byMarks: Proposal,
): BearingCase['basis'] {
  if (!isMeasured) return 'marks'
  if (decision !== null) return decision.by
  if (disagreements.length > 0) return 'undecided'
  return byMarks.upper === null ? 'readings' : 'marks'
}

/** Why nothing is chosen while the basis is undecided. */
export function undecidedProblem({
  position,
  sizeDispute,
}: Pick<BearingCase, 'position' | 'sizeDispute'>): Problem {
  return sizeDispute?.reason === null ? sizeDispute.problem : problem('basis-undecided', { position })
}

function disputeOf(
  fit: Fit,
  place: string,
  declared: string | null,
  groundTo: Outcome<string | null> | null,
  journal: MeasuredSize | null,
  reason: string | null,
): SizeDispute | null {
  if (journal === null || groundTo?.ok !== true || groundTo.value === declared) return null
  const measured = groundTo.value
  const size = lengthAmount(journal.mean, 'mm', 4)
  const called = { declared: undersizeCalled(fit, declared), measured: undersizeCalled(fit, measured) }
  return {
    problem: problem('undersize-against-size', { place, size, ...called }),
    declared,
    measured,
    reason,
  }
}

function measuredFrom(
  fit: Fit,
  position: string,
  part: 'housing' | 'journal',
  noted: NotedReadings | undefined,
): MeasuredSize | null {
  if (noted === undefined) return null
  const body = partAtTemperature(fit, position, part, celsius(noted.partTemperature.celsius))
  if (!body.ok) return null
  const grid = noted.cells.map((plane) => plane.map(({ length_nm }) => nanometres(length_nm)))
  const gauge = noted.gaugeTemperature
  return gauge === null
    ? measure(grid, body.value)
    : measure(grid, body.value, {
        expansion: gaugeExpansion,
        temperature: celsius(gauge.celsius),
      })
}

/** Null where it was not stated of one of the parts that were measured. */
function clearanceUncertainty(parts: readonly (NotedReadings | undefined)[]): Length | null {
  const measured = parts.filter((noted) => noted !== undefined)
  if (measured.some(({ uncertainty }) => uncertainty === null)) return null
  return combinedUncertainty(...measured.map(statedOr0))
}

/** A reading of which nothing was stated is taken as it stands. */
function statedOr0(noted: NotedReadings | undefined): Length {
  return nanometres(noted?.uncertainty?.length_nm ?? 0)
}

function withoutSizes(position: string, why: Problem): Proposal<never> {
  return { position, upper: null, lower: null, clearance: null, within: null, problem: why }
}
