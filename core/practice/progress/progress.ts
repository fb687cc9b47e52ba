import { errorsIn, gradeOf, type RoundKind, type Round } from '../round.ts'
import { scheduleOf } from './schedule.ts'

/** How one person stands with one drill of one engine. */
export interface DrillProgress {
  readonly engine: string
  readonly drill: RoundKind
  readonly rounds: number
  /** Rounds without an error. */
  readonly faultless: number
  /** The shortest of those, in seconds; null while there is none: speed counts only after accuracy. */
  readonly fastest: number | null
  readonly lastAt: string
  /** When the last of those without an error was done; null while there is none. */
  readonly faultlessAt: string | null
  readonly dueAt: string
  /** Over the last rounds: how often each thing of the drawing was asked for, and how many errors were made at it. */
  readonly places: readonly Place[]
}

export interface Place {
  readonly about: string
  readonly asked: number
  readonly errors: number
}

/** Errors of long ago say nothing of today. */
const lookedBack = 10

/** Of rounds in the order in which they were done, one line for each engine and drill, in the order of their first round. */
export function progressOf(rounds: readonly Round[]): readonly DrillProgress[] {
  const groups = Map.groupBy(rounds, ({ engine, drill }) => `${drill}/${engine}`)
  return [...groups.values()].map(progressOn)
}

function progressOn(rounds: readonly Round[]): DrillProgress {
  const { engine, drill } = rounds[0]!
  const faultless = rounds.filter(({ tally }) => gradeOf(tally) === 'good')
  const schedule = scheduleOf(rounds.map(({ tally, at }) => ({ grade: gradeOf(tally), at })))!
  return {
    ...{ engine, drill, rounds: rounds.length, faultless: faultless.length, dueAt: schedule.dueAt },
    fastest: faultless.length === 0 ? null : Math.min(...faultless.map(({ seconds }) => seconds)),
    lastAt: rounds.at(-1)!.at,
    faultlessAt: faultless.at(-1)?.at ?? null,
    places: placesIn(rounds.slice(-lookedBack)),
  }
}

function placesIn(rounds: readonly Round[]): readonly Place[] {
  const tallies = Map.groupBy(
    rounds.flatMap(({ tally }) => tally),
    ({ about }) => about,
  )
  return [...tallies].map(([about, tally]) => ({ about, asked: tally.length, errors: errorsIn(tally) }))
}
