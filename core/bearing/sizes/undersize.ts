import type { Fit } from '../../engine/index.ts'
import { done, problem, refused, type Outcome, type Problem } from '../../problem/index.ts'
import { difference, lengthAmount, half, sum, type Length } from '../../quantity/index.ts'
import { hull } from './expected.ts'

/**
 * The fit of a journal that was reground by one of the spec's undersizes: its grades with their walls as the spec prints them for it,
 * else every wall thicker by half of it, since the two halves share it (TM 5-4320-300-14, p. 6-83). The marks stamped on the crank spoke of the journal as it was, so they
 * lose their sizes, and the chart that was made for them is gone: a reground journal is measured.
 *
 * Refuses `undersize-unknown`.
 */
export function undersized(fit: Fit, key: string): Outcome<Fit> {
  const found = fit.undersizes.find(({ name }) => name.key === key)
  if (found === undefined)
    return refused('undersize-unknown', {
      place: fit.name,
      name: key,
      known: fit.undersizes.map(({ name }) => name.text),
    })
  const thicker = half(found.undersize)
  return done({
    ...fit,
    chart: undefined,
    undersizes: [],
    journal: { ...fit.journal, marks: fit.journal.marks.map(({ mark }) => ({ mark })) },
    wornWall: wornWallOf(fit, key) ?? undefined,
    grades: fit.grades.flatMap((grade) => {
      const printed = found.walls?.find((each) => each.grade === grade.grade)
      if (found.walls !== undefined) return printed === undefined ? [] : [{ ...grade, wall: printed.wall }]
      if (grade.wall === undefined) return [grade]
      const { over, upTo } = grade.wall
      return [{ ...grade, wall: { over: sum(over, thicker), upTo: sum(upTo, thicker) } }]
    }),
  })
}

/**
 * What an undersize is called that an entry names, by the fit as the spec has it; as the entry has it where there is none such. Null for
 * the standard size.
 */
export function undersizeCalled(fit: Fit, key: string): string
export function undersizeCalled(fit: Fit, key: string | null): string | null
export function undersizeCalled(fit: Fit, key: string | null): string | null {
  return fit.undersizes.find(({ name }) => name.key === key)?.name.text ?? key
}

/**
 * The thinnest wall with which a used shell may go back, for journals of the standard size (null) or of an undersize: as printed, else
 * that of the standard size and half of the undersize. Null where the spec has none.
 */
export function wornWallOf(fit: Fit, undersize: string | null): Length | null {
  if (undersize === null) return fit.wornWall ?? null
  const found = fit.undersizes.find(({ name }) => name.key === undersize)
  if (found === undefined) return null
  if (found.wornWall !== undefined) return found.wornWall
  return fit.wornWall === undefined ? null : sum(fit.wornWall, half(found.undersize))
}

/**
 * Why a used shell may not go back: its wall, as measured at the crown and at 20 °C, is below the worn one. Null where it may, and where
 * the spec says nothing of worn walls.
 */
export function wornShell(fit: Fit, undersize: string | null, label: string, wall: Length): Problem | null {
  const least = wornWallOf(fit, undersize)
  if (least === null || wall >= least) return null
  return problem('shell-worn', { label, wall: lengthAmount(wall, 'mm'), least: lengthAmount(least, 'mm') })
}

/**
 * Which undersize a measured journal is ground to, by the bands of its marks less the undersize; null for the standard
 * size. Bands and journal are at 20 °C.
 *
 * Refuses `journal-sizes-unknown` where the spec has no bands, and `journal-of-no-size` for what is worn or ground to a
 * size between: it names the next size it could be ground to.
 */
export function undersizeOf(fit: Fit, place: string, journal: Length): Outcome<string | null> {
  const standard = hull(fit.journal.marks.map(({ band }) => band))
  if (standard === null) return refused('journal-sizes-unknown', { place, part: fit.journal.name })
  if (journal >= standard.least && journal <= standard.most) return done(null)
  const ground = [...fit.undersizes]
    .sort((a, b) => a.undersize - b.undersize)
    .map(({ name, undersize }) => ({
      name,
      least: difference(standard.least, undersize),
      most: difference(standard.most, undersize),
    }))
  const found = ground.find(({ least, most }) => journal >= least && journal <= most)
  if (found !== undefined) return done(found.name.key)
  const next = journal > standard.most ? undefined : ground.find(({ least }) => journal > least)
  return refused('journal-of-no-size', {
    place,
    journal: lengthAmount(journal, 'mm'),
    next:
      next === undefined
        ? null
        : {
            name: next.name.text,
            least: lengthAmount(next.least, 'mm'),
            most: lengthAmount(next.most, 'mm'),
          },
  })
}
