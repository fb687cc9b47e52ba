import type { Store } from '../../store/index.ts'

/** The same store; `added` hears of each build to which something was added, once it is on disk. */
export function noted(store: Store, added: (build: string) => void): Store {
  const tell = <Answer extends { readonly ok: boolean }>(build: string, answer: Answer): Answer => {
    if (answer.ok) added(build)
    return answer
  }
  return {
    ...store,
    start: (addition, spec) => tell(addition.build, store.start(addition, spec)),
    append: (addition) => tell(addition.build, store.append(addition)),
    importEntries: (build, imported, spec) => tell(build, store.importEntries(build, imported, spec)),
  }
}
