import { sentenceOf, type Problem } from '../../../core/problem/index.ts'
import type { EngineSpec, Procedure } from '../../../core/engine/index.ts'
import {
  decideRun,
  evolveRun,
  nextPull,
  runEvent,
  windowOf,
  type PlannedPull,
  type Reading,
  type Run,
  type RunCommand,
  type RunEvent,
} from '../../../core/tightening/index.ts'
import { winchEngine } from './winch-engine.ts'

/** A command as a test writes it: the procedure is the one on the bench. */
type CommandOnBench = RunCommand extends infer Each
  ? Each extends RunCommand
    ? Omit<Each, 'procedure'>
    : never
  : never

/** A person with a wrench: one run, one command after another, each event kept. */
export class Bench {
  readonly spec: EngineSpec
  readonly procedure: Procedure
  readonly events: RunEvent[] = []
  run: Run | undefined

  constructor(procedure: 'caps' | 'rods' | (string & {}) = 'caps', spec: EngineSpec = winchEngine) {
    this.spec = spec
    this.procedure = spec.procedures.find(({ id }) => id === procedure)!
  }

  /** The bench with its run started, and single-use fasteners declared new. */
  static started(procedure: string = 'caps', spec: EngineSpec = winchEngine): Bench {
    const bench = new Bench(procedure, spec)
    bench.does({ type: 'start-run' })
    for (const { id } of bench.singleUseGroups()) bench.does({ type: 'declare-new', group: id })
    return bench
  }

  /** Carries a command out and gives its events; throws with the sentence when it is refused. */
  does(command: CommandOnBench): readonly RunEvent[] {
    const decided = this.#decide(command)
    if (!decided.ok) throw new Error(sentenceOf(decided.problem))
    for (const event of decided.value) this.run = evolveRun(this.run, runEvent.parse(event))
    this.events.push(...decided.value)
    return decided.value
  }

  /** Why a command is refused, as code and facts; throws when it is not. */
  refusal(command: CommandOnBench): Problem {
    const decided = this.#decide(command)
    if (decided.ok) throw new Error(`${command.type} was not refused`)
    return decided.problem
  }

  /** The sentence of a refusal, for tests that are about the words. */
  refuses(command: CommandOnBench): string {
    return sentenceOf(this.refusal(command))
  }

  get next(): PlannedPull | null {
    return nextPull(this.procedure, this.run)
  }

  /** Pulls whose turn it is until `count` are pulled, without readings. */
  pullsNext(count = 1): void {
    for (let made = 0; made < count; made++) this.does(pull(this.next!))
  }

  /** Pulls whose turn it is and reads the target off the scale, everywhere there is one. */
  pullsToTarget(): void {
    const next = this.next!
    const window = windowOf(this.procedure.passes[next.pass]!, next.fastener)
    const unit = window?.kind === 'angle' ? '°' : 'N·m'
    const wanted = window !== null && 'target' in window
    this.does(pull(next, wanted ? [String(window.target), unit] : null))
  }

  singleUseGroups() {
    const pulled = new Set(this.procedure.orders.flatMap(({ sequence }) => sequence))
    const groups = new Set(this.spec.fasteners.filter(({ id }) => pulled.has(id)).map((each) => each.group))
    return this.spec.fastenerGroups.filter(({ id, reuse }) => reuse === 'new-each-time' && groups.has(id))
  }

  #decide(command: CommandOnBench) {
    return decideRun(this.spec, this.run, { ...command, procedure: this.procedure.id })
  }
}

/** A pull as the window asks for it: `pull({ pass: 1, fastener: 'cap-1' }, ['24', 'N·m'])`. */
export function pull(
  { pass, fastener, cap }: PlannedPull,
  reading: readonly [typed: string, unit: Reading['unit']] | null = null,
  more: {
    readonly moved?: boolean
    readonly outOfOrder?: string | null
    /** At which the length was reached, where it is tightened until it is. */
    readonly torque?: readonly [typed: string, unit: Reading['unit']]
    readonly waited?: { readonly seconds: number; readonly shortened: string | null }
  } = {},
) {
  return {
    type: 'pull' as const,
    pass,
    fastener,
    ...(cap !== undefined && { cap }),
    reading: reading === null ? null : { typed: reading[0], unit: reading[1] },
    ...(more.torque !== undefined && { torque: { typed: more.torque[0], unit: more.torque[1] } }),
    ...(more.waited !== undefined && { waited: more.waited }),
    moved: more.moved ?? false,
    outOfOrder: more.outOfOrder ?? null,
  }
}
