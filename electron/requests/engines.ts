import type { EngineLine } from '../../core/contract/index.ts'
import { done, refused } from '../../core/problem/index.ts'
import type { HandlersOf } from './handlers.ts'
import type { EngineShelf } from './engine-shelf.ts'
import type { Engine } from './specs.ts'

/** Answers about the engines that specs describe, which may grow in number while the program runs. */
export function engineRequests(shelf: EngineShelf): HandlersOf<'engines'> {
  return {
    'engines.list': ({ language }) => done(shelf.listed(language).map(lineOf)),
    'engines.read': ({ id }) => {
      const engine = shelf.find(id)
      return engine ? done({ specText: engine.text }) : refused('engine-unknown', { engine: id }, 'id')
    },
  }
}

function lineOf(engine: Engine): EngineLine {
  return {
    id: engine.id,
    name: engine.spec?.name ?? engine.id,
    summary: engine.spec?.summary ?? '',
    revision: engine.spec?.revision ?? '',
    demo: engine.spec?.source.kind === 'demo',
    lookedAt: engine.spec?.steps.filter(({ secondPerson }) => secondPerson).map(({ name }) => name) ?? [],
    doubts: engine.kind === 'sound' ? [...engine.doubts] : [],
    faults: engine.kind === 'faulty' ? [...engine.faults] : [],
  }
}
