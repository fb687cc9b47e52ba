import { z } from 'zod'
import { benchName, readPerson, type BenchName } from '../../../core/builds/index.ts'
import { done, refused, type Outcome } from '../../../core/problem/index.ts'
import type { Store } from '../../store/index.ts'

const kept = 'benchName'

/** The bench of this record, and what people call it: as the machine is called until somebody gives it a name. */
export class ThisBench {
  readonly #store: Pick<Store, 'bench' | 'keepPreferences'>
  #name: string

  constructor(store: Pick<Store, 'bench' | 'preferences' | 'keepPreferences'>, machine: string) {
    this.#store = store
    const read = z.string().safeParse(store.preferences()[kept])
    const name = benchName.shape.name.safeParse(read.success ? read.data : machine.slice(0, 80))
    this.#name = name.success ? name.data : store.bench
  }

  get name(): BenchName {
    return { id: this.#store.bench, name: this.#name }
  }

  call(typed: string): Outcome<null> {
    const name = readPerson(typed) // what a name may be is the same
    if (!name.ok)
      return name.problem.code === 'person-missing' ? refused('bench-name-missing', {}, 'name') : name
    const keptName = this.#store.keepPreferences({ [kept]: name.value })
    if (keptName.ok) this.#name = name.value
    return keptName.ok ? done(null) : keptName
  }
}
