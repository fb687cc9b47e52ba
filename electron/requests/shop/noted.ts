import type { Outcome } from '../../../core/problem/index.ts'
import type { ListName, Store } from '../../store/index.ts'

/** Hears of what is changed in a record, once it is on disk. */
interface Noting {
  /** Something was added to a build. */
  readonly added: (build: string) => void
  readonly listChanged: (list: ListName) => void
}

/** The same store, with somebody who hears of what is done to it. */
export function noted(store: Store, { added, listChanged }: Noting): Store {
  const tellList = (list: ListName, answer: Outcome<null>): Outcome<null> => {
    if (answer.ok) listChanged(list)
    return answer
  }
  const tell = <Answer extends { readonly ok: boolean }>(build: string, answer: Answer): Answer => {
    if (answer.ok) added(build)
    return answer
  }
  return {
    ...store,
    start: (addition, spec) => tell(addition.build, store.start(addition, spec)),
    append: (addition) => tell(addition.build, store.append(addition)),
    keepPerson: (person) => tellList('people', store.keepPerson(person)),
    removePerson: (id) => tellList('people', store.removePerson(id)),
    keepPreferences: (change) =>
      'wrenches' in change
        ? tellList('wrenches', store.keepPreferences(change))
        : store.keepPreferences(change),
    importEntries: (build, imported, spec) => tell(build, store.importEntries(build, imported, spec)),
  }
}
