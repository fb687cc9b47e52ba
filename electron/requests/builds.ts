import {
  handsIn,
  mentionsOf,
  readPerson,
  sampleFacts,
  samplesLeft,
  startBuild,
  type SampleEntry,
} from '../../core/builds/index.ts'
import { namesInAllLanguages, type EngineSpec } from '../../core/engine/index.ts'
import { finishedSample, halfWaySample } from '../../core/practice/index.ts'
import { done, refused, type Outcome } from '../../core/problem/index.ts'
import { loadWords } from '../../core/words/index.ts'
import { sha256 } from '../store/index.ts'
import type { Store } from '../store/index.ts'
import { decideInLanguage } from './decide-in-language.ts'
import { newMentions } from './open-build-cache.ts'
import type { OpenBuildCache } from './open-build-cache.ts'
import type { EngineShelf } from './engine-shelf.ts'
import type { HandlersOf } from './handlers.ts'
import type { ListedNames } from './listed-names.ts'
import type { People } from './people.ts'
import { lineOf, newerThan, openBuild } from './open-build.ts'
import type { ShopDesk } from './shop/shop-desk.ts'
import { withStandings } from './standings.ts'

/** How each demo build comes about. */
const made = { 'half-way': halfWaySample, finished: finishedSample }

/** As many as one looks through without searching. */
const mostListed = 200

/** Answers about builds, and the only way by which anything is added to one. */
export function buildRequests(services: {
  readonly store: Store
  readonly openBuilds: OpenBuildCache
  readonly names: ListedNames
  readonly people: People
  readonly engines: Pick<EngineShelf, 'find'>
  readonly now: () => Date
  readonly newId: () => string
  readonly shop: ShopDesk
  /** A build was finished: time for a backup. */
  readonly finished: () => void
}): Pick<
  HandlersOf<'builds'>,
  'builds.list' | 'builds.open' | 'builds.start' | 'builds.try' | 'builds.since' | 'builds.act'
