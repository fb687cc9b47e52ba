import { buildSheet, heldAt, typedWords } from '../../../core/builds/index.ts'
import type { ImportResult } from '../../../core/contract/index.ts'
import { done, problem, refused } from '../../../core/problem/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'
import { headCode, mentionsIn, readEntry } from '../../store/index.ts'
import type { BuildRow, Store, Witness } from '../../store/index.ts'
import { keepUnderEarlierRules } from './earlier-rules.ts'
import type { OpenBuildCache } from '../open-build-cache.ts'
import { readExport, writeExport } from './export-file.ts'
import { specsNamed } from './export-specs.ts'
import type { ExportFile } from './export-file.ts'
import type { HandlersOf } from '../handlers.ts'
import { lineOf, mayLeave, openBuild } from '../open-build.ts'
import { tableOf } from '../tables/tables.ts'

type Archive = Pick<HandlersOf<'builds'>, 'builds.export' | 'builds.import' | 'builds.csv'>

/** Answers about taking builds elsewhere and taking them in. */
export function archiveRequests(services: {
  readonly store: Store
  readonly openBuilds: OpenBuildCache
  readonly now: () => Date
  /** A head is given out: it is kept, to be held against the build later. */
  readonly keepHead: (witness: Witness) => Outcome<null>
}): Archive {
  const { store, openBuilds, now, keepHead } = services
  /** One at a time: each may be as large as memory has room for once. */
  let importing = false
  return {
    'builds.export': ({ build }) => {
      const opened = openBuild(store, build)
      if (!opened.ok) return opened
      const { row, readOnly } = opened.value
      if (readOnly !== null && !mayLeave(readOnly)) return { ok: false, problem: readOnly }
      const entries = store.entries(build)
      const specTexts = specsNamed(entries).map((sha256) => store.specText(sha256))
      if (!specTexts.every((each) => each !== null)) return refused('build-spec-lost', {}, 'build')
      const text = writeExport(build, specTexts, entries, store.photos.bytes)
      const { seq, sha256 } = entries.at(-1)!
      const kept = keepHead({ kind: 'export', build, entries: seq, head: sha256, at: now().toISOString() })
      if (!kept.ok) return kept
      return done({ fileName: fileNameOf(row, 'bedplate'), text })
    },

    'builds.import': async ({ text }) => {
      if (importing) return refused('import-busy', {})
      importing = true
      try {
        const read = await readExport(text)
        return read.ok ? takeIn(store, openBuilds, read.value) : read
      } finally {
        importing = false
      }
    },

    'builds.csv': ({ build, table }) => {
      const opened = openBuild(store, build)
      if (!opened.ok) return opened
      const { row, spec, earlier, events, readOnly } = opened.value
      if (readOnly !== null && !mayLeave(readOnly)) return { ok: false, problem: readOnly }
      return done({
        fileName: fileNameOf(row, `${table}.csv`),
        text: tableOf(buildSheet(spec, events, earlier), table),
      })
    },
  }
}

/** `2026-014 ferry-port-engine 61-9f3c0a1b2c3d4e5f.bedplate`: number, name, entries and head code. */
function fileNameOf(row: BuildRow, ending: string): string {
  const { number, name, entries } = lineOf(row)
  const plain = [...typedWords(name).join('-')].slice(0, 40).join('') // by whole characters
  return `${[number, plain, `${entries}-${headCode(row.head_sha256)}`].filter(Boolean).join(' ')}.${ending}`
}

/** Adds to the record what it does not have yet. A build that was continued differently here and there stays as it is here. */
function takeIn(store: Store, openBuilds: OpenBuildCache, exported: ExportFile): Outcome<ImportResult> {
  const { build, entries, events, specs } = exported
  const here = store.build(build) === null ? null : openBuild(store, build)
  if (here !== null && !here.ok) return here
  const readOnly = here?.value.readOnly
  if (readOnly !== undefined && !mayLeave(readOnly)) return { ok: false, problem: readOnly! }

  const ours = store.entries(build)
  const fork = ours.findIndex(({ sha256 }, at) => entries[at] !== undefined && entries[at].sha256 !== sha256)
  const [mine, theirs] = [ours[fork], entries[fork]]
  const [mineRead, theirsRead] = [mine && readEntry(mine), theirs && readEntry(theirs)]
  if (here !== null && mine !== undefined && mineRead && theirsRead)
    return done({
      kind: 'fork',
      line: lineOf(here.value.row),
      at: mine.seq,
      here: mineRead,
      there: theirsRead,
      specText: heldAt(specs, mine.seq).text,
    })

  const kept = keepPhotos(store, exported)
  if (!kept.ok) return kept
  const photosLost = kept.value === 0 ? {} : { photosLost: kept.value }
  const news = { entries: entries.slice(ours.length), events: events.slice(ours.length) }
  if (news.entries.length > 0) {
    // Noted before the entries are there: a power cut in between leaves a note about nothing, and never a build that passes.
    if (exported.allowedOnce !== null && exported.allowedOnce > ours.length) {
      const noted = keepUnderEarlierRules(store, build, exported.allowedOnce)
      if (!noted.ok) return noted
    }
    const keptSpecs = specs.map(({ text, spec }) => ({
      ...{ text, engine: spec.name, demo: spec.source.kind === 'demo' },
    }))
    const mentions = news.events.flatMap((entry) => {
      const { spec, namesOf } = heldAt(specs, entry.seq)
      return mentionsIn(spec, namesOf, [entry])
    })
    const imported = store.importEntries(build, { ...news, mentions }, keptSpecs)
    if (!imported.ok) return imported
    openBuilds.drop(build)
  }
  const row = store.build(build)
  if (row === null) return { ok: false, problem: problem('build-unknown', {}) }
  const line = lineOf(row)
  if (here === null) return done({ kind: 'added', line, ...photosLost })
  if (news.entries.length > 0)
    return done({ kind: 'continued', line, added: news.entries.length, ...photosLost })
  const behind = ours.length - entries.length
  return done(behind === 0 ? { kind: 'known', line, ...photosLost } : { kind: 'older', line, behind })
}

/**
 * Keeps what the file has of photos, before the entries that name them: what was damaged or missing here is so no more. How
 * many neither has as they were recorded.
 */
function keepPhotos(store: Store, { photos }: ExportFile): Outcome<number> {
  if (photos.sound.length > 0) {
    const kept = store.keepPhotos(photos.sound)
    if (!kept.ok) return kept
  }
  return done(photos.lost.filter((sha256) => store.photos.stateOf(sha256) !== 'good').length)
}
