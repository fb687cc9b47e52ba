import { dirname } from 'node:path'
import { byBrowser, createRequests, readEngines } from '../../electron/requests/index.ts'
import type { Engine, HostServices, OpenedFiles, Requests } from '../../electron/requests/index.ts'
import type { Store } from '../../electron/store/index.ts'
import { engineFolder } from '../engine-files.ts'

/** The engines that come with the program, two of them with short plans. */
export const engines = readEngines(engineFolder())

/** Ids as the program draws them, but the same ones in every run. */
export function countedIds(): () => string {
  let drawn = 0
  return () => `01956f6c-8a00-7000-8000-${String((drawn += 1)).padStart(12, '0')}`
}

/** The requests answered from a store, as a host answers them. */
export function answersOn(
  store: Store,
  dependencies: {
    readonly now: () => Date
    readonly newId: () => string
    readonly nowMs?: () => number
    readonly engines?: readonly Engine[]
    readonly report?: (line: string) => void
    readonly openedFiles?: OpenedFiles
    readonly shop?: HostServices['shop']
  },
): Requests {
  return createRequests({
    facts: {
      host: 'local',
      why: { code: 'hostByItself', facts: {} },
      version: '0.1.0',
      dataFolder: dirname(store.file),
    },
    store,
    engines,
    savePdf: byBrowser,
    report: (line) => console.error(line),
    ...dependencies,
  })
}