> {
  const { store, openBuilds, names, people, engines, shop, now, newId, finished } = services
  return {
    'builds.list': ({ language }) =>
      done(
        withStandings(store, openBuilds, store.builds({ most: mostListed })).map(({ row, standing }) =>
          names.lineIn(language, row, standing),
        ),
      ),

    'builds.open': ({ build }) => {
      const opened = openBuild(store, build)
      if (!opened.ok) return opened
      if (!opened.value.readOnly) openBuilds.keepOpened(build, opened.value)
      return done(shop.stored(opened.value))
    },

    'builds.start': (input) => {
      const engine = engines.find(input.engine)
      if (!engine) return refused('engine-unknown', { engine: input.engine.slice(0, 80) }, 'engine')
      if (engine.kind === 'faulty')
        return refused('engine-faulty', { engine: engine.spec?.name ?? engine.id }, 'engine')

      const person = readPerson(input.person)
      if (!person.ok) return person
      const known = people.present(person.value)
      if (!known.ok) return known
      const apprentice = input.apprentice || known.value?.role === 'apprentice'
      const started = startBuild(engine.spec, { ...input, apprentice, specSha256: sha256(engine.text) })
      if (!started.ok) return started

      const build = newId()
      const added = store.start(
        {
          build,
          after: 0,
          events: [started.value],
          person: person.value,
          at: now().toISOString(),
          mentions: mentionsOf(engine.spec, namesInAllLanguages(engine.text), {
            person: person.value,
            event: started.value,
          }),
        },
        { text: engine.text, engine: engine.spec.name, demo: engine.spec.source.kind === 'demo' },
      )
      if (!added.ok) return added
      const opened = openBuild(store, build)
      if (!opened.ok) return opened
      return done(shop.stored(opened.value))
    },

    'builds.try': async ({ sample: which, language }) => {
      const words = await loadWords(language)
      const left = samplesLeft(store.builds({ most: mostListed }).map((row) => lineOf(row)))
      if (!left.includes(which)) return refused('sample-not-needed', {})
      const { engine: id } = sampleFacts[which]
      const engine = engines.find(id)
      if (engine?.kind !== 'sound') return refused('engine-unknown', { engine: id })
      const { spec, text } = engine
      const at = now().toISOString()
      const sample = made[which](words, spec, sha256(text), at)
      if (!sample.ok) return sample
      const build = newId()
      const added = addSample(store, { build, at, spec, text }, sample.value)
      if (!added.ok) return added
      const opened = openBuild(store, build)
      if (!opened.ok) return opened
      return done(shop.stored(opened.value))
    },

    'builds.since': ({ build, after }) => {
      const known = openBuilds.known(build)
      const benches = shop.benchesOf(build)
      if (known?.state.seq === after) return done({ events: [], benches, ...newerThan(store, known) })
      const opened = openBuild(store, build)
      if (!opened.ok) return opened
      const { events, readOnly } = opened.value
      if (after > events.length) return refused('build-moved-on', { last: events.length }, 'after')
      const newer = readOnly === null && newerThan(store, opened.value)
      return done({ events: events.slice(after), benches, ...newer })
    },

    'builds.act': (input) => {
      const person = readPerson(input.person)
      if (!person.ok) return person
      const known = people.present(person.value)
      if (!known.ok) return known
      const cached = openBuilds.get(input.build)
      if (!cached.ok) return cached
      const { spec, namesOf, state } = cached.value
      if (input.after !== state.seq) return refused('build-moved-on', { last: state.seq }, 'after')
      const { command } = input
      if (command.type === 'add-photo') return refused('photo-without-bytes', {}, 'command')
      if (command.type === 'confirm-step' || command.type === 'send-back-step') {
        const second = people.second(command.second, handsOn(store, input.build, command.step))
        if (!second.ok) return second
      }
      const at = now().toISOString()
      const refusal = shop.refusal(input.build, command)
      if (refusal !== null) return { ok: false, problem: refusal }
      const decided = decideInLanguage(store, cached.value, input, at, shop.here)
      if (!decided.ok) return decided
      const mentions = decided.value.flatMap((event) =>
        mentionsOf(spec, namesOf, { person: person.value, event }),
      )
      const added = store.append({
        build: input.build,
        after: state.seq,
        events: decided.value,
        person: person.value,
        at,
        mentions: newMentions(cached.value, mentions),
      })
      if (!added.ok) {
        openBuilds.drop(input.build)
        return added
      }
      openBuilds.advance(input.build, cached.value, added.value, mentions)
      if (added.value.some(({ event }) => event.type === 'build-finished')) finished()
      return done({ events: [...added.value] })
    },
  }
}

/** Whose work a step of a build is; nobody's where the build cannot be read or has no such step. */
function handsOn(store: Store, build: string, stepId: string): readonly string[] {
  const opened = openBuild(store, build)
  if (!opened.ok) return []
  const { spec, events } = opened.value
  const step = spec.steps.find(({ id }) => id === stepId)
  return step === undefined ? [] : handsIn(spec, events, step)
}

/** Adds the entries in runs of one person each: as many transactions as the person changes. */
function addSample(
  store: Store,
  { build, at, spec, text }: { build: string; at: string; spec: EngineSpec; text: string },
  sample: readonly SampleEntry[],
): Outcome<null> {
  const kept = { text, engine: spec.name, demo: spec.source.kind === 'demo' }
  const namesOf = namesInAllLanguages(text)
  for (let after = 0; after < sample.length;) {
    const { person } = sample[after]!
    const others = sample.findIndex((entry, index) => index > after && entry.person !== person)
    const some = sample.slice(after, others < 0 ? sample.length : others)
    const mentions = some.flatMap((entry) => mentionsOf(spec, namesOf, entry))
    const addition = { build, after, events: some.map(({ event }) => event), person, at, mentions }
    const added = after === 0 ? store.start(addition, kept) : store.append(addition)
    if (!added.ok) return added
    after += some.length
  }
  return done(null)
}
