import { onTestFinished } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import type { BuildCommand } from '../../../core/builds/index.ts'
import type { Answer, Input, Output, RequestName } from '../../../core/contract/index.ts'
import type { Engine, HostServices } from '../../../electron/requests/index.ts'
import type { Store } from '../../../electron/store/index.ts'
import { answersOn, countedIds, engines } from '../answers.ts'
import { clock } from '../bench.ts'

export { engines } from '../answers.ts'

/** Asks the handlers on a store, as a host does; `bugs` are what they threw. */
export function asking(
  store: Store,
  dependencies: {
    now?: () => Date
    nowMs?: () => number
    newId?: () => string
    engines?: readonly Engine[]
    shop?: HostServices['shop']
  } = {},
) {
  const bugs: string[] = []
  const { answer, stop } = answersOn(store, {
    now: clock(),
    newId: countedIds(),
    engines,
    report: (line) => bugs.push(line),
    ...dependencies,
  })
  onTestFinished(stop)
  const ask = async <Name extends RequestName>(name: Name, input: Input<Name>) =>
    (await answer(name, input)) as Answer<Name>
  /** Asks for what must succeed. */
  const get = async <Name extends RequestName>(name: Name, input: Input<Name>): Promise<Output<Name>> => {
    const reply = await ask(name, input)
    if (!reply.ok) throw new Error(`${name}: ${sentenceOf(reply.problem)}`)
    return reply.value
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
  return { answer, ask, get, begin, act, bugs, stop }
}
