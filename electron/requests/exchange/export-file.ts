import { setImmediate } from 'node:timers/promises'
import canonicalize from 'canonicalize'
import { z } from 'zod'
import {
  buildSheet,
  checkRules,
  readEvent,
  recordedEvent,
  revisionSpans,
  type RecordedEvent,
  type SpecRevision,
  type SpecUntil,
  wasAllowedOnce,
} from '../../../core/builds/index.ts'
import { mostExportCharacters } from '../../../core/contract/index.ts'
import { documentIn } from '../../../core/drafts/index.ts'
import { done, type Outcome, type Problem, refused } from '../../../core/problem/index.ts'
import { namesInAllLanguages, readSpec, type EngineSpec, type NamesOf } from '../../../core/engine/index.ts'
import { audit } from '../../../core/audit/index.ts'
import { specsNamed } from './export-specs.ts'
import { photoLines, photosNamed, readPhotos, type ExportedPhotos } from './export-photos.ts'
import { follows, sha256, type StoredEntry } from '../../store/index.ts'

const hash = z.string().regex(/^[0-9a-f]{64}$/)

/** The first line of an exported build. Every part of it follows from the lines below, so that a change in it shows. */
const plainHead = z.strictObject({
  bedplateBuild: z.literal(1),
  build: z.uuid(),
  entries: z.int().min(1),
  head: hash,
  specSha256: hash,
})
/** That of a build with photos: so many lines more follow its entries. */
const headWithPhotos = plainHead.extend({ bedplateBuild: z.literal(2), photos: z.int().min(1).max(10_000) })
/** That of a build that went on by a newer revision of its spec: so many specs stand before its entries. */
const headWithSpecs = plainHead.extend({
  bedplateBuild: z.literal(3),
  photos: z.int().min(0).max(10_000),
  specs: z.int().min(2).max(1000),
})
const head = z.discriminatedUnion('bedplateBuild', [plainHead, headWithPhotos, headWithSpecs])

const specLine = z.strictObject({ spec: z.string() })

interface ExportedSpec extends SpecRevision, SpecUntil {
  readonly text: string
  /** In each language of it. */
  readonly namesOf: NamesOf
}

/** A build as it was read from an export, all of it checked. */
export interface ExportFile {
  readonly build: string
  /** Those by which it went, in order. */
  readonly specs: readonly ExportedSpec[]
  readonly entries: readonly StoredEntry[]
  /** Up to the first entry that only a newer program knows. */
  readonly events: readonly RecordedEvent[]
  /** The first entry that an earlier version of the program allowed and this one would not; null for none. */
  readonly allowedOnce: number | null
  readonly photos: ExportedPhotos
}

/**
 * A build as one text, in lines: a head; the spec; then each entry exactly as it lies in the record, so that the SHA-256 of
 * a line is what the next one names as `previous`; then the photos that the entries name. Head, spec and photos are canonical
 * JSON (RFC 8785) too: the same build gives the same bytes. One without photos, or that kept its spec, is of the form that had none,
 * or no others.
 */
export function writeExport(
  build: string,
  specTexts: readonly string[],
  entries: readonly StoredEntry[],
  photoOf: (sha256: string) => Buffer | null,
): string {
  const photos = photosNamed(entries)
  const lines = [
    canonicalize({
      ...(specTexts.length > 1
        ? { bedplateBuild: 3, photos: photos.length, specs: specTexts.length }
        : photos.length === 0
          ? { bedplateBuild: 1 }
          : { bedplateBuild: 2, photos: photos.length }),
      build,
      entries: entries.length,
      head: entries.at(-1)?.sha256,
      specSha256: sha256(specTexts[0] ?? ''),
    }),
    ...specTexts.map((spec) => canonicalize({ spec })),
    ...entries.map(({ body }) => body),
    ...photoLines(photos, photoOf),
  ]
  return lines.map((line) => `${line}\n`).join('')
}

/** Longer than any first line, any spec and any entry that the program writes. */
const mostCharacters = { head: 400, spec: 4_000_000, entry: 200_000 } as const

/** Entries that are looked at between two answers to others. */
const entriesAtOnce = 100

