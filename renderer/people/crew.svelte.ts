import type { Answer, Client, Input, PersonLine } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'

export type EnteringPerson = Input<'people.enter'>['who']

/** The bench at which the crew works: whose name entries are taken under. */
export interface PresentPerson {
  readonly name: () => string
  readonly keep: (name: string) => Promise<unknown>
}

/** What lies open for choosing who is at the bench: the list, or the list with a PIN to be typed or a fault to be shown. */
export interface Choosing {
  readonly who: EnteringPerson | null
  readonly problem: Problem | null
}

/** The people of this bench as the host keeps them, and which of them is at it. */
export class Crew {
  readonly #client: Client
  readonly #bench: PresentPerson
  #list = $state.raw<readonly PersonLine[]>([])
  #choosing = $state.raw<Choosing | null>(null)
  /** Settles once the name that was given last is kept, or is not. */
  #naming: Promise<unknown> = Promise.resolve()
  /** Who asked for a badge; the last one gets it. */
  #listeners: readonly ((badge: string) => unknown)[] = []

  /** Mechanics with a PIN: where there are some, the list is changed only with one of theirs. */
  readonly guards = $derived.by(() => this.#list.filter(({ role, hasPin }) => role === 'mechanic' && hasPin))

  constructor(client: Client, bench: PresentPerson) {
    this.#client = client
    this.#bench = bench
  }

  get list() {
    return this.#list
  }
  /** The name that entries carry; it need not be in the list. */
  get name() {
    return this.#bench.name()
  }
  get choosing() {
    return this.#choosing
  }
  /** Whether a badge can mean anything here. */
  get knowsBadges() {
    return this.#listeners.length > 0 || this.#list.some(({ hasBadge }) => hasBadge)
  }
  /** Whether somebody has asked for a badge: then whatever is sent is one, a number too. */
  get asksForBadge() {
    return this.#listeners.length > 0
  }

  find(name: string): PersonLine | null {
    return this.#list.find((person) => person.name === name.trim()) ?? null
  }

  async load(): Promise<Problem | null> {
    return this.#took(await this.#client.request('people.list', {}))
  }
  async keep(written: Input<'people.keep'>): Promise<Problem | null> {
    const before = this.#list.find(({ id }) => id === written.id)
    const problem = this.#took(await this.#client.request('people.keep', written))
    if (!problem && before && before.name === this.name) await this.#bench.keep(written.name.trim())
    return problem
  }
  async remove(written: Input<'people.remove'>): Promise<Problem | null> {
    return this.#took(await this.#client.request('people.remove', written))
  }

  /** Asks the host whether this person is there; `pin-wanted` where the PIN must be typed first. */
  async enter(who: EnteringPerson, pin: string | null): Promise<Answer<'people.enter'>> {
    const answer = await this.#client.request('people.enter', { who, pin })
    if (answer.ok) this.#list = this.#list.map((each) => (each.id === answer.value.id ? answer.value : each))
    return answer
  }
  /** Entries under this name need the PIN again, unless the person is at the bench. */
  async leave({ id, name, hasPin }: PersonLine) {
    if (!hasPin || name === this.name) return
    this.#took(await this.#client.request('people.leave', { person: id }))
  }

  /** From now on entries carry this name; the person before has left the bench. */
  async takeBench(name: string) {
    const before = this.find(this.name)
    await this.#bench.keep(name.trim())
    this.#choosing = null
    if (before) await this.leave(before)
  }

  choose() {
    this.#choosing = { who: null, problem: null }
    void this.load() // another bench of the shop may have put somebody into the list
  }
  stopChoosing() {
    this.#choosing = null
  }

  /** Every badge goes to `hears` until what is returned is called. */
  listen(hears: (badge: string) => unknown): () => void {
    this.#listeners = [...this.#listeners, hears]
    return () => (this.#listeners = this.#listeners.filter((each) => each !== hears))
  }

  /**
   * A badge was presented. True where it was taken for one; a text that is nobody's badge, sent into a field, is that
   * field's (`ofAField`).
   */
  async presented(badge: string, ofAField: boolean): Promise<boolean> {
    const listener = this.#listeners.at(-1)
    if (listener) {
      listener(badge)
      return true
    }
    const answer = await this.enter({ badge }, null)
    if (!answer.ok && answer.problem.code === 'badge-unknown' && ofAField) return false
    await this.#came({ badge }, answer)
    return true
  }

  /** A name was typed: of the list, where it is in it, else just a name. */
  named(name: string): Promise<void> {
    const naming = this.#named(name)
    this.#naming = naming
    return naming
  }

  /** The name, once the one that was typed last is kept: what is begun in the same moment is begun under it. */
  async keptName(): Promise<string> {
    await this.#naming
    return this.name
  }

  async #named(name: string) {
    const known = this.find(name)
    if (known === null) return this.takeBench(name)
    const who = { person: known.id }
    return this.#came(who, await this.enter(who, null))
  }

  async #came(who: EnteringPerson, answer: Answer<'people.enter'>) {
    if (answer.ok) return this.takeBench(answer.value.name)
    const { problem } = answer
    this.#choosing = { who: problem.path === 'pin' ? who : null, problem }
  }

  #took(answer: Answer<'people.list'>): Problem | null {
    if (!answer.ok) return answer.problem
    this.#list = answer.value
    return null
  }
}
