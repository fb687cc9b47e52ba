import type { Cap, EngineSpec, Fastener, Procedure, Step } from '../../../core/engine/index.ts'
import type {
  Flag,
  WrenchSetup,
  PlannedPull,
  Reading,
  Run,
  RunCommand,
  UsableWrench,
  WrenchChoice,
} from '../../../core/tightening/index.ts'
import {
  heldAs,
  runningTorque,
  isReadingAsked,
  openFlags,
  restartPoints,
} from '../../../core/tightening/index.ts'
import { openedBy } from '../../../core/builds/index.ts'
import { benchTorqueUnits, type BenchTorqueUnit } from '../../../core/quantity/index.ts'
import type { Problem } from '../../../core/problem/index.ts'
import type { OpenBuild } from '../../bench/open-build.svelte.ts'
import type { ReadBy } from '../turning/read-by.ts'
import { bareFirst } from './wrench/bare-first.ts'
import { RunningTorque } from './wrench/running-torque.svelte.ts'
import type { OrderDraft } from './order/order-draft.svelte.ts'
import { taskNow, type PullTask, type Task } from './run-task.ts'

type PullCommand = Extract<RunCommand, { type: 'pull' }>

interface TypedReading {
  readonly typed: string
  readonly unit: Reading['unit']
}

type OpenQuestion =
  | 'shorten-wait'
  | 'over-time'
  | 'take-back'
  | 'read-again'
  | 'problem'
  | 'pause'
  | 'restart'
  | 'wrench'
  | 'explain'
  | 'own-order'
  | null

function isBenchUnit(unit: Reading['unit']): unit is BenchTorqueUnit {
  return benchTorqueUnits.some((each) => each === unit)
}

/** Stands for a wrench that is not among the shop's: its scale is taken to show what the fastener has. */
const anotherWrench = '/'

function keyOf({ wrench, adapter }: WrenchSetup): string {
  return `${wrench.id}/${adapter?.id ?? ''}`
}

/** The flags whose answers were put off: what is drawn as next goes by them too. */
interface PutOff {
  readonly putOff: readonly number[]
  putOffFlag(flag: number): void
  recallFlag(flag: number): void
}

/** The tightening panel's state: what is next, derived from the build, and which small form lies open. */
export class RunDesk {
  readonly #openBuild: () => OpenBuild
  readonly #procedure: () => string
  readonly #picked: () => string | null
  readonly #putOff: () => PutOff
  #asking = $state<OpenQuestion>(null)
  /** The torque at which a fastener was long enough, as typed, where it is tightened until it is. */
  torqueTyped = $state('')
  /** How the turning torque of the crank is read. */
  readBy = $state<ReadBy>({ by: 'wrench', arm: '' })
  /** The wrench that a person chose, by `keyOf`; null while the best one is. */
  #chosen = $state<string | null>(null)

