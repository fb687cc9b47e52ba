import { openStore, type Store } from '../../electron/store/index.ts'
import { buildId, fitted, spec, started } from '../electron/sample.ts'

const at = '2026-03-02T07:30:00.000Z'

/** The record of a folder with one build of one entry; one that is there already is used. */
export async function startOn(folder: string): Promise<Store> {
  const opened = await openStore(folder, () => new Date(at))
  if (!opened.ok) throw new Error(opened.problem.code)
  const store = opened.value
  if (store.build(buildId) === null)
    store.start({ build: buildId, after: 0, events: [started], person: 'Ana Ruiz', at, mentions: [] }, spec)
  return store
}

/** Adds `count` entries in one go; whether they were confirmed. */
export function append(store: Store, after: number, count = 1): boolean {
  const events = Array.from({ length: count }, (_, more) => fitted(`part-${after + more}`))
  return store.append({ build: buildId, after, events, person: 'Ana Ruiz', at, mentions: [] }).ok
}
