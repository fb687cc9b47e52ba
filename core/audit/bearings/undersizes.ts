import { half, lengthAmount, sum, type Length } from '../../quantity/index.ts'
import type { EngineSpec, Fit } from '../../engine/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'

/** In nanometres. Shells are made to 1.5 mm undersize (0.060 in) and hardly further. Common practice, no source. */
const largestUndersize = 2_000_000
/** In nanometres: as far as walls that are printed in 0.0001 in or 0.001 mm are rounded off what they follow from. */
const printedTo = 3_000

/** Undersizes of reground journals: each once, under one name, of a size that is ground, with walls thicker by half of it. */
export function auditUndersizes({ fits }: EngineSpec): readonly Finding[] {
  return fits.flatMap((fit, index) => [
    ...auditWornWall(fit, fit.grades, fit.wornWall, null, `fits[${index}].wornWall`),
    ...fit.undersizes.flatMap((line, k) => {
      const { undersize } = line
      const { key, text: name } = line.name
      const path = `fits[${index}].undersizes[${k}]`
      const facts = { fit: fit.name, name, undersize: lengthAmount(undersize, 'mm', 2) }
      const earlier = fit.undersizes.slice(0, k)
      const repeated = earlier.some((each) => each.undersize === undersize || each.name.key === key)
      return [
        ...(repeated ? [fault('undersize-twice', facts, path)] : []),
        ...(undersize > largestUndersize ? [doubt('undersize-large', facts, `${path}.undersize`)] : []),
        ...auditWalls(fit, line, `${path}.walls`),
        ...auditWornWall(fit, line.walls ?? [], line.wornWall, name, `${path}.wornWall`),
      ]
    }),
  ])
}

type Undersize = Fit['undersizes'][number]

/** Printed walls against those of the standard size: the two halves share what was ground off. */
function auditWalls(fit: Fit, line: Undersize, path: string): readonly Finding[] {
  const {
    undersize,
    walls = [],
    name: { text: name },
  } = line
  return walls.flatMap(({ grade, wall }, index) => {
    const own = `${path}[${index}]`
    const standard = fit.grades.find((each) => each.grade === grade)
    if (standard === undefined) return [fault('undersize-grade-unknown', { fit: fit.name, name, grade }, own)]
    if (walls.slice(0, index).some((each) => each.grade === grade))
      return [fault('undersize-grade-twice', { fit: fit.name, name, grade }, own)]
    if (standard.wall === undefined) return []
    const { over, upTo } = standard.wall
    const isOff = (more: Length) =>
      Math.abs(wall.over - over - more) > printedTo || Math.abs(wall.upTo - upTo - more) > printedTo
    if (!isOff(half(undersize))) return []
    const shown = (from: Length, to: Length) => ({
      from: lengthAmount(from, 'mm'),
      upTo: lengthAmount(to, 'mm'),
    })
    const facts = {
      fit: fit.name,
      name,
      grade,
      printed: shown(wall.over, wall.upTo),
      expected: shown(sum(over, half(undersize)), sum(upTo, half(undersize))),
    }
    return isOff(undersize)
      ? [doubt('undersize-wall-off', facts, own)]
      : [fault('undersize-wall-full', facts, own)]
  })
}

/** A shell that is worn is thinner than any new one. */
function auditWornWall(
  fit: Fit,
  grades: readonly { readonly wall?: { readonly over: Length } | undefined }[],
  worn: Length | undefined,
  name: string | null,
  path: string,
): readonly Finding[] {
  const thinnestWall = Math.min(...grades.flatMap(({ wall }) => (wall === undefined ? [] : [wall.over])))
  if (worn === undefined || worn <= thinnestWall) return []
  return [fault('worn-wall-above-new', { fit: fit.name, name, worn: lengthAmount(worn, 'mm') }, path)]
}
