import type { PersonLine, PracticeStanding } from '../../core/contract/index.ts'
import { drillsOf, missingPractice, progressOf, type Round } from '../../core/practice/index.ts'
import { done, refused } from '../../core/problem/index.ts'
import { engines } from './engines.ts'
import type { MemoryHandlers } from './memory-client.ts'

/** What was practised at a host in memory before it is started. */
export interface SamplePractice {
  /** By the name of the person, in the order in which they were done. */
  readonly rounds: Readonly<Record<string, readonly Round[]>>
  /** By engine: rounds without an error that are wanted of each drill. */
  readonly minimums: Readonly<Record<string, number>>
}

/** Practice in memory: kept for those in the list of people, and gone with the page. */
export function memoryPractice(people: readonly PersonLine[], sample: SamplePractice): MemoryHandlers {
  const rounds = new Map(Object.entries(sample.rounds))
  const minimums = { ...sample.minimums }
  const find = (name: string) => people.find((person) => person.name === name)
  const progressFor = (name: string) => (find(name) ? progressOf(rounds.get(name) ?? []) : [])
  const standingOf = (name: string): PracticeStanding => ({
    isKept: find(name) !== undefined,
    progress: progressFor(name),
    minimums,
  })

  return {
    'practice.read': ({ person }) => done(standingOf(person)),
    'practice.keep': ({ person, round }) => {
      if (!find(person)) return refused('practice-not-kept', { name: person }, 'person')
      rounds.set(person, [...(rounds.get(person) ?? []), { ...round, at: new Date().toISOString() }])
      return done(standingOf(person))
    },
    'practice.set-minimum': ({ person, engine, least }) => {
      if (find(person)?.role !== 'mechanic') return refused('minimum-by-mechanic', {}, 'person')
      minimums[engine] = least
      return done(standingOf(person))
    },
    'practice.readiness': ({ person, engine }) => {
      const least = minimums[engine] ?? 0
      const found = engines.find(({ spec }) => spec.id === engine)
      if (least === 0 || !found) return done(null)
      const offered = drillsOf(found.spec).map((drill) => ({ engine, drill }))
      return done({ least, missing: missingPractice(offered, progressFor(person), least) })
    },
  }
}