/**
 * Reads an export and checks every byte of it, in slices, so that others are answered meanwhile. What the first line and
 * the sizes of the others say is looked at before anything is parsed. A photo that
 * is not as its entry names it is reported and costs nothing else. Refuses `import-too-large`, `import-not-ours`,
 * `import-newer`, `import-altered` with the line, `import-spec-faulty`, and `import-senseless` or `import-against-rules`
 * where nobody could have confirmed the entries in a build of the spec. An entry of a newer program is kept as it is.
 */
export async function readExport(text: string): Promise<Outcome<ExportFile>> {
  if (text.length > mostExportCharacters)
    return refused('import-too-large', { most: mostExportCharacters / 1024 / 1024 })
  const first = text.slice(0, mostCharacters.head).split('\n', 1)[0] ?? ''
  if (first.length === mostCharacters.head) return refused('import-not-ours', {})
  const start = parsedJson(first)
  if (typeof start !== 'object' || start === null || !('bedplateBuild' in start))
    return refused('import-not-ours', {})
  if (typeof start.bedplateBuild === 'number' && start.bedplateBuild > 3) return refused('import-newer', {})
  const top = head.safeParse(start)
  if (!top.success || canonicalize(top.data) !== first) return alteredLine(1)

  const { entries: count, specs: specCount = 1, photos = 0 } = { specs: 1, photos: 0, ...top.data }
  const [, ...lines] = text.split('\n')
  const ofSpecs = lines.slice(0, specCount)
  const rest = lines.slice(specCount)
  const ofEntries = rest.slice(0, count)
  const ofPhotos = rest.slice(count)
  const tooLong = [
    ...ofSpecs.map((line) => line.length > mostCharacters.spec),
    ...ofEntries.map((line) => line.length > mostCharacters.entry),
  ].indexOf(true)
  if (tooLong >= 0) return alteredLine(tooLong + 2)
  // Of each photo it is said whether it is missing or altered; that costs nothing else, and a line too many belongs to nothing.
  const isWhole = photos > 0 ? ofPhotos.length <= photos + 1 : rest.length === count + 1
  if (ofEntries.length < count || !isWhole)
    return alteredLine(Math.min(rest.length + specCount, count + photos + specCount + 2))
  const specTexts: string[] = []
  for (const [at, line] of ofSpecs.entries()) {
    const withSpec = specLine.safeParse(parsedJson(line))
    if (!withSpec.success || canonicalize(withSpec.data) !== line) return alteredLine(at + 2)
    specTexts.push(withSpec.data.spec)
  }
  if (sha256(specTexts[0] ?? '') !== top.data.specSha256) return alteredLine(2)

  if (photos === 0 && rest.at(-1) !== '') return alteredLine(rest.length + specCount + 1)
  const read = await readEntries(top.data.build, ofEntries, specCount + 2)
  if (!read.ok) return read
  const { entries, events } = read.value
  if (entries.length !== count || entries.at(-1)?.sha256 !== top.data.head)
    return alteredLine(ofEntries.length + specCount + 1)
  const named = specsNamed(entries)
  const stray = specTexts.findIndex((each, at) => at > 0 && sha256(each) !== named[at])
  if (stray > 0 || named.length > specTexts.length) return alteredLine(stray > 0 ? stray + 2 : specCount + 1)
  const spans = revisionSpans(events)
  const specs: ExportedSpec[] = []
  for (const [at, each] of specTexts.entries()) {
    const spec = soundSpec(each)
    if (!spec.ok) return spec
    const { until } = spans[at] ?? { until: Infinity }
    specs.push({
      ...{ text: each, spec: spec.value, namesOf: namesInAllLanguages(each) },
      ...{ document: documentIn(each), sha256: sha256(each), until },
    })
  }
  const allowedOnce = await heldAgainstRules(specs, events)
  if (!allowedOnce.ok) return allowedOnce
  return done({
    build: top.data.build,
    specs,
    entries,
    events,
    allowedOnce: allowedOnce.value,
    photos: await readPhotos(ofPhotos, events),
  })
}

