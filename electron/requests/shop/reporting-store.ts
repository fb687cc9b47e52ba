import type { Outcome } from '../../../core/problem/index.ts'
import type { ListName, Store } from '../../store/index.ts'

/** Hears of what is changed in a record, once it is on disk. */
interface ChangeListener {
  /** Something was added to a build. */
  readonly added: (build: string) => void
  readonly listChanged: (list: ListName) => void
}

/** The same store, with somebody who hears of what is done to it. */
export function reportingStore(store: Store, { added, listChanged }: ChangeListener): Store {
  const reportList = (list: ListName, answer: Outcome<null>): Outcome<null> => {
    if (answer.ok) listChanged(list)
    return answer
  }
  const reportBuild = <Answer extends { readonly ok: boolean }>(build: string, answer: Answer): Answer => {
    if (answer.ok) added(build)
    return answer
  }
  return {
    ...store,
    start: (addition, spec) => reportBuild(addition.build, store.start(addition, spec)),
    append: (addition) => reportBuild(addition.build, store.append(addition)),
    keepPerson: (person) => reportList('people', store.keepPerson(person)),
    removePerson: (id) => reportList('people', store.removePerson(id)),
    keepPreferences: (change) =>
      'wrenches' in change
        ? reportList('wrenches', store.keepPreferences(change))
        : store.keepPreferences(change),
    importEntries: (build, imported, spec) => reportBuild(build, store.importEntries(build, imported, spec)),
  }
}
