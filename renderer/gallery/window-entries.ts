import BuildWindow from '../build-window/BuildWindow.svelte'
import { benchAt } from './at-bench.ts'
import { engines } from './engines.ts'
import { entriesOf, type Entry } from './entry.ts'
import { momentsOf } from './moments.ts'

/** The window at every moment of a build of every demo engine: what the contact sheet is made of. */
export const windowEntries: readonly Entry[] = engines.flatMap((engine) => {
  const ofEngine = entriesOf(engine.spec.name, 'screen')
  return momentsOf(engine).map(({ step, name, build }) =>
    ofEngine(`${step.kind} ${step.id} ${name}`, `${step.name}: ${name}`, BuildWindow, async (shown) => ({
      all: await benchAt(shown, build),
    })),
  )
})