function alteredLine(line: number): Outcome<never> {
  return refused('import-altered', { line })
}

function parsedJson(line: string): unknown {
  try {
    return JSON.parse(line) as unknown
  } catch {
    return null
  }
}

const entryBody = recordedEvent.omit({ hash: true }).extend({
  build: z.uuid(),
  previous: hash.nullable(),
  event: z.looseObject({ type: z.string(), version: z.int().min(1) }),
})

/** `first` is the line of the first entry. What is not of our shape is refused before it is written again to compare it. */
async function readEntries(
  build: string,
  lines: readonly string[],
  first: number,
): Promise<Outcome<{ entries: readonly StoredEntry[]; events: readonly RecordedEvent[] }>> {
  const entries: StoredEntry[] = []
  const events: RecordedEvent[] = []
  let previous: string | null = null
  let newer = false
  for (const [index, body] of lines.entries()) {
    const seq = index + 1
    if (seq % entriesAtOnce === 0) await setImmediate()
    const entry: StoredEntry = { seq, body, sha256: sha256(body) }
    const inside = entryBody.safeParse(parsedJson(body))
    if (!inside.success || !follows(build, seq, previous, entry)) return alteredLine(index + first)
    const { at, person } = inside.data
    const read = readEvent(inside.data.event)
    const event = read.kind === 'known' ? read.event : inside.data.event
    if (!isCanonical({ ...inside.data, event }, body)) return alteredLine(index + first)
    entries.push(entry)
    newer ||= read.kind === 'unknown'
    if (read.kind === 'known' && !newer)
      events.push({ seq, at, person, event: read.event, hash: entry.sha256 })
    previous = entry.sha256
  }
  return done({ entries, events })
}

/** Whether a body is the canonical text of what it says. Nested too deep to be written again, it is not. */
function isCanonical(inside: unknown, body: string): boolean {
  try {
    return canonicalize(inside) === body
  } catch {
    return false
  }
}

function soundSpec(text: string): Outcome<EngineSpec> {
  const read = readSpec(text)
  const faults: readonly (Problem | undefined)[] = read.ok
    ? audit(read.spec)
        .filter(({ weight }) => weight === 'fault')
        .map(({ problem }) => problem)
    : read.problems
  const [fault] = faults
  if (read.ok && fault === undefined) return done(read.spec)
  if (fault === undefined) throw new Error('a spec that cannot be read has no problem')
  return refused('import-spec-faulty', { fault })
}

/**
 * Refuses where nobody could have confirmed these entries in a build of the spec: a forger of a whole new chain can write any
 * entries, and what core would never have decided must not count, nor bring the window down. The number of the first entry
 * that only an earlier version of the program allowed; null where the rules of today allow all.
 */
async function heldAgainstRules(
  specs: readonly ExportedSpec[],
  events: readonly RecordedEvent[],
): Promise<Outcome<number | null>> {
  const [first, ...rest] = events
  const [begunBy] = specs
  const last = specs.findLast(({ sha256: hash }) => hash === revisionSpans(events).at(-1)?.specSha256)
  if (begunBy === undefined || last === undefined) return refused('import-senseless', {})
  const { spec, sha256: specSha256 } = begunBy
  const revisionOf = (hash: string) => specs.find((each) => each.sha256 === hash) ?? null
  if (first?.event.type !== 'build-started' || first.event.specSha256 !== specSha256)
    return refused('import-senseless', {})
  if (rest.some(({ event }) => event.type === 'build-started')) return refused('import-senseless', {})
  try {
    const checking = checkRules(spec, specSha256, events, revisionOf)
    for (let checked = 0; ; checked += 1) {
      const { done: isDone, value } = checking.next()
      if (isDone === true) {
        if (value !== null && !wasAllowedOnce(value))
          return refused('import-against-rules', { entry: value.entry, why: value.why })
        buildSheet(last.spec, events, specs.slice(0, specs.indexOf(last)))
        return done(value?.entry ?? null)
      }
      if (checked % entriesAtOnce === 0) await setImmediate()
    }
  } catch {
    return refused('import-senseless', {})
  }
}
