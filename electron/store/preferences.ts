import { done } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import type { Database, Write } from './file/sqlite.ts'

/** What a bench keeps between starts, each by name as JSON. Not part of the record: it may be overwritten. */
export function preferencesOn(db: Database, write: Write) {
  const read = db.prepare<[], { name: string; value_json: string }>('SELECT name, value_json FROM preference')
  const keep = db.prepare(
    'INSERT INTO preference (name, value_json) VALUES (?, ?) ON CONFLICT DO UPDATE SET value_json = excluded.value_json',
  )
  const writeAll = db.transaction((change: Readonly<Record<string, unknown>>) => {
    for (const [name, value] of Object.entries(change)) keep.run(name, JSON.stringify(value))
  })
  return {
    /** In the transaction of the caller. */
    put: (change: Readonly<Record<string, unknown>>): void => writeAll(change),
    all: (): Readonly<Record<string, unknown>> =>
      Object.fromEntries(read.all().map(({ name, value_json }) => [name, valueIn(value_json)])),
    keep: (change: Readonly<Record<string, unknown>>): Outcome<null> =>
      write(() => {
        writeAll.immediate(change)
        return done(null)
      }),
  }
}

export type Preferences = ReturnType<typeof preferencesOn>

/** Undefined for a text that is no JSON: one bad row does not take the others with it. */
function valueIn(json: string): unknown {
  try {
    return JSON.parse(json) as unknown
  } catch {
    return undefined
  }
}
