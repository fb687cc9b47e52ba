import { join } from 'node:path'
import type { BuildCommand } from '../../../core/build/index.ts'
import type { Answer, Input, Output, RequestName } from '../../../core/contract.ts'
import { createRequests, readEngines } from '../../../electron/requests/index.ts'
import type { Engine } from '../../../electron/requests/index.ts'
import type { Store } from '../../../electron/store/index.ts'
import { clock } from '../bench.ts'

export const engines = readEngines(join(import.meta.dirname, '../../../specs'))

/** Ids as the program draws them, but the same ones in every run. */
function ids(): () => string {
  let drawn = 0
  return () => `01956f6c-8a00-7000-8000-${String((drawn += 1)).padStart(12, '0')}`
}

/** Asks the handlers on a store, as a host does; `bugs` are what they threw. */
export function asking(store: Store, given: { now?: () => Date; engines?: readonly Engine[] } = {}) {
  const bugs: string[] = []
  const answer = createRequests({
    facts: { host: 'local', version: '0.1.0', dataFolder: '/bench' },
    store,
    engines: given.engines ?? engines,
    now: given.now ?? clock(),
    newId: ids(),
    report: (line) => bugs.push(line),
  })
  const ask = async <Name extends RequestName>(name: Name, input: Input<Name>) =>
    (await answer(name, input)) as Answer<Name>
  /** Asks for what must succeed. */
  const get = async <Name extends RequestName>(name: Name, input: Input<Name>): Promise<Output<Name>> => {
    const given = await ask(name, input)
    if (!given.ok) throw new Error(`${name}: ${given.problem.sentence}`)
    return given.value
  }
  const begin = () =>
    get('builds.start', {
      engine: 'skerry-3',
      name: 'Ferry, port engine',
      serial: 'F-201',
      person: 'Ana Ruiz',
    })
  const act = (build: string, after: number, command: BuildCommand) =>
    ask('builds.act', { build, after, person: 'Ana Ruiz', command })
  return { answer, ask, get, begin, act, bugs }
}
