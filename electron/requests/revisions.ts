import {
  builtElsewhere,
  mentionsOf,
  readPerson,
  takeRevision,
  type SpecRevision,
} from '../../core/builds/index.ts'
import { documentIn } from '../../core/drafts/index.ts'
import { readSpec } from '../../core/engine/index.ts'
import { done, refused, type Outcome } from '../../core/problem/index.ts'
import { sha256 } from '../store/index.ts'
import type { Store } from '../store/index.ts'
import type { HandlersOf } from './handlers.ts'
import type { OpenBuildCache } from './open-build-cache.ts'
import { openBuild } from './open-build.ts'
import type { People } from './people.ts'
import type { ShopDesk } from './shop/shop-desk.ts'

/** A spec's text as a revision that a build can go by; null for what is no spec. */
function revisionIn(text: string): SpecRevision | null {
  const read = readSpec(text)
  return read.ok ? { spec: read.spec, document: documentIn(text), sha256: sha256(text) } : null
}

/** Answers about builds that go on by a newer revision of their spec. */
export function revisionRequests(services: {
  readonly store: Store
  readonly openBuilds: OpenBuildCache
  readonly people: People
  readonly shop: ShopDesk
  readonly now: () => Date
}): Pick<HandlersOf<'builds'>, 'builds.take-revision'> {
  const { store, openBuilds, people, shop, now } = services

  function newerRevision(engine: string, revision: number, own: string): Outcome<SpecRevision> {
    const revisions = store.library.revisions(engine)
    const known = revisions.find((row) => row.sha256 === own)
    const row = revisions.find((each) => each.revision === revision)
    const text = row && store.specText(row.sha256)
    if (row === undefined || known === undefined || row.revision <= known.revision || !text)
      return refused('revision-none', {}, 'revision')
    const found = revisionIn(text)
    return found?.sha256 === row.sha256 ? done(found) : refused('build-spec-altered', {}, 'revision')
  }

  return {
    'builds.take-revision': ({ build, after, person: typed, revision, ...answers }) => {
      const person = readPerson(typed)
      if (!person.ok) return person
      const known = people.present(person.value)
      if (!known.ok) return known
      const opened = openBuild(store, build)
      if (!opened.ok) return opened
      const { specText, namesOf, state, readOnly } = opened.value
      if (readOnly !== null) return { ok: false, problem: readOnly }
      if (after !== state.seq) return refused('build-moved-on', { last: state.seq }, 'after')
      const elsewhere = builtElsewhere(state, shop.here) ?? shop.apart(build)
      if (elsewhere !== null) return { ok: false, problem: elsewhere }
      const from = revisionIn(specText)
      if (from === null) return refused('build-spec-lost', {}, 'build')
      const to = newerRevision(from.spec.id, revision, from.sha256)
      if (!to.ok) return to
      const decided = takeRevision(from, to.value, state, answers)
      if (!decided.ok) return decided
      const added = store.append({
        build,
        after: state.seq,
        events: decided.value,
        person: person.value,
        at: now().toISOString(),
        mentions: decided.value.flatMap((event) =>
          mentionsOf(from.spec, namesOf, { person: person.value, event }),
        ),
      })
      // What is kept of the build is by the earlier spec.
      openBuilds.drop(build)
      if (!added.ok) return added
      const reopened = openBuild(store, build)
      return reopened.ok ? done(shop.stored(reopened.value)) : reopened
    },
  }
}
