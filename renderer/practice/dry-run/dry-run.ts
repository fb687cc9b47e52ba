import { buildCommand, type BuildCommand } from '../../../core/builds/index.ts'
import type { Answer, Client, Input, Preferences, RequestName } from '../../../core/contract/index.ts'
import { dryRunErrors, type Tally } from '../../../core/practice/index.ts'
import { done, refused, type Outcome } from '../../../core/problem/index.ts'
import { MemoryBuild, type Engine } from '../../bench/memory-build.ts'

/** What a dry run is begun with. */
export interface NewDryRun {
  readonly engine: Engine
  /** What stands where a build has its number. */
  readonly number: string
  readonly name: string
  /** Whose name stands beside its entries. */
  readonly person: string
  readonly preferences: Preferences
}

type Handlers = { readonly [Name in RequestName]?: (input: Input<Name>) => Answer<Name> }

/** The only requests that go on to the host: about the bench and its tools, never about a build or the record. */
const passedOn: ReadonlySet<RequestName> = new Set<RequestName>([
  'host.read',
  'files.save',
  'people.list',
  'people.enter',
  'people.leave',
  'wrenches.list',
])

/** A whole build as practice: one build in memory, behind the same requests as a build of the record. */
export class DryRun {
  readonly build: MemoryBuild
  readonly client: Client
  readonly #refused: BuildCommand[] = []

  private constructor(host: Client, build: MemoryBuild, preferences: Preferences) {
    this.build = build
    const handlers = this.#handlers(preferences)
    this.client = {
      request<Name extends RequestName>(name: Name, input: Input<Name>) {
        const handler = handlers[name]
        if (handler !== undefined) return Promise.resolve(handler(input))
        if (passedOn.has(name)) return host.request(name, input)
        return Promise.resolve(refused('practice-only', {}))
      },
    }
  }

  /** Refused as `startBuild` refuses. */
  static start(host: Client, { engine, number, name, person, preferences }: NewDryRun): Outcome<DryRun> {
    const begun = { id: crypto.randomUUID(), number, name, serial: '', person }
    const started = MemoryBuild.start(engine, begun, () => Date.now())
    return started.ok ? done(new DryRun(host, started.value, preferences)) : started
  }

  get isFinished(): boolean {
    return this.build.state.finished
  }

  /** How it went, by place of error. */
  get tally(): Tally {
    const events = this.build.entries.map(({ event }) => event)
    return dryRunErrors(this.build.engine.spec, events, this.#refused)
  }

  #handlers(ofBench: Preferences): Handlers {
    const { build } = this
    let preferences: Preferences = {
      ...ofBench,
      ...{ person: build.begun.person, views: [], unfinished: [], atBuild: build.begun.id },
    }
    return {
      'preferences.read': () => done(preferences),
      'preferences.keep': (change) => done((preferences = { ...preferences, ...change } as Preferences)),
      'engines.list': () => done([]),
      'builds.list': () => done([]),
      'builds.open': () => done(build.opened),
      'builds.since': ({ after }) => done({ events: [...build.entries.slice(after)] }),
      'builds.act': ({ after, command: sent, person }) => {
        const { seq } = build.state
        if (after !== seq) return refused('build-moved-on', { last: seq }, 'after')
        const command = buildCommand.parse(sent)
        const acted = build.act(command, person, new Date().toISOString())
        if (acted.ok) return done({ events: [...acted.value] })
        this.#refused.push(command)
        return acted
      },
    }
  }
}
