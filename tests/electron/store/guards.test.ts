import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { migrate } from '../../../electron/store/schema.ts'
import { connect } from '../../../electron/store/file/sqlite.ts'
import { folder } from '../bench.ts'

function connected() {
  const file = join(folder(), 'record.sqlite')
  const db = connect(file)
  migrate(db)
  return { db, file }
}

function pragma(db: Database.Database, name: string): unknown {
  return db.pragma(name, { simple: true })
}

describe('what the record needs of SQLite', () => {
  it('is there after the first read, and still after the first write', () => {
    const { db } = connected()
    for (const moment of ['read', 'written']) {
      expect(pragma(db, 'journal_mode'), moment).toBe('wal')
      expect(pragma(db, 'synchronous'), moment).toBe(2)
      expect(pragma(db, 'recursive_triggers'), moment).toBe(1)
      expect(pragma(db, 'trusted_schema'), moment).toBe(0)
      expect(pragma(db, 'foreign_keys'), moment).toBe(1)
      expect(pragma(db, 'locking_mode'), moment).toBe('exclusive')
      db.prepare("INSERT INTO preference VALUES ('theme', '1') ON CONFLICT DO NOTHING").run()
    }
    db.close()
  })

  it('is there on every opening, where better-sqlite3 alone would have NORMAL', () => {
    const { db, file } = connected()
    db.close()
    const bare = new Database(file)
    bare.prepare('SELECT * FROM preference').all()
    expect(pragma(bare, 'synchronous')).toBe(1)
    bare.close()
    const again = connect(file)
    again.prepare('SELECT * FROM preference').all()
    expect(pragma(again, 'synchronous')).toBe(2)
    again.close()
  })

  it('has every table strict', () => {
    const { db } = connected()
    const tables = db.pragma('table_list') as { name: string; schema: string; strict: number }[]
    const own = tables.filter(({ name, schema }) => schema === 'main' && !name.startsWith('sqlite_'))
    expect(own.map(({ name, strict }) => [name, strict]).sort()).toEqual([
      ['bench', 1],
      ['build', 1],
      ['draft', 1],
      ['draft_entry', 1],
      ['draft_picture', 1],
      ['event', 1],
      ['library_spec', 1],
      ['list_item', 1],
      ['mention', 1],
      ['person', 1],
      ['photo', 1],
      ['practice_minimum', 1],
      ['practice_round', 1],
      ['preference', 1],
      ['shop_build', 1],
      ['shop_line', 1],
      ['spec', 1],
      ['witness', 1],
    ])
    db.close()
  })
})

describe('an entry in the record', () => {
  const entry = "('b', 1, '{}', 'aa')"

  it.each([
    ['changed', "UPDATE event SET body = '[]'"],
    ['changed in number', 'UPDATE event SET seq = 2'],
    ['removed', 'DELETE FROM event'],
    ['replaced', "INSERT OR REPLACE INTO event VALUES ('b', 1, '[]', 'bb')"],
    ['replaced by REPLACE', "REPLACE INTO event VALUES ('b', 1, '[]', 'bb')"],
    [
      'overwritten on conflict',
      "INSERT INTO event VALUES ('b', 1, '[]', 'bb') ON CONFLICT DO UPDATE SET body = '[]'",
    ],
    ['numbered like another', "INSERT INTO event VALUES ('b', 1, '[]', 'bb')"],
    ['numbered 0', "INSERT INTO event VALUES ('b', 0, '[]', 'bb')"],
    ['given a number that is none', "INSERT INTO event VALUES ('b', 'two', '[]', 'bb')"],
  ])('cannot be %s', (_, sql) => {
    const { db } = connected()
    db.exec(`INSERT INTO event VALUES ${entry}`)
    expect(() => db.exec(sql)).toThrow()
    expect(db.prepare('SELECT * FROM event').raw().all()).toEqual([['b', 1, '{}', 'aa']])
    db.close()
  })

  it('can be added', () => {
    const { db } = connected()
    db.exec(`INSERT INTO event VALUES ${entry}, ('b', 2, '[]', 'bb')`)
    expect(db.prepare('SELECT count(*) FROM event').pluck().get()).toBe(2)
    db.close()
  })

  it('could be replaced without recursive triggers, which is why they are on', () => {
    const { db } = connected()
    db.exec(`INSERT INTO event VALUES ${entry}`)
    db.pragma('recursive_triggers = OFF')
    db.exec("REPLACE INTO event VALUES ('b', 1, '[]', 'bb')")
    expect(db.prepare('SELECT body FROM event').pluck().get()).toBe('[]')
    db.close()
  })
})

describe('a spec that a build rests on', () => {
  it.each([
    "UPDATE spec SET text = ''",
    'DELETE FROM spec',
    "REPLACE INTO spec VALUES ('a', 'other', 'E', 0)",
  ])('is not touched by %s', (sql) => {
    const { db } = connected()
    db.exec("INSERT INTO spec VALUES ('a', '{}', 'E', 0)")
    expect(() => db.exec(sql)).toThrow()
    db.close()
  })
})