  readonly procedure: Procedure = $derived.by(() =>
    this.#spec.procedures.find(({ id }) => id === this.#procedure())!,
  )
  readonly run: Run | undefined = $derived.by(() => this.#openBuild().state.runs[this.procedure.id])
  readonly task: Task = $derived.by(() =>
    taskNow(this.#spec, this.procedure, this.run, this.#picked(), this.#putOff().putOff),
  )
  readonly running = new RunningTorque(() => this)

  constructor(
    openBuild: () => OpenBuild,
    procedure: () => string,
    picked: () => string | null,
    putOff: () => PutOff,
  ) {
    this.#openBuild = openBuild
    this.#procedure = procedure
    this.#picked = picked
    this.#putOff = putOff
  }

  get #spec(): EngineSpec {
    return this.#openBuild().spec
  }
  get spec(): EngineSpec {
    return this.#spec
  }
  /** The passes, counted from 0, from which the run may begin again. */
  get restartPoints(): readonly number[] {
    return this.run ? restartPoints(this.procedure, this.run) : []
  }
  get asking() {
    return this.#asking
  }
  /** The number of the fastener that was tapped, or of the next one. */
  get pickedNumber(): string | null {
    return this.#aboutFastener?.number ?? null
  }

  take(setup: WrenchSetup | null) {
    this.#chosen = setup === null ? anotherWrench : keyOf(setup)
    this.#asking = null
  }
  /** The wrench for a pull: the chosen one, while it can be used, else the best; null for one that the shop has not listed. */
  heldFor(choice: WrenchChoice | null): UsableWrench | null {
    if (choice === null || this.#chosen === anotherWrench) return null
    const usable = bareFirst(choice)
    return usable.find((each) => keyOf(each) === this.#chosen) ?? usable[0] ?? null
  }

  ask(what: OpenQuestion) {
    this.#asking = what
  }

  start = () => this.#act({ type: 'start-run', procedure: this.procedure.id })
  async startInOrder({ orders }: OrderDraft, reason: string) {
    const own = { reason, orders: [...orders] }
    const done = await this.#act({ type: 'start-run', procedure: this.procedure.id, own })
    if (done) this.#openBuild().makeOrder(null)
  }
  declareNew = (group: string) => this.#act({ type: 'declare-new', procedure: this.procedure.id, group })
  resume = () => this.#act({ type: 'resume-run', procedure: this.procedure.id })
  pause = (reason: string) => this.#act({ type: 'pause-run', procedure: this.procedure.id, reason })
  takeBack = (pull: number, reason: string, { notTurned = false, mistyped = false } = {}) =>
    this.#act({
      type: 'take-back',
      procedure: this.procedure.id,
      pull,
      ...(notTurned && { notTurned: true as const }),
      ...(mistyped && { mistyped: true as const }),
      reason,
    })
  readAgain = (
    pull: number,
    reading: TypedReading & Pick<PullCommand, 'readWith'>,
    torque: TypedReading | null,
    reason: string,
  ) =>
    this.#act({
      type: 'read-again',
      procedure: this.procedure.id,
      pull,
      reading: { typed: reading.typed, unit: reading.unit },
      readWith: reading.readWith,
      ...(torque !== null && { torque }),
      reason,
    })
  answer = (flag: number, answer: string) =>
    this.#act({ type: 'answer-flag', procedure: this.procedure.id, flag, answer })

  loosen = (fastener: string, reason: string) =>
    this.#act({ type: 'loosen-fastener', procedure: this.procedure.id, fastener, reason })
  /** The remedy of its flag says why. */
  loosenForRemedy = (fastener: string, cause: 'to-be-replaced' | 'to-begin-again') =>
    this.#act({ type: 'loosen-fastener', procedure: this.procedure.id, fastener, reason: '', cause })
  /** The cap to look at when the crank takes too much to turn: all that holds it is loosened. */
  async loosenCap({ fasteners }: Cap) {
    const procedure = this.procedure.id
    const tight = fasteners.filter((fastener) => !this.run?.loosened.includes(fastener))
    for (const fastener of tight) {
      const command = {
        type: 'loosen-fastener',
        procedure,
        fastener,
        reason: '',
        cause: 'crank-stiff',
      } as const
      if (!(await this.#act(command))) return
    }
  }
  replace = (fastener: string) =>
    this.#act({ type: 'replace-fastener', procedure: this.procedure.id, fastener })
  restart = (pass: number, reason: string, { measuredAgain = false } = {}) =>
    this.#act({
      type: 'restart-run',
      procedure: this.procedure.id,
      pass,
      ...(measuredAgain && { measuredAgain: true as const }),
      ...(this.openedBy(pass).length > 0 && { jointOpened: true as const }),
      reason,
    })
  measureAgain = (pass: number) => this.restart(pass, '', { measuredAgain: true })

  /** The steps that are undone when the run begins again with this pass: those between the sealant and its bolts. */
  openedBy(pass: number): readonly Step[] {
    const { spec, state } = this.#openBuild()
    const step = spec.steps.find(
      (each) => each.kind === 'run-procedure' && each.procedure === this.procedure.id,
    )
    return pass === 0 && step !== undefined ? openedBy(spec, state, step) : []
  }

  noteProblem = (text: string) =>
    this.#act({
      type: 'note-problem',
      procedure: this.procedure.id,
      fastener: this.#aboutFastener?.id ?? null,
      text,
    })

  /** Whether what was typed is the very reading that a pull asks for. */
  isAsked(
    planned: PlannedPull,
    typed: { typed: string; unit: Reading['unit'] },
    setup: WrenchSetup | null,
  ): boolean {
    const { run } = this
    if (run === undefined) return false
    const running = this.running.readFor(planned, isBenchUnit(typed.unit) ? typed.unit : 'N·m')
    if (running?.ok === false || (running === null && this.running.isOnTop(planned))) return false
    const onTop = runningTorque(running?.value ?? null)
    return isReadingAsked(this.#spec, this.procedure, run, planned, typed, setup && heldAs(setup), onTop)
  }

  /** What a pull is made to at the wrench, with what goes on top of its torque. */
  pulledTo({ window, next }: PullTask, { torque }: { readonly torque: BenchTorqueUnit }) {
    return this.running.pulledTo(window, next, torque)
  }

  /** A length that does not go with the others was refused: a person has to say that it is right. */
  get doubt(): Problem | null {
    const { problem } = this.#openBuild()
    return problem?.code === 'length-far-off' ? problem : null
  }

  pull(
    { pass, fastener, cap }: PlannedPull,
    reading: TypedReading | null,
    moved: boolean,
    outOfOrder: string | null,
    setup: WrenchSetup | null,
    more: Pick<PullCommand, 'readWith' | 'torque' | 'running' | 'waited' | 'sure' | 'overTime'> = {},
  ) {
    return this.#act({
      type: 'pull',
      procedure: this.procedure.id,
      pass,
      fastener,
      ...(cap !== undefined && { cap }),
      reading,
      ...(setup !== null && { held: heldAs(setup) }),
      ...more,
      moved,
      outOfOrder,
    })
  }

  answerLater(flag: number) {
    this.#putOff().putOffFlag(flag)
  }
  answerNow(flag: number) {
    this.#putOff().recallFlag(flag)
  }
  /** Open flags that wait for an answer, and are not asked about now. */
  get postponed(): readonly Flag[] {
    const { putOff } = this.#putOff()
    return openFlags(this.run).filter(({ number }) => putOff.includes(number) && number !== this.flag?.number)
  }

  async #act(command: Parameters<OpenBuild['act']>[0]): Promise<boolean> {
    const done = await this.#openBuild().act(command)
    if (done) this.#asking = null
    return done
  }

  get #aboutFastener(): Fastener | null {
    const task = this.task
    return task.kind === 'pull' || task.kind === 'picked' ? task.fastener : null
  }

  /** The flag that is asked about now; null where none is. */
  get flag(): Flag | null {
    const task = this.task
    if (task.kind === 'flag' || task.kind === 'replace') return task.flag
    return task.kind === 'pull' ? task.short : null
  }
}
