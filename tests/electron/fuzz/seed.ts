import { chance } from '../../faults/chance.ts'

/** The seed of this run: a fixed one, so that a failure comes again; `BEDPLATE_SEED` names another. */
export const seed = Number(process.env.BEDPLATE_SEED ?? 20261127)

/** Chance of the seed, and what is drawn from it. */
export function draws(of = seed) {
  const random = chance(of)
  const below = (count: number) => Math.floor(random() * count)
  return {
    random,
    below,
    oneOf: <Value>(values: readonly Value[]): Value => values[below(values.length)]!,
  }
}
