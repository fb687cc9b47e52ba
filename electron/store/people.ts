import { done } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import type { Database, Write } from './file/sqlite.ts'

/** Somebody who works at this bench. Not part of the record: entries carry the name as it was. */
export interface PersonRow {
  readonly id: string
  readonly name: string
  readonly role: 'mechanic' | 'apprentice'
  readonly badge: string | null
  /** Salt and scrypt of the PIN, in hexadecimal, with a colon between. */
  readonly pin: string | null
}

export function peopleOn(db: Database, write: Write) {
  const all = db.prepare<[], PersonRow>('SELECT * FROM person ORDER BY name')
  const keep = db.prepare(`
    INSERT INTO person VALUES (@id, @name, @role, @badge, @pin)
    ON CONFLICT (id) DO UPDATE SET name = @name, role = @role, badge = @badge, pin = @pin`)
  const remove = db.prepare('DELETE FROM person WHERE id = ?')
  return {
    /** In the transaction of the caller. */
    put: (person: PersonRow): void => void keep.run(person),
    drop: (id: string): void => void remove.run(id),
    all: (): readonly PersonRow[] => all.all(),
    keep: (person: PersonRow): Outcome<null> =>
      write(() => {
        keep.run(person)
        return done(null)
      }),
    remove: (id: string): Outcome<null> =>
      write(() => {
        remove.run(id)
        return done(null)
      }),
  }
}

export type People = ReturnType<typeof peopleOn>
