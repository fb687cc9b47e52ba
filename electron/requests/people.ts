import { readPerson } from '../../core/builds/index.ts'
import { nameKey } from '../../core/person/index.ts'
import type { PersonLine } from '../../core/contract/index.ts'
import { done, refused } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import type { PersonRow, Store } from '../store/index.ts'
import type { HandlersOf } from './handlers.ts'
import { personRow } from './tables/person-row.ts'
import { isPin, PinTries, sealPin } from './pin.ts'

const fewestPinSigns = 4

/** Who may make entries under which name. Nobody is asked for anything unless the shop has given the name a PIN. */
export class People {
  readonly #store: Store
  readonly #nowMs: () => number
  readonly #newId: () => string
  /** The PIN, sealed, that each of those gave who did since the program was started: another one must be given again. */
  readonly #proven = new Map<string, string>()
  readonly #tries = new PinTries()

  constructor(services: {
    readonly store: Store
    /** A clock that nobody can set: it counts from the start of the program. */
    readonly nowMs: () => number
    readonly newId: () => string
  }) {
    this.#store = services.store
    this.#nowMs = services.nowMs
    this.#newId = services.newId
  }

  /**
   * The person of this name, or of one that looks like it, where the bench keeps one. Refuses
   * `person-not-proven` where the PIN was not given.
   */
  present(name: string): Outcome<PersonRow | null> {
    const person = this.#named(name)
    if (person === undefined) return done(null)
    return this.#isPresent(person)
      ? done(person)
      : refused('person-not-proven', { name: person.name }, 'person')
  }

