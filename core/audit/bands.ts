import { difference, formatLength, half, sum, type Length } from '../quantity/index.ts'
import type { Band, EngineSpec, Fit, MarkedPart } from '../engine/index.ts'
import { isCharted } from './clearance.ts'
import { doubt, fault, type Finding } from './finding.ts'

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

interface BandedMark {
  readonly name: string
  readonly path: string
  readonly band: Band
}

function auditPart(fit: Fit, part: MarkedPart, path: string): readonly Finding[] {
  const place = `${fit.name}, ${part.name}`
  const entries = part.marks.map(({ mark, band }, index) => ({
    name: `mark ${mark}`,
    path: `${path}.marks[${index}]`,
    band,
  }))
  const banded = entries.flatMap(({ band, ...entry }) => (band === undefined ? [] : [{ ...entry, band }]))
  const inOrder = banded.toSorted((a, b) => a.band.over - b.band.over)
  return [
    ...auditEach(place, banded),
    ...missing(place, entries),
    ...inOrder.flatMap((second, index) => {
      const first = inOrder[index - 1]
      return first === undefined ? [] : auditNeighbours(place, first, second)
    }),
  ]
}

/** Each band by itself. */
function auditEach(place: string, banded: readonly BandedMark[]): readonly Finding[] {
  return banded.flatMap(({ name, path, band: { over, upTo } }) => {
    const at = `${place}, ${name}`
    if (over >= upTo)
      return [fault('band-reversed', { place: at, over: inMm(over), upTo: inMm(upTo) }, `${path}.band`)]
    const width = difference(upTo, over)
    return width > widestBand ? [doubt('band-wide', { place: at, width: inUm(width) }, `${path}.band`)] : []
  })
}

function missing(
  place: string,
  entries: readonly { readonly name: string; readonly path: string; readonly band: Band | undefined }[],
): readonly Finding[] {
  const without = entries.filter(({ band }) => band === undefined)
  if (without.length === entries.length) return []
  return without.map(({ name, path }) => doubt('band-missing', { place: `${place}, ${name}` }, path))
}

function auditNeighbours(place: string, first: BandedMark, second: BandedMark): readonly Finding[] {
  const names = { place, first: first.name, second: second.name }
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
    name: `grade ${grade}`,
    grade,
    path: `${path}[${index}]`,
    band: wall,
  }))
  const banded = entries.flatMap(({ band, ...entry }) => (band === undefined ? [] : [{ ...entry, band }]))
  return [
    ...auditEach(fit.name, banded),
    ...missing(fit.name, entries),
    ...banded.flatMap((second, index) => {
      const first = banded[index - 1]
      if (first === undefined) return []
      const names = { fit: fit.name, first: first.grade, second: second.grade }
      const middle = ({ band: { over, upTo } }: BandedMark): Length => half(sum(over, upTo))
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
      place: `${fit.name}, ${fit.housing.name}, mark ${mark}`,
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

const inMm = (length: Length): string => formatLength(length, 'mm', 4)
const inUm = (length: Length): string => formatLength(length, 'µm', 1)
