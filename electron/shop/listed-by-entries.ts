import { replay, revisionSpans, whereItStands, type Mention } from '../../core/builds/index.ts'
import { namesInAllLanguages, readSpec } from '../../core/engine/index.ts'
import { eventsIn, listingAfter, mentionsIn, writeStanding } from '../store/index.ts'
import type { ListedBuild, ShopEntry } from './archive.ts'
import { foundBy } from './found-by.ts'

/** What the list says of a build and the words it is found by, as they follow from its entries. */
export interface ListedByEntries {
  /** The number of a build is the bench's that began it, and stands in no entry. */
  readonly listed: Omit<ListedBuild, 'ordinal'>
  readonly words: (ordinal: number) => ReturnType<typeof foundBy>
}

/** The specs that a build went by, by the hashes of their texts. */
export function specsOf(entries: readonly ShopEntry[]): readonly string[] {
  const events = eventsIn(entries)
  return events.length === 0 ? [] : revisionSpans(events).map(({ specSha256 }) => specSha256)
}

/**
 * Reads all entries of a build, in order, as the bench does that sends them. Null where they do not begin one, or a spec that they name is not
 * to be had or cannot be read: then nothing is known better than what is listed.
 */
export function listedByEntries(
  build: string,
  entries: readonly ShopEntry[],
  specText: (sha256: string) => string | null,
): ListedByEntries | null {
  const events = eventsIn(entries)
  const listing = events.reduce<ReturnType<typeof listingAfter>>(listingAfter, null)
  const [first] = entries
  const last = events.at(-1)
  if (listing === null || first === undefined || last === undefined) return null
  const specs = revisionSpans(events).map(({ specSha256, until }) => {
    const text = specText(specSha256)
    const read = text === null ? null : readSpec(text)
    return text === null || !read?.ok ? null : { until, spec: read.spec, namesOf: namesInAllLanguages(text) }
  })
  const mentions: Mention[] = []
  let from = 0
  for (const held of specs) {
    if (held === null) return null
    mentions.push(
      ...mentionsIn(
        held.spec,
        held.namesOf,
        events.filter(({ seq }) => seq > from && seq <= held.until),
      ),
    )
    from = held.until
  }
  const now = specs.at(-1)
  if (now === null || now === undefined) return null
  const state = replay(events)
  const head = entries.at(-1)?.sha256 ?? ''
  const standing =
    state.finished || state.voided
      ? null
      : writeStanding({ build, head, standing: whereItStands(now.spec, state) })
  const listed = {
    year: listing.year,
    name: listing.name,
    serial: listing.serial,
    specSha256: listing.spec_sha256,
    startedAtUtc: listing.started_at_utc,
    lastAtUtc: last.at,
    finished: listing.finished === 1,
    voided: listing.voided === 1,
    flagged: listing.flagged === 1,
    holder: state.bench?.id ?? first.bench,
    standing,
  }
  const words = (ordinal: number) => foundBy({ entries, listed: { ...listed, ordinal }, mentions })
  return { listed, words }
}
