import type { Fit } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { difference, lengthAmount, half, sum, type Length } from '../../quantity/index.ts'
import { hull } from './expected.ts'

/**
 * The fit of a journal that was reground by one of the spec's undersizes: every wall thicker by half of it, since the two
 * halves share it (TM 5-4320-300-14, p. 6-83). The marks stamped on the crank spoke of the journal as it was, so they
 * lose their sizes, and the chart that was made for them is gone: a reground journal is measured.
 *
 * Refuses `undersize-unknown`.
 */
export function undersized(fit: Fit, name: string): Outcome<Fit> {
  const found = fit.undersizes.find((each) => each.name === name)
  if (found === undefined)
    return refused('undersize-unknown', {
      place: fit.name,
      name,
      known: fit.undersizes.map((each) => each.name),
    })
  const thicker = half(found.undersize)
  return done({
    ...fit,
    chart: undefined,
    undersizes: [],
    journal: { ...fit.journal, marks: fit.journal.marks.map(({ mark }) => ({ mark })) },
    grades: fit.grades.map((grade) =>
      grade.wall === undefined
        ? grade
        : { ...grade, wall: { over: sum(grade.wall.over, thicker), upTo: sum(grade.wall.upTo, thicker) } },
    ),
  })
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
  if (found !== undefined) return done(found.name)
  const next = journal > standard.most ? undefined : ground.find(({ least }) => journal > least)
  return refused('journal-of-no-size', {
    place,
    journal: lengthAmount(journal, 'mm'),
    next:
      next === undefined
        ? null
        : { name: next.name, least: lengthAmount(next.least, 'mm'), most: lengthAmount(next.most, 'mm') },
  })
}
