import { z } from 'zod'
import { nameKey } from '../../../core/person/index.ts'
import type { ListChange, ListItem, ListName, PersonRow, Store } from '../../store/index.ts'
import { personRow } from '../tables/person-row.ts'

/** How the list of this bench and what is said of its items belong together. */
interface ListHere {
  /** Each item by its id, as it is said; null where the list cannot be read. */
  readonly read: (store: Store) => ReadonlyMap<string, string> | null
  /** Whether two say the same, as far as this program keeps it. */
  readonly isSame: (said: string, here: string) => boolean
  /** Whether an item that was said so is in the list here. */
  readonly knows: (said: string) => boolean
  /** What becomes of the list here after what other benches said. */
  readonly after: (store: Store, news: readonly ListItem[]) => ListChange
}

/**
 * People of one name are one person: the one with a PIN, else the one with the lower id, who was put in first. So says every bench by itself, whatever
 * came to it first. What the others practised goes to that one.
 */
const people: ListHere = {
  read: (store) => new Map(store.people().map((person) => [person.id, written(person)])),
  isSame: (said, here) => {
    const person = personIn(said)
    return person === null || written(person) === here
  },
  knows: (said) => personIn(said) !== null,
  after(store, news) {
    const before = store.people()
    const byId = new Map(before.map((person) => [person.id, person]))
    for (const { id, json } of news) {
      const person = json === null ? null : personIn(json)
      if (json === null) byId.delete(id)
      else if (person?.id === id) byId.set(id, person)
    }
    const keepers = new Map<string, PersonRow>()
    for (const person of byId.values()) {
      const key = nameKey(person.name)
      const other = keepers.get(key)
      if (other === undefined || isKept(person, other)) keepers.set(key, person)
    }
    const kept = new Set([...keepers.values()].map(({ id }) => id))
    const gone = before.filter(({ id }) => !kept.has(id))
    return {
      keep: [...keepers.values()],
      remove: gone.map(({ id }) => id),
      practised: gone.flatMap(({ id, name }) => {
        const same = keepers.get(nameKey(name))
        return same === undefined ? [] : [[id, same.id] as const]
      }),
    }
  },
}

function isKept(one: PersonRow, other: PersonRow): boolean {
  if ((one.pin === null) !== (other.pin === null)) return one.pin !== null
  return one.id < other.id
}

function written({ id, name, role, badge, pin }: PersonRow): string {
  return JSON.stringify({ id, name, role, badge, pin })
}

function personIn(json: string): PersonRow | null {
  const read = personRow.safeParse(parsed(json))
  return read.success ? read.data : null
}

const withId = z.looseObject({ id: z.string() })

/** A wrench that this program cannot read is kept as it came, as one in its own list is. */
const wrenches: ListHere = {
  read(store) {
    const all = wrenchesIn(store)
    if (all === null) return null
    return new Map(
      all.flatMap((each) => {
        const read = withId.safeParse(each)
        return read.success ? [[read.data.id, JSON.stringify(each)] as const] : []
      }),
    )
  },
  isSame: (said, here) => JSON.stringify(parsed(said)) === here,
  knows: (said) => withId.safeParse(parsed(said)).success,
  after(store, news) {
    const byId = new Map(news.map(({ id, json }) => [id, json === null ? null : parsed(json)]))
    const idOf = (each: unknown) => withId.safeParse(each).data?.id
    const before = wrenchesIn(store) ?? wrenchesAsSent(store)
    const there = new Set(before.map(idOf))
    const changed = before.map((each) => {
      const id = idOf(each)
      return id !== undefined && byId.has(id) ? byId.get(id) : each
    })
    const added = [...byId].filter(([id]) => !there.has(id)).map(([, each]) => each)
    return { wrenches: [...changed, ...added].filter((each) => each !== null) }
  },
}

/** Null where the list cannot be read, which is not that there is none. */
function wrenchesIn(store: Store): readonly unknown[] | null {
  const kept = store.preferences()
  if (!('wrenches' in kept)) return []
  return Array.isArray(kept['wrenches']) ? (kept['wrenches'] as unknown[]) : null
}

/** The list made again from what was said last. */
function wrenchesAsSent(store: Store): readonly unknown[] {
  return store.lists.items('wrenches').flatMap(({ json }) => (json === null ? [] : [parsed(json)]))
}

export const listHere: { readonly [List in ListName]: ListHere } = { people, wrenches }

function parsed(json: string): unknown {
  try {
    return JSON.parse(json) as unknown
  } catch {
    return null
  }
}
