import { mentionsOf, readPerson, type BuildPhoto } from '../../core/builds/index.ts'
import type { EngineSpec } from '../../core/engine/index.ts'
import { checkKept } from '../../core/photo/index.ts'
import { done, problem, refused, type Outcome, type Problem } from '../../core/problem/index.ts'
import { photoHash } from '../store/index.ts'
import type { PhotoState, Store } from '../store/index.ts'
import { decideInLanguage } from './decide-in-language.ts'
import type { HandlersOf } from './handlers.ts'
import { mayLeave, openBuild } from './open-build.ts'
import { newMentions, type CachedBuild, type OpenBuildCache } from './open-build-cache.ts'
import type { People } from './people.ts'
import type { ShopDesk } from './shop/shop-desk.ts'

/** Answers about the photos of builds. */
export function photoRequests(services: {
  readonly store: Store
  readonly openBuilds: OpenBuildCache
  readonly people: People
  readonly shop: ShopDesk
  readonly now: () => Date
}): HandlersOf<'photos'> {
  const { store, openBuilds, people, shop, now } = services
  return {
    'photos.add': (input) => {
      const { build, after, step, caption, part, language } = input
      const person = readPerson(input.person)
      if (!person.ok) return person
      const known = people.present(person.value)
      if (!known.ok) return known
      const cached = openBuilds.get(build)
      if (!cached.ok) return cached
      const { spec, namesOf, state } = cached.value
      if (after !== state.seq) return refused('build-moved-on', { last: state.seq }, 'after')
      const bytes = Buffer.from(input.base64, 'base64')
      const size = checkKept(bytes)
      if (!size.ok) return size
      const photo = {
        sha256: photoHash(bytes),
        mediaType: 'image/jpeg',
        ...size.value,
        sizeBytes: bytes.length,
      } as const
      const at = now().toISOString()
      const command = { type: 'add-photo', step, caption, part, photo } as const
      const refusal = shop.refusal(build, command)
      if (refusal !== null) return { ok: false, problem: refusal }
      const decided = decideInLanguage(store, cached.value, { command, language }, at, shop.here)
      if (!decided.ok) return decided
      const mentions = decided.value.flatMap((event) =>
        mentionsOf(spec, namesOf, { person: person.value, event }),
      )
      const added = store.append({
        ...{ build, after, at, person: person.value, events: decided.value },
        mentions: newMentions(cached.value, mentions),
        photos: [bytes],
      })
      if (!added.ok) {
        openBuilds.drop(build)
        return added
      }
      openBuilds.advance(build, cached.value, added.value, mentions)
      return done({ events: [...added.value] })
    },

    'photos.read': ({ build, entry }) => {
      const opened = readable(store, openBuilds, build)
      if (!opened.ok) return opened
      const { spec, state } = opened.value
      const photo = state.photos.find(({ seq }) => seq === entry)
      if (photo === undefined)
        return state.photosWithdrawn.some(({ seq }) => seq === entry)
          ? refused('photo-withdrawn', {}, 'entry')
          : refused('photo-unknown', {}, 'entry')
      const { sha256 } = photo.photo
      const bytes = store.photos.bytes(sha256)
      if (bytes === null) return { ok: false, problem: photoProblem('missing', spec.steps, photo.step) }
      if (photoHash(bytes) !== sha256)
        return { ok: false, problem: photoProblem('damaged', spec.steps, photo.step) }
      return done({ base64: bytes.toString('base64') })
    },
  }
}

/** What is wrong with a photo, at its place in the build. */
export function photoProblem(
  state: Exclude<PhotoState, 'good'>,
  steps: EngineSpec['steps'],
  step: BuildPhoto['step'],
): Problem {
  const place = steps.findIndex(({ id }) => id === step)
  return problem(state === 'damaged' ? 'photo-damaged' : 'photo-missing', {
    step: place < 0 ? null : place + 1,
  })
}

/** Also of a build that nothing may be added to, as far as it can be read. */
function readable(
  store: Store,
  openBuilds: OpenBuildCache,
  build: string,
): Outcome<Pick<CachedBuild, 'spec' | 'state'>> {
  const known = openBuilds.known(build)
  if (known !== null) return done(known)
  const opened = openBuild(store, build)
  if (!opened.ok) return opened
  const { spec, state, readOnly } = opened.value
  if (mayLeave(readOnly)) openBuilds.keepOpened(build, opened.value)
  return done({ spec, state })
}
