import type { PersonLine, PracticeStanding } from '../../core/contract/index.ts'
import { drillsOf, missingPractice, progressOf, readyPeople, type Round } from '../../core/practice/index.ts'
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

  const wanted = (engine: string) => {
    const spec = engines.find((each) => each.spec.id === engine)?.spec
    return {
      least: minimums[engine] ?? 0,
      offered: spec ? drillsOf(spec).map((drill) => ({ engine, drill })) : [],
    }
  }

  return {
    'practice.read': ({ person }) => done(standingOf(person)),
    'practice.keep': ({ person, round }) => {
      if (!find(person)) return refused('practice-not-kept', { name: person }, 'person')
      rounds.set(person, [...(rounds.get(person) ?? []), { ...round, at: new Date().toISOString() }])
      return done(standingOf(person))
    },
    'practice.set-minimum': ({ person, engine, least }) => {
      if (find(person)?.role !== 'mechanic') return refused('practice-led-by-mechanic', {}, 'person')
      minimums[engine] = least
      return done(standingOf(person))
    },
    'practice.readiness': ({ person, engine }) => {
      const { least, offered } = wanted(engine)
      if (least === 0 || offered.length === 0) return done(null)
      return done({ least, missing: missingPractice(offered, progressFor(person), least) })
    },
    'practice.people': ({ person, engine }) => {
      if (find(person)?.role !== 'mechanic') return refused('practice-led-by-mechanic', {}, 'person')
      const { least, offered } = wanted(engine)
      const all = people.map(({ name }) => ({ name, progress: progressFor(name) }))
      return done({
        least,
        drills: offered.map(({ drill }) => drill),
        people: readyPeople(offered, all, least),
      })
    },
  }
}
