import { done } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import { written } from './sqlite.ts'
import type { Database } from './sqlite.ts'

/** What a bench keeps between starts, each by name as JSON. Not part of the record: it may be overwritten. */
export function preferencesOn(db: Database) {
  const read = db.prepare<[], { name: string; value_json: string }>('SELECT name, value_json FROM preference')
  const write = db.prepare(
    'INSERT INTO preference (name, value_json) VALUES (?, ?) ON CONFLICT DO UPDATE SET value_json = excluded.value_json',
  )
  const writeAll = db.transaction((change: Readonly<Record<string, unknown>>) => {
    for (const [name, value] of Object.entries(change)) write.run(name, JSON.stringify(value))
  })
  return {
    all: (): Readonly<Record<string, unknown>> =>
      Object.fromEntries(read.all().map(({ name, value_json }) => [name, JSON.parse(value_json) as unknown])),
    keep: (change: Readonly<Record<string, unknown>>): Outcome<null> =>
      written(() => {
        writeAll.immediate(change)
        return done(null)
      }),
  }
}
