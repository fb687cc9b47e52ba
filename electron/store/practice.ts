import { done } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import type { Database, Write } from './file/sqlite.ts'

/** One round that somebody practised. Not part of the record: it goes with the person. */
export interface RoundRow {
  readonly engine: string
  readonly drill: string
  readonly at_utc: string
  readonly seconds: number
  readonly tally_json: string
}

export function practiceOn(db: Database, write: Write) {
  const of = db.prepare<[string], RoundRow>(
    'SELECT engine, drill, at_utc, seconds, tally_json FROM practice_round WHERE person = ? ORDER BY number',
  )
  const add = db.prepare(`
    INSERT INTO practice_round (person, number, engine, drill, at_utc, seconds, tally_json)
    VALUES (@person, (SELECT coalesce(max(number), 0) + 1 FROM practice_round WHERE person = @person),
      @engine, @drill, @at_utc, @seconds, @tally_json)`)
  const move = db.prepare(`
    UPDATE practice_round SET person = @to,
      number = number + (SELECT coalesce(max(number), 0) FROM practice_round WHERE person = @to)
    WHERE person = @from`)
  const minimums = db.prepare<[], { engine: string; least: number }>(
    'SELECT engine, least FROM practice_minimum',
  )
  const keepMinimum = db.prepare(
    'INSERT INTO practice_minimum VALUES (?, ?) ON CONFLICT DO UPDATE SET least = excluded.least',
  )
  const removeMinimum = db.prepare('DELETE FROM practice_minimum WHERE engine = ?')
  return {
    /** What one practised is the other's: they are the same. In the transaction of the caller. */
    move: (from: string, to: string): void => void move.run({ from, to }),
    of: (person: string): readonly RoundRow[] => of.all(person),
    keep: (person: string, round: RoundRow): Outcome<null> =>
      write(() => {
        add.run({ person, ...round })
        return done(null)
      }),
    minimums: (): Readonly<Record<string, number>> =>
      Object.fromEntries(minimums.all().map(({ engine, least }) => [engine, least])),
    keepMinimum: (engine: string, least: number): Outcome<null> =>
      write(() => {
        if (least === 0) removeMinimum.run(engine)
        else keepMinimum.run(engine, least)
        return done(null)
      }),
  }
}

export type Practice = ReturnType<typeof practiceOn>
