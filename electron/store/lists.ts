import { mentionsOf, readEvent, type Mention, type RecordedEvent } from '../../core/builds/index.ts'
import { readSpec, type EngineSpec } from '../../core/engine/index.ts'
import { buildsOn } from './builds.ts'
import type { EntryBody } from './chain.ts'
import type { Database } from './sqlite.ts'

/** The words that entries add to their build; none from entries that this version cannot read. */
export function mentionsIn(
  spec: EngineSpec,
  entries: readonly Pick<RecordedEvent, 'person' | 'event'>[],
): readonly Mention[] {
  return entries.flatMap(({ person, event }) => {
    const read = readEvent(event)
    return read.kind === 'known' ? mentionsOf(spec, { person, event: read.event }) : []
  })
}

/** An entry's content; null where it is no longer readable, which is for verifying to tell. */
function entryIn(body: string): EntryBody | null {
  try {
    return JSON.parse(body) as EntryBody
  } catch {
    return null
  }
}

/** Marks of the builds and the words they are found by, computed from all entries: part of a change of the schema. */
export function rebuildLists(db: Database): void {
  const builds = buildsOn(db)
  const all = db.prepare<[], { id: string; text: string }>(
    'SELECT build.id, spec.text FROM build JOIN spec ON spec.sha256 = build.spec_sha256',
  )
  const bodies = db.prepare<[string], string>('SELECT body FROM event WHERE build = ? ORDER BY seq').pluck()
  for (const { id, text } of all.all()) {
    const read = readSpec(text)
    const entries = bodies.all(id).flatMap((body) => entryIn(body) ?? [])
    builds.note(id, entries, read.ok ? mentionsIn(read.spec, entries) : [])
  }
}
