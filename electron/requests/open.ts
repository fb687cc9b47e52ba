import { v7 } from 'uuid'
import { done } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import { openStore } from '../store/index.ts'
import type { Store } from '../store/index.ts'
import { answering } from './answer.ts'
import type { Answering } from './answer.ts'
import { buildRequests } from './builds.ts'
import { engineRequests } from './engines.ts'
import { preferenceRequests } from './preferences.ts'
import { readEngines } from './specs.ts'
import type { Engine } from './specs.ts'

/** What a host says of itself. */
export interface HostFacts {
  readonly host: 'desktop' | 'local'
  readonly version: string
  readonly dataFolder: string
}

/** Everything that the requests rest on, handed in: nothing below reads a clock or draws an id of its own. */
export interface Given {
  readonly facts: HostFacts
  readonly store: Store
  readonly engines: readonly Engine[]
  readonly now: () => Date
  readonly newId: () => string
  readonly report: (line: string) => void
}

/** All requests of the contract, answered from the given store and engines. */
export function createRequests(given: Given): Answering {
  const { facts, store, engines, report } = given
  return answering(
    {
      'host.read': () => done(facts),
      ...preferenceRequests(store),
      ...engineRequests(engines),
      ...buildRequests(given),
    },
    (name, error) => report(`${name}: ${traceOf(error)}`),
  )
}

/** Opens the record of a data folder and answers from it: the wiring that both hosts share. */
export async function openRequests(
  facts: HostFacts,
  specsFolder: string,
  report: (line: string) => void,
): Promise<Outcome<{ answer: Answering; close: () => void }>> {
  const now = () => new Date()
  const opened = await openStore(facts.dataFolder, now)
  if (!opened.ok) return opened
  const store = opened.value
  const answer = createRequests({ facts, store, engines: readEngines(specsFolder), now, newId: v7, report })
  return done({ answer, close: () => store.close() })
}

/** Where a mistake happened, without its message: a message may hold what a person typed. */
function traceOf(error: unknown): string {
  if (!(error instanceof Error)) return 'something that is no error was thrown'
  const places = (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line))
  return [error.name, ...places.slice(0, 8)].join('\n')
}
