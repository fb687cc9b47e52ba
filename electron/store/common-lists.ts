import { done, type Outcome } from '../../core/problem/index.ts'
import type { Database, Write } from './file/sqlite.ts'
import type { People, PersonRow } from './people.ts'
import type { Practice } from './practice.ts'
import type { Preferences } from './preferences.ts'

/** Lists that all benches of a shop may have in common. */
export const listNames = ['people', 'wrenches'] as const
export type ListName = (typeof listNames)[number]

/** What was said last of one item of a list. */
export interface ListItem {
  readonly id: string
  /** As it is kept, JSON; null: it was removed. */
  readonly json: string | null
  /** UTC, ISO 8601: when, by the clock of the bench that said so, and later than whatever it knew of the item. */
  readonly atUtc: string
  /** 12 hexadecimal digits. */
  readonly bench: string
}

export interface KeptItem extends ListItem {
  /** Whether the archive has it. */
  readonly sent: boolean
}

/** Whether one was said after the other; of two at the same time, the one of the bench with the larger id counts as the later. */
export function isLater(one: ListItem, other: ListItem): boolean {
  return one.atUtc === other.atUtc ? one.bench > other.bench : one.atUtc > other.atUtc
}

/** What becomes of the list of this bench. */
export type ListChange =
  | {
      readonly keep: readonly PersonRow[]
      readonly remove: readonly string[]
      /** Whose practice goes to whom. */
      readonly practised: readonly (readonly [from: string, to: string])[]
    }
  | { readonly wrenches: readonly unknown[] }

interface Row {
  readonly id: string
  readonly json: string | null
  readonly at_utc: string
  readonly bench: string
  readonly sent: 0 | 1
}

export function commonListsOn(
  db: Database,
  write: Write,
  { people, practice, preferences }: { people: People; practice: Practice; preferences: Preferences },
) {
  const all = db.prepare<[string], Row>(
    'SELECT id, json, at_utc, bench, sent FROM list_item WHERE list = ? ORDER BY id',
  )
  const put = db.prepare(`
    INSERT INTO list_item (list, id, json, at_utc, bench, sent) VALUES (@list, @id, @json, @atUtc, @bench, @sent)
    ON CONFLICT DO UPDATE SET json = @json, at_utc = @atUtc, bench = @bench, sent = @sent`)
  const mark = db.prepare(
    'UPDATE list_item SET sent = 1 WHERE list = @list AND id = @id AND at_utc = @atUtc AND bench = @bench',
  )
  const forget = db.prepare('DELETE FROM list_item WHERE list = ?')

  const keep = db.transaction((list: ListName, items: readonly KeptItem[]) => {
    for (const { sent, ...item } of items) put.run({ ...item, list, sent: sent ? 1 : 0 })
  })
  const take = db.transaction((list: ListName, items: readonly KeptItem[], change: ListChange) => {
    keep(list, items)
    if ('wrenches' in change) return preferences.put({ wrenches: change.wrenches })
    for (const person of change.keep) people.put(person)
    for (const [from, to] of change.practised) practice.move(from, to)
    for (const id of change.remove) people.drop(id)
  })
  const sent = db.transaction((list: ListName, items: readonly ListItem[]) => {
    for (const { id, atUtc, bench } of items) mark.run({ list, id, atUtc, bench })
  })
  const writing = (change: () => unknown): Outcome<null> =>
    write(() => {
      change()
      return done(null)
    })

  return {
    items: (list: ListName): readonly KeptItem[] =>
      all.all(list).map(({ at_utc: atUtc, sent: isSent, ...row }) => ({ ...row, atUtc, sent: isSent === 1 })),
    /** Each in the place of what was said of the item before. */
    keep: (list: ListName, items: readonly KeptItem[]): Outcome<null> =>
      writing(() => keep.immediate(list, items)),
    /** The same, and what becomes of the list here: both, or nothing. */
    take: (list: ListName, items: readonly KeptItem[], change: ListChange): Outcome<null> =>
      writing(() => take.immediate(list, items, change)),
    /** The archive has these. What was said since stays to be sent. */
    markSent: (list: ListName, items: readonly ListItem[]): Outcome<null> =>
      writing(() => sent.immediate(list, items)),
    /** The list is this bench's own again, as it is. */
    forget: (list: ListName): Outcome<null> => writing(() => forget.run(list)),
  }
}

export type CommonLists = ReturnType<typeof commonListsOn>