  /**
   * The person of this name, who leads the shop: a mechanic of the list who is present, and has a PIN where any mechanic has one.
   * Refuses `person-not-proven`, `practice-led-by-mechanic`.
   */
  leading(name: string): Outcome<PersonRow> {
    const found = this.present(name)
    if (!found.ok) return found
    const person = found.value
    if (person?.role !== 'mechanic' || (person.pin === null && this.#guards().length > 0))
      return refused('practice-led-by-mechanic', {}, 'person')
    return done(person)
  }

  all(): readonly Pick<PersonRow, 'id' | 'name'>[] {
    return this.#people()
  }

  /** Of the person of this name, present or not; null where the bench keeps none. */
  idOf(name: string): string | null {
    return this.#named(name)?.id ?? null
  }

  /**
   * Whether `typed` may look at a step that is the work of `hands`: somebody else, kept by the bench as a mechanic, who is
   * present.
   */
  second(typed: string, hands: readonly string[]): Outcome<null> {
    const name = typed.trim()
    const found = this.present(name)
    if (!found.ok) return found
    const key = nameKey(name)
    if (hands.some((hand) => nameKey(hand) === key))
      return refused('second-is-first', { name }, 'command.second')
    if (found.value?.role !== 'mechanic')
      return refused('second-not-known', { name: name.slice(0, 80) }, 'command.second')
    return done(null)
  }

  readonly handlers: HandlersOf<'people'> = {
    'people.list': () => done(this.#lines()),
    'people.keep': async ({ id, name: typed, role, badge, pin, by }) => {
      const allowed = await this.#mayChange(by)
      if (!allowed.ok) return allowed
      const name = readPerson(typed)
      if (!name.ok) return { ok: false, problem: { ...name.problem, path: 'name' } }
      if (typeof pin === 'string' && pin.length < fewestPinSigns)
        return refused('pin-too-short', { fewest: fewestPinSigns }, 'pin')
      // A PIN takes its time to seal; what is looked at after it is still so when the row is written.
      const sealed = typeof pin === 'string' ? await sealPin(pin) : null
      const others = this.#people().filter((each) => each.id !== id)
      const before = this.#people().find((each) => each.id === id)
      if (id !== null && before === undefined) return refused('person-unknown', {}, 'id')
      const key = nameKey(name.value)
      if (others.some((each) => nameKey(each.name) === key))
        return refused('person-twice', { name: name.value }, 'name')
      const badgeNow = badge === undefined ? (before?.badge ?? null) : badge?.trim() || null
      const twin = others.find((each) => badgeNow !== null && each.badge === badgeNow)
      if (twin !== undefined) return refused('badge-twice', { name: twin.name }, 'badge')
      const pinNow = pin === undefined ? (before?.pin ?? null) : sealed
      const row = { id: id ?? this.#newId(), name: name.value, role, badge: badgeNow, pin: pinNow }
      const kept = this.#store.keepPerson(row)
      if (pin !== undefined) this.#proven.delete(row.id)
      return kept.ok ? done(this.#lines()) : kept
    },
    'people.remove': async ({ person, by }) => {
      const allowed = await this.#mayChange(by)
      if (!allowed.ok) return allowed
      const removed = this.#store.removePerson(person)
      return removed.ok ? done(this.#lines()) : removed
    },
    'people.enter': async ({ who, pin }) => {
      const person = this.#people().find((each) =>
        'person' in who ? each.id === who.person : each.badge === who.badge.trim(),
      )
      if (person === undefined) return refused('badge' in who ? 'badge-unknown' : 'person-unknown', {}, 'who')
      if (!this.#isPresent(person)) {
        if (pin === null) return refused('pin-wanted', { name: person.name }, 'pin')
        const proof = await this.#prove(person, pin)
        if (!proof.ok) return proof
        if (person.pin !== null) this.#proven.set(person.id, person.pin)
      }
      return done(this.#line(person))
    },
    'people.leave': ({ person }) => {
      this.#proven.delete(person)
      return done(this.#lines())
    },
  }

  #named(name: string): PersonRow | undefined {
    const key = nameKey(name)
    // Asked at each confirmation: of a long list, no row is looked at closely but the one.
    const rows = this.#store.people()
    const found = (is: (row: PersonRow) => boolean) => rows.find((row) => is(row) && isPerson(row))
    return found((row) => row.name === name) ?? found((row) => nameKey(row.name) === key)
  }

  /** Rows that are none are passed over: a name or an id that no list can show lets nobody in. */
  #people(): readonly PersonRow[] {
    return this.#store.people().filter(isPerson)
  }

  #lines(): PersonLine[] {
    return this.#people().map((person) => this.#line(person))
  }

  #line(person: PersonRow): PersonLine {
    const { id, name, role, badge, pin } = person
    return {
      id,
      name,
      role,
      hasBadge: badge !== null,
      hasPin: pin !== null,
      present: this.#isPresent(person),
    }
  }

  #isPresent({ id, pin }: PersonRow): boolean {
    return pin === null || this.#proven.get(id) === pin
  }

  #guards(): readonly PersonRow[] {
    return this.#people().filter(({ role, pin }) => role === 'mechanic' && pin !== null)
  }

  async #mayChange(by: { person: string; pin: string } | null): Promise<Outcome<null>> {
    const guards = this.#guards()
    if (guards.length === 0) return done(null)
    const guard = guards.find(({ id }) => id === by?.person)
    return guard === undefined || by === null
      ? refused('people-guarded', {}, 'by')
      : this.#prove(guard, by.pin)
  }

  /** Refuses `pin-wrong`, and `pin-wait` after some wrong ones. */
  async #prove(person: PersonRow, pin: string): Promise<Outcome<null>> {
    const waitMs = this.#tries.begin(person.id, this.#nowMs())
    if (waitMs > 0) return refused('pin-wait', { seconds: Math.ceil(waitMs / 1000) }, 'pin')
    if (person.pin !== null && !(await isPin(pin, person.pin)))
      return refused('pin-wrong', { name: person.name }, 'pin')
    this.#tries.succeeded(person.id)
    return done(null)
  }
}

function isPerson(row: PersonRow): boolean {
  return personRow.safeParse(row).success
}
