import { typedWords } from '../../core/builds/index.ts'
import type { FoundLine, ShopCut } from '../../core/contract/index.ts'
import { done, type Outcome } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'
import type { ShopArchive, ShopBuild, ShopSearch } from '../shop/index.ts'
import { readStanding, type BuildRow, type Search, type Store } from '../store/index.ts'
import type { HandlersOf } from './handlers.ts'
import type { ListedNames } from './listed-names.ts'
import type { OpenBuildCache } from './open-build-cache.ts'
import type { ShopDesk } from './shop/shop-desk.ts'
import { withStandings } from './standings.ts'

const pageLines = 50
const dayMs = 86_400_000

interface Services {
  readonly store: Store
  readonly openBuilds: OpenBuildCache
  readonly names: ListedNames
  readonly desk: ShopDesk
}

/** Finds builds in the record here, or in the archive of the shop together with what it does not have yet from here. */
export function findRequest(services: Services): Pick<HandlersOf<'builds'>, 'builds.find'> {
  const { store, names, desk } = services
  return {
    'builds.find': async ({ words, from, to, language, of, bench, state, ...narrowed }) => {
      const search: ShopSearch = {
        ...narrowed,
        ...{ state, holder: bench },
        words: typedWords(words),
        called: (word) => names.called(word),
        from: from && `${from}T00:00:00.000Z`,
        to: to && new Date(Date.parse(to) + dayMs).toISOString(),
      }
      const { link } = desk
      if (of === 'here' || !desk.isJoined)
        return done(pageOf(linesHere(services, language, store.builds(ofRecord(search, pageLines + 1)))))
      // While nobody answers, nobody is asked: what is here is shown at once.
      const cut = desk.cut()
      const there =
        link === null || cut !== null
          ? { lines: [], cut }
          : await linesThere(services, link.archive, language, search)
      if ('ok' in there) return there
      return done({ ...pageOf(merged(services, language, search, there)), shop: { cut: there.cut } })
    },
  }
}

/** One more than a page has shows that there are more. */
function pageOf(lines: readonly FoundLine[]) {
  return { lines: lines.slice(0, pageLines), more: lines.length > pageLines }
}

/** What a search of the record knows: nothing of benches. */
function ofRecord({ state, holder: _, ...search }: ShopSearch, most: number): Search {
  return { ...search, ...(state !== 'forked' && { state }), most }
}

function linesHere(
  { store, openBuilds, names }: Services,
  language: Language,
  rows: readonly BuildRow[],
): readonly FoundLine[] {
  return withStandings(store, openBuilds, rows).map(({ row, standing }) =>
    names.lineIn(language, row, standing),
  )
}

interface ShopLines {
  readonly lines: readonly FoundLine[]
  readonly cut: ShopCut
}

async function linesThere(
  services: Services,
  archive: ShopArchive,
  language: Language,
  search: ShopSearch,
): Promise<ShopLines | Outcome<never>> {
  const rows = await archive.builds({ ...search, most: pageLines + 1 })
  if (rows.ok) {
    await learnNames(services, archive, rows.value)
    return { cut: null, lines: rows.value.map((row) => shopLine(services, language, row)) }
  }
  return { lines: [], cut: services.desk.cut() ?? { since: null, problem: rows.problem } }
}

/** The names of engines and steps in all languages stand in the spec, which a bench that has not opened such a build does not have. */
async function learnNames(
  { names }: Services,
  archive: ShopArchive,
  rows: readonly ShopBuild[],
): Promise<void> {
  const lacking = new Set(rows.map(({ specSha256 }) => specSha256).filter((hash) => names.lacks(hash)))
  for (const spec of await Promise.all([...lacking].map((hash) => archive.spec(hash))))
    if (spec.ok && spec.value !== null) names.learn(spec.value.text)
}

/**
 * The lines of the archive, with those of builds here that it has not got or not whole; those of this record alone where it does not
 * answer.
 */
function merged(
  services: Services,
  language: Language,
  search: ShopSearch,
  { lines, cut }: ShopLines,
): readonly FoundLine[] {
  const { store } = services
  const { state, holder } = search
  const waits = new Set(store.shop.waiting().map(({ build }) => build))
  if (cut === null && waits.size === 0) return lines
  const last = lines.length > pageLines ? lines.at(-1)?.id : undefined
  // What the record cannot narrow by is narrowed here, so that all is read.
  const isNarrowed = cut === null || holder !== undefined || state === 'forked'
  const rows = store.builds({
    ...ofRecord(search, isNarrowed ? -1 : pageLines + 1),
    ...(last !== undefined && { after: last }),
  })
  const missing = rows.filter(({ id }) => cut !== null || waits.has(id))
  const here = linesHere(services, language, missing)
    .map((line) => ({ ...line, at: placeHere(services, line) }))
    .filter(({ at }) => holder === undefined || at.bench.id === holder)
    .filter(({ at }) => state !== 'forked' || at.isForked)
  const fromHere = new Set(here.map(({ id }) => id))
  return [...lines.filter(({ id }) => !fromHere.has(id)), ...here].toSorted((a, b) => (a.id < b.id ? 1 : -1))
}

function placeHere({ store, desk }: Services, { id, lastAt }: FoundLine): NonNullable<FoundLine['at']> {
  const { begun, asOf } = store.shop.of(id)
  const bench = store.shop.holder(id) ?? begun?.bench ?? desk.here
  const isHere = bench.id === desk.here.id
  return { bench, isHere, asOf: isHere ? lastAt : (asOf ?? lastAt), isForked: desk.apart(id) !== null }
}

function shopLine({ names, desk }: Services, language: Language, row: ShopBuild): FoundLine {
  const { specSha256: spec_sha256, headSha256: head_sha256, startedAtUtc, lastAtUtc } = row
  const flag = (is: boolean) => (is ? 1 : 0)
  // What the list says came with the entries of the line that counts; the head is of the archive’s own line.
  const standing = readStanding({ standing: row.standing, head_sha256: null })
  const asKeptHere: BuildRow = {
    ...{ id: row.id, year: row.year, ordinal: row.ordinal, name: row.name, serial: row.serial },
    ...{ engine: row.engine, demo: flag(row.demo), spec_sha256, head_sha256, entries: row.entries },
    ...{ started_at_utc: startedAtUtc, last_at_utc: lastAtUtc, standing: row.standing, begun_json: null },
    finished: flag(row.finished),
    voided: flag(row.voided),
    flagged: flag(row.flagged),
  }
  return {
    ...names.lineIn(language, asKeptHere, standing === 'stale' ? null : standing),
    at: {
      bench: { id: row.holder, name: desk.nameOf(row.holder) },
      isHere: row.holder === desk.here.id,
      asOf: row.receivedAtUtc,
      isForked: row.forked,
    },
  }
}
