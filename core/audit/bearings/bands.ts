import type { Amount } from '../../words/index.ts'
import type { Phrase } from '../../problem/index.ts'
import { difference, half, lengthAmount, sum, type Length } from '../../quantity/index.ts'
import type { Band, EngineSpec, Fit, MarkedPart } from '../../engine/index.ts'
import { isCharted } from './clearance.ts'
import { doubt, fault, type Finding } from '../finding.ts'

const widestBand = 100_000
const farFromNominal = 500_000

/** Size bands of marks and walls of grades, fit by fit. */
export function auditBands(spec: EngineSpec): readonly Finding[] {
  return [
    ...spec.fits.flatMap((fit, index) => {
      const path = `fits[${index}]`
      return [
        ...auditPart(fit, fit.housing, `${path}.housing`),
        ...auditPart(fit, fit.journal, `${path}.journal`),
        ...auditGrades(fit, `${path}.grades`),
        ...auditChoice(fit, path),
        ...auditNominal(spec, fit, `${path}.housing`),
      ]
    }),
    ...sharedPositions(spec),
  ]
}

/** A mark or a grade of a fit, which a band belongs to or should. */
interface Entry {
  readonly place: Phrase
  readonly path: string
  readonly band: Band | undefined
}
type WithBand<Of extends Entry> = Of & { readonly band: Band }

function withBands<Of extends Entry>(entries: readonly Of[]): readonly WithBand<Of>[] {
  return entries.flatMap((entry) => (entry.band === undefined ? [] : [{ ...entry, band: entry.band }]))
}

function auditPart(fit: Fit, part: MarkedPart, path: string): readonly Finding[] {
  const entries = part.marks.map(({ mark, band }, index) => ({
    mark,
    place: partOfFit(fit, part, mark),
    path: `${path}.marks[${index}]`,
    band,
  }))
  const inOrder = withBands(entries).toSorted((a, b) => a.band.over - b.band.over)
  return [
    ...auditEach(entries),
    ...missingMarks(entries),
    ...inOrder.flatMap((second, index) => {
      const first = inOrder[index - 1]
      return first === undefined ? [] : auditNeighbours(partOfFit(fit, part, null), first, second)
    }),
  ]
}

/** Each band by itself. */
function auditEach(entries: readonly Entry[]): readonly Finding[] {
  return withBands(entries).flatMap(({ place, path, band: { over, upTo } }) => {
    if (over >= upTo)
      return [fault('band-reversed', { place, over: inMm(over), upTo: inMm(upTo) }, `${path}.band`)]
    const width = lengthAmount(difference(upTo, over), 'µm', 1)
    return difference(upTo, over) > widestBand ? [doubt('band-wide', { place, width }, `${path}.band`)] : []
  })
}

function missingMarks(entries: readonly Entry[]): readonly Finding[] {
  const without = entries.filter(({ band }) => band === undefined)
  if (without.length === entries.length) return []
  return without.map(({ place, path }) => doubt('band-missing', { place }, path))
}

type BandedMark = WithBand<Entry & { readonly mark: string }>

function auditNeighbours(place: Phrase, first: BandedMark, second: BandedMark): readonly Finding[] {
  const names = { place, first: first.mark, second: second.mark }
  const gap = second.band.over - first.band.upTo
  if (gap < 0) return [fault('bands-overlap', names, second.path)]
  if (gap === 0) return []
  return [
    doubt('bands-gap', { ...names, from: inMm(first.band.upTo), to: inMm(second.band.over) }, second.path),
  ]
}

/** Grades run from the thinnest wall to the thickest: the program takes neighbours in the list for neighbours in size. */
function auditGrades(fit: Fit, path: string): readonly Finding[] {
  const entries = fit.grades.map(({ grade, wall }, index) => ({
    grade,
    place: { code: 'gradeOfFit', facts: { fit: fit.name, grade } } as const,
    path: `${path}[${index}]`,
    band: wall,
  }))
  const banded = withBands(entries)
  return [
    ...auditEach(entries),
    ...missingMarks(entries),
    ...banded.flatMap((second, index) => {
      const first = banded[index - 1]
      if (first === undefined) return []
      const names = { fit: fit.name, first: first.grade, second: second.grade }
      const middle = ({ band: { over, upTo } }: WithBand<Entry>): Length => half(sum(over, upTo))
      if (middle(second) <= middle(first)) return [fault('grades-not-ascending', names, second.path)]
      return second.band.over < first.band.upTo ? [doubt('grades-overlap', names, second.path)] : []
    }),
    ...fit.grades.flatMap((first, index) =>
      fit.grades.slice(index + 1).flatMap((second) => {
        const alike = first.colour === second.colour && first.pattern === second.pattern
        const facts = { fit: fit.name, first: first.grade, second: second.grade }
        return alike ? [fault('grades-look-alike', facts, `${path}[${index}]`)] : []
      }),
    ),
  ]
}

function auditChoice(fit: Fit, path: string): readonly Finding[] {
  const banded = [...fit.housing.marks, ...fit.journal.marks].every(({ band }) => band !== undefined)
  const walled = fit.grades.every(({ wall }) => wall !== undefined)
  const charted = fit.positions.every((position) => isCharted(fit, position))
  return charted || (banded && walled) ? [] : [fault('nothing-to-choose-by', { fit: fit.name }, path)]
}

/** A housing band half a millimetre and more off the bore that the bearing is drawn with: another unit, or another part. */
function auditNominal(spec: EngineSpec, fit: Fit, path: string): readonly Finding[] {
  const bearings = [...spec.case.saddles, ...spec.case.rods, ...spec.case.balanceBearings]
  const first = bearings.find(({ id }) => id === fit.positions[0])
  if (first === undefined) return []
  return fit.housing.marks.flatMap(({ mark, band }, index) => {
    if (band === undefined || Math.abs(band.over - first.diameter) < farFromNominal) return []
    const facts = {
      place: partOfFit(fit, fit.housing, mark),
      band: inMm(band.over),
      bearing: first.id,
      nominal: inMm(first.diameter),
    }
    return [doubt('bore-far-from-nominal', facts, `${path}.marks[${index}].band`)]
  })
}

function sharedPositions({ fits }: EngineSpec): readonly Finding[] {
  return fits.flatMap((second, index) =>
    fits
      .slice(0, index)
      .flatMap((first) =>
        second.positions
          .filter((position) => first.positions.includes(position))
          .map((position) =>
            fault(
              'position-in-two-fits',
              { position, first: first.name, second: second.name },
              `fits[${index}].positions`,
            ),
          ),
      ),
  )
}

/** One of the two parts whose marks a fit reads, or a mark of it. */
export function partOfFit({ name: fit }: Fit, { name: part }: MarkedPart, mark: string | null): Phrase {
  return { code: 'partOfFit', facts: { fit, part, mark } }
}

const inMm = (length: Length): Amount => lengthAmount(length, 'mm', 4)
