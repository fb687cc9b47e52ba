import { z } from 'zod'
import type { PracticeStanding } from '../../core/contract/index.ts'
import {
  drillsOf,
  roundKinds,
  missingPractice,
  progressOf,
  readyPeople,
  type Round,
} from '../../core/practice/index.ts'
import { done, refused } from '../../core/problem/index.ts'
import type { Store } from '../store/index.ts'
import type { EngineShelf } from './engine-shelf.ts'
import type { HandlersOf } from './handlers.ts'
import type { People } from './people.ts'

const keptRound = z.object({
  drill: z.enum(roundKinds),
  at: z.iso.datetime(),
  tally: z.array(z.strictObject({ about: z.string(), errors: z.int().min(0) })).min(1),
})

/** Answers about what people practise. Nothing is kept of who is not in the list of people. */
export function practiceRequests(services: {
  readonly store: Store
  readonly engines: Pick<EngineShelf, 'find'>
  readonly people: People
  readonly now: () => Date
}): HandlersOf<'practice'> {
  const { store, engines, people, now } = services
  /** Rows that are none, of another version say, are passed over. */
  const roundsOf = (person: string): readonly Round[] =>
    store.practised(person).flatMap(({ engine, drill, at_utc, seconds, tally_json }) => {
      const read = keptRound.safeParse({ drill, at: at_utc, tally: jsonIn(tally_json) })
      return read.success ? [{ engine, seconds, ...read.data }] : []
    })
  const standingOf = (person: string | null): PracticeStanding => ({
    isKept: person !== null,
    progress: person === null ? [] : progressOf(roundsOf(person)),
    minimums: store.practiceMinimums(),
  })

  /** The shop's minimum for an engine, and its drills; none for an engine that is not there. */
  const wanted = (engine: string) => {
    const spec = engines.find(engine)?.spec
    return {
      least: store.practiceMinimums()[engine] ?? 0,
      offered: spec ? drillsOf(spec).map((drill) => ({ engine, drill })) : [],
    }
  }

  return {
    'practice.read': ({ person }) => {
      const found = people.present(person)
      return found.ok ? done(standingOf(found.value?.id ?? null)) : found
    },
    'practice.keep': ({ person, round }) => {
      const found = people.present(person)
      if (!found.ok) return found
      if (found.value === null) return refused('practice-not-kept', { name: person.slice(0, 80) }, 'person')
      const kept = store.keepRound(found.value.id, {
        ...{ engine: round.engine, drill: round.drill, seconds: round.seconds },
        at_utc: now().toISOString(),
        tally_json: JSON.stringify(round.tally),
      })
      return kept.ok ? done(standingOf(found.value.id)) : kept
    },
    'practice.set-minimum': ({ person, engine, least }) => {
      const found = people.leading(person)
      if (!found.ok) return found
      const kept = store.keepPracticeMinimum(engine, least)
      return kept.ok ? done(standingOf(found.value.id)) : kept
    },
    'practice.readiness': ({ person, engine }) => {
      const { least, offered } = wanted(engine)
      if (least === 0 || offered.length === 0) return done(null)
      const id = people.idOf(person)
      const progress = id === null ? [] : progressOf(roundsOf(id))
      return done({ least, missing: missingPractice(offered, progress, least) })
    },
    'practice.people': ({ person, engine }) => {
      const found = people.leading(person)
      if (!found.ok) return found
      const { least, offered } = wanted(engine)
      const all = people.all().map(({ id, name }) => ({ name, progress: progressOf(roundsOf(id)) }))
      return done({
        least,
        drills: offered.map(({ drill }) => drill),
        people: readyPeople(offered, all, least),
      })
    },
  }
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text) as unknown
  } catch {
    return null
  }
}
