import { evolve, replay, type BuildCommand, type BuildState } from '../../core/builds/index.ts'
import type { Answer, Input, Output, RequestName } from '../../core/contract/index.ts'
import { sentenceOf } from '../../core/problem/index.ts'
import { openRequests, type AnswerRequest } from '../../electron/requests/index.ts'
import { nextCommand } from '../electron/mechanic.ts'
import { engineFolder } from '../engine-files.ts'
import { specOf } from './spec-of.ts'

const specs = engineFolder(['skerry-3', 'tarn-4'])

/** A bench that is worked on without a window: another one, or this one before its host is started. */
export class OtherBench {
  readonly #answer: AnswerRequest
  readonly close: () => Promise<void>

  private constructor(answer: AnswerRequest, close: () => Promise<void>) {
    this.#answer = answer
    this.close = close
  }

  static async at(dataFolder: string): Promise<OtherBench> {
    const facts = {
      host: 'local',
      why: { code: 'hostByItself', facts: {} },
      version: '0.1.0',
      dataFolder,
    } as const
    const opened = await openRequests(facts, specs, (line) => console.error(line))
    if (!opened.ok) throw new Error(sentenceOf(opened.problem))
    return new OtherBench(opened.value.answer, opened.value.close)
  }

  async get<Name extends RequestName>(name: Name, input: Input<Name>): Promise<Output<Name>> {
    const reply = (await this.#answer(name, input)) as Answer<Name>
    if (!reply.ok) throw new Error(`${name}: ${sentenceOf(reply.problem)}`)
    return reply.value
  }

  /** The id of the new build. */
  async start(engine: string, name: string, serial: string, person: string): Promise<string> {
    return (await this.get('builds.start', { engine, name, serial, person })).line.id
  }

  async act(build: string, command: BuildCommand, person = 'Ana Ruiz'): Promise<void> {
    const { seq } = (await this.#read(build)).state
    await this.get('builds.act', { build, after: seq, person, command })
  }

  /** Does what comes next, and all of it right, until there is `enough` or the build is finished. */
  async goOn(build: string, enough: (state: BuildState) => boolean = () => false): Promise<BuildState> {
    const opened = await this.#read(build)
    const { spec } = opened
    let { state } = opened
    for (
      let command = nextCommand(spec, state);
      command && !enough(state);
      command = nextCommand(spec, state)
    ) {
      const input = { build, after: state.seq, person: 'Ana Ruiz', command }
      state = (await this.get('builds.act', input)).events.reduce(evolve, state)
    }
    return state
  }

  async export(build: string): Promise<string> {
    return (await this.get('builds.export', { build })).text
  }

  async #read(build: string) {
    const { specText, events } = await this.get('builds.open', { build })
    return { spec: specOf(specText), state: replay(events) }
  }
}
