import { done, problem, refused, type Outcome, type Problem } from '../../core/problem/index.ts'
import {
  isLater,
  photoHash,
  sha256,
  type KeptSpec,
  type ListItem,
  type ListName,
  type StoredEntry,
} from '../store/index.ts'
import {
  isListed,
  type Consignment,
  type Fork,
  type ForkName,
  type Receipt,
  type ShopArchive,
  type ShopBench,
  type ShopBuild,
  type ShopConnection,
  type ShopEntry,
  type ShopListener,
  type ShopSearch,
} from './archive.ts'
import { followingFrom } from './following.ts'
import { hasFork, isFound, list, type MemoryBuild } from './memory-build.ts'
import { placed } from './placing.ts'
import { foundBy } from './found-by.ts'

/** An archive in memory, for tests and the gallery: it goes by the same contract as the one on a server. */
export interface MemoryShop {
  /** The way of one bench to it. */
  client(): MemoryClient
  /** What its owner chooses: the lists that all benches have in common. */
  makeCommon(lists: readonly ListName[]): void
}

export interface MemoryClient extends ShopArchive {
  /** From now on every question is answered with this problem, and nothing is announced. */
  cut(problem?: Problem): void
  mend(): void
}

const mostChanges = 200

export function memoryShop(shop = 'shop', now: () => Date = () => new Date()): MemoryShop {
  const builds = new Map<string, MemoryBuild>()
  const benches = new Map<string, ShopBench>()
  const specs = new Map<string, KeptSpec>()
  const photos = new Map<string, Uint8Array>()
  const items = new Map<ListName, Map<string, ListItem>>()
  let common: readonly ListName[] = []
  const woken = new Set<() => void>()
  const listsWoken = new Set<() => void>()
  let change = 0

  const utc = () => now().toISOString()
  const rows = () => [...builds.values()].map(({ row }) => row)
  const changed = (after: number) =>
    rows()
      .filter((row) => row.change > after)
      .toSorted((a, b) => a.change - b.change)
      .slice(0, mostChanges)

  /** Something came to a build: it has a later change, and who follows is woken. */
  function move(build: MemoryBuild, row: Partial<ShopBuild>): void {
    change += 1
    build.row = { ...build.row, ...row, receivedAtUtc: utc(), forked: hasFork(build), change }
    for (const wake of woken) wake()
  }

  const questions = {
    greet: (bench: Parameters<ShopArchive['greet']>[0]): Outcome<null> => {
      benches.set(bench.id, { ...bench, seenAtUtc: utc() })
      return done(null)
    },
    benches: () => done([...benches.values()].toSorted((a, b) => (a.name < b.name ? -1 : 1))),
    lacking: (hashes: Parameters<ShopArchive['lacking']>[0]) =>
      done({
        specs: hashes.specs.filter((hash) => !specs.has(hash)),
        photos: hashes.photos.filter((hash) => !photos.has(hash)),
      }),
    keepSpec: (spec: KeptSpec): Outcome<null> => {
      specs.set(sha256(spec.text), spec)
      return done(null)
    },
    keepPhoto: (bytes: Uint8Array): Outcome<null> => {
      photos.set(photoHash(bytes), bytes)
      return done(null)
    },
    send: (consignment: Consignment): Outcome<Receipt> => {
      const { build, bench, entries, listed } = consignment
      const spec = specs.get(listed.specSha256)
      if (spec === undefined) return refused('shop-spec-missing', {})
      const kept = builds.get(build)
      const there = kept?.entries ?? []
      const place = placed(build, entries, {
        count: there.length,
        hashAt: (seq) => there[seq - 1]?.sha256 ?? null,
        rootOf: (hash) =>
          [...(kept?.forks.values() ?? [])].find((fork) => fork.entries.some((each) => each.sha256 === hash))
            ?.root ?? null,
      })
      if (place.kind === 'refused') return refused('shop-entry-refused', { entry: place.entry })
      if (place.kind === 'behind') return done(place)
      const from = (entry: StoredEntry): ShopEntry => ({ ...entry, bench })
      const receipt: Receipt =
        place.kind === 'fork'
          ? { kind: 'fork', at: place.root.at }
          : { kind: 'kept', upTo: entries.at(-1)?.seq ?? 0 }
      if (place.kind === 'fork' && kept !== undefined) {
        const { root, beside } = place
        const fork = kept.forks.get(root.sha256) ?? { root, entries: [], settled: null }
        const others = beside.filter(({ sha256 }) => !fork.entries.some((each) => each.sha256 === sha256))
        const isNews = isListed(consignment, 'fork') && list(kept, consignment)
        if (others.length === 0) {
          if (isNews) move(kept, {})
          return done(receipt)
        }
        fork.entries.push(...others.map(from))
        kept.forks.set(root.sha256, fork)
        move(kept, {})
      }
      if (place.kind === 'kept' && place.added.length > 0) {
        const all = [...there, ...place.added.map(from)]
        const row: ShopBuild = {
          ...(kept !== undefined && !isListed(consignment, 'kept') ? kept.row : listed),
          id: build,
          engine: spec.engine,
          demo: spec.demo,
          entries: all.length,
          headSha256: all.at(-1)?.sha256 ?? '',
          bench,
          receivedAtUtc: utc(),
          forked: false,
          change: 0,
        }
        const into: MemoryBuild = kept ?? { row, entries: [], mentions: [], forks: new Map() }
        builds.set(build, into)
        into.entries.push(...place.added.map(from))
        if (isListed(consignment, 'kept')) into.mentions.push(...foundBy(consignment))
        move(into, row)
      }
      if (place.kind === 'kept' && place.added.length === 0 && kept !== undefined)
        if (consignment.counts === 'here' && list(kept, consignment)) move(kept, {})
      return done(receipt)
    },
    builds: (search: ShopSearch = {}) =>
      done(
        [...builds.values()]
          .filter((build) => isFound(build, search))
          .map(({ row }) => row)
          .toSorted((a, b) => (a.id < b.id ? 1 : -1))
          .slice(0, search.most === undefined || search.most < 0 ? undefined : search.most),
      ),
    build: (id: string) => done(builds.get(id)?.row ?? null),
    entries: (build: string, after = 0) => done(builds.get(build)?.entries.slice(after) ?? []),
    spec: (hash: string) => done(specs.get(hash) ?? null),
    photo: (hash: string) => done(photos.get(hash) ?? null),
    buildsOf: (ids: readonly string[]) => done(rows().filter(({ id }) => ids.includes(id))),
    lastChange: () => done(change),
    changesAfter: (after: number) => done(changed(after)),
    forks: (build?: string) =>
      done(
        [...builds.entries()]
          .filter(([id]) => build === undefined || id === build)
          .flatMap(([id, { forks }]) =>
            [...forks.values()].map(({ root, entries, settled }): Fork => ({
              build: id,
              ...root,
              entries,
              settled,
            })),
          ),
      ),
    settle: (name: ForkName, settlement: Parameters<ShopArchive['settle']>[1]): Outcome<null> => {
      const build = builds.get(name.build)
      const fork = build?.forks.get(name.sha256)
      if (build === undefined || fork?.settled !== null) return refused('shop-fork-unknown', {})
      fork.settled = { ...settlement, atUtc: utc() }
      move(build, {})
      return done(null)
    },
    commonLists: () => done(common),
    listItems: (list: ListName) =>
      done([...(items.get(list)?.values() ?? [])].toSorted((a, b) => (a.id < b.id ? -1 : 1))),
    keepListItems: (list: ListName, said: readonly ListItem[]): Outcome<null> => {
      const kept = items.get(list) ?? new Map<string, ListItem>()
      items.set(list, kept)
      for (const item of said) {
        const before = kept.get(item.id)
        if (before === undefined || isLater(item, before)) kept.set(item.id, item)
      }
      announceLists()
      return done(null)
    },
  }

  function announceLists(): void {
    for (const wake of listsWoken) wake()
  }

  return {
    makeCommon(chosen) {
      common = chosen
      announceLists()
    },
    client() {
      let connection: ShopConnection = { kind: 'untried' }
      let fault: Problem | null = null
      const listeners = new Set<{ readonly listener: ShopListener; last: number }>()

      function say(next: ShopConnection): void {
        connection = next
        for (const { listener } of listeners) listener.connection(next)
      }
      function announce(): void {
        if (fault !== null) return
        for (const each of listeners) {
          const from = followingFrom(each.last, change)
          if (from !== each.last) each.listener.skipped?.(from < each.last ? 'set-back' : 'many')
          each.last = from
          for (let some = changed(each.last); some.length > 0; some = changed(each.last))
            for (const build of some) {
              each.last = build.change
              each.listener.added(build)
            }
        }
      }
      const wake = () => queueMicrotask(announce)
      woken.add(wake)
      const wakeForLists = () =>
        queueMicrotask(() => {
          if (fault === null) for (const { listener } of listeners) listener.lists?.()
        })
      listsWoken.add(wakeForLists)

      /** Every question goes this way, so that a cut line answers none. */
      const asked =
        <Args extends readonly unknown[], Value>(question: (...args: Args) => Outcome<Value>) =>
        async (...args: Args): Promise<Outcome<Value>> => {
          await Promise.resolve()
          if (fault !== null) return { ok: false, problem: fault }
          if (connection.kind !== 'open') say({ kind: 'open', sinceUtc: utc() })
          return question(...args)
        }

      return {
        shop,
        connection: () => connection,
        greet: asked(questions.greet),
        benches: asked(questions.benches),
        lacking: asked(questions.lacking),
        keepSpec: asked(questions.keepSpec),
        keepPhoto: asked(questions.keepPhoto),
        send: asked(questions.send),
        builds: asked(questions.builds),
        build: asked(questions.build),
        entries: asked(questions.entries),
        spec: asked(questions.spec),
        photo: asked(questions.photo),
        buildsOf: asked(questions.buildsOf),
        lastChange: asked(questions.lastChange),
        changesAfter: asked(questions.changesAfter),
        forks: asked(questions.forks),
        settle: asked(questions.settle),
        commonLists: asked(questions.commonLists),
        listItems: asked(questions.listItems),
        keepListItems: asked(questions.keepListItems),
        follow(after, listener) {
          const each = { listener, last: after }
          listeners.add(each)
          queueMicrotask(() => {
            if (fault === null && connection.kind !== 'open') say({ kind: 'open', sinceUtc: utc() })
            else listener.connection(connection)
            announce()
          })
          return () => void listeners.delete(each)
        },
        close() {
          woken.delete(wake)
          listsWoken.delete(wakeForLists)
          listeners.clear()
          return Promise.resolve()
        },
        cut(why = problem('shop-unreachable', { host: 'memory', code: 'ECONNREFUSED' })) {
          fault = why
          say({ kind: 'cut', sinceUtc: utc(), problem: why })
        },
        mend() {
          fault = null
          say({ kind: 'open', sinceUtc: utc() })
          wake()
        },
      }
    },
  }
}
