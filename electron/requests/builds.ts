import type { BuildState } from '../../core/build/index.ts'
import { decide, evolve, readPerson, startBuild } from '../../core/build/index.ts'
import { done, refused } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import type { EngineSpec } from '../../core/spec/index.ts'
import { sha256 } from '../store/index.ts'
import type { Store } from '../store/index.ts'
import { told } from './answer.ts'
import type { HandlersOf } from './handlers.ts'
import { lineOf, openBuild } from './open-build.ts'
import type { Engine } from './specs.ts'

/** A build being worked on: kept so that a confirmation need not read the whole build again. */
interface AtHand {
  readonly spec: EngineSpec
  readonly state: BuildState
}

/** More builds than lie open on one bench; the least recently used gives way. */
const mostAtHand = 8

/** Answers about builds, and the only way by which anything is added to one. */
export function buildRequests(given: {
  readonly store: Store
  readonly engines: readonly Engine[]
  readonly now: () => Date
  readonly newId: () => string
}): HandlersOf<'builds'> {
  const { store, engines, now, newId } = given
  const atHand = new Map<string, AtHand>()

  function keepAtHand(build: string, { spec, state }: AtHand): void {
    atHand.delete(build)
    atHand.set(build, { spec, state })
    const [oldest] = atHand.keys()
    if (atHand.size > mostAtHand && oldest !== undefined) atHand.delete(oldest)
  }

  function takeUp(build: string): Outcome<AtHand> {
    const known = atHand.get(build)
    if (known) return done(known)
    const opened = openBuild(store, build)
    if (!opened.ok) return opened
    const { spec, state, readOnly } = opened.value
    return readOnly ? { ok: false, problem: readOnly } : done({ spec, state })
  }

  return {
    'builds.list': () => done(store.builds().map(lineOf)),

    'builds.open': ({ build }) => {
      const opened = openBuild(store, build)
      if (!opened.ok) return opened
      const { row, specText, spec, state, events, readOnly } = opened.value
      if (!readOnly) keepAtHand(build, { spec, state })
      return done({ line: lineOf(row), specText, events, readOnly: readOnly && told(readOnly) })
    },

    'builds.start': (input) => {
      const engine = engines.find(({ id }) => id === input.engine)
      if (!engine) return refused('engine-unknown', { engine: input.engine.slice(0, 80) }, 'engine')
      if (engine.kind === 'faulty')
        return refused('engine-faulty', { engine: engine.spec?.name ?? engine.id }, 'engine')

      const person = readPerson(input.person)
      if (!person.ok) return person
      const started = startBuild(engine.spec, { ...input, specSha256: sha256(engine.text) })
      if (!started.ok) return started

      const build = newId()
      const added = store.start(
        { build, after: 0, events: [started.value], person: person.value, at: now().toISOString() },
        { text: engine.text, engine: engine.spec.name, demo: engine.spec.source.kind === 'demo' },
      )
      if (!added.ok) return added
      const opened = openBuild(store, build)
      if (!opened.ok) return opened
      const { row, specText, events } = opened.value
      return done({ line: lineOf(row), specText, events, readOnly: null })
    },

    'builds.act': (input) => {
      const person = readPerson(input.person)
      if (!person.ok) return person
      const taken = takeUp(input.build)
      if (!taken.ok) return taken
      const { spec, state } = taken.value
      if (input.after !== state.seq) return refused('build-moved-on', { last: state.seq }, 'after')
      const decided = decide(spec, state, input.command)
      if (!decided.ok) return decided
      const added = store.append({
        build: input.build,
        after: state.seq,
        events: decided.value,
        person: person.value,
        at: now().toISOString(),
      })
      if (!added.ok) {
        atHand.delete(input.build) // the next one starts from what the disk holds
        return added
      }
      keepAtHand(input.build, { spec, state: added.value.reduce(evolve, state) })
      return done({ events: [...added.value] })
    },
  }
}
