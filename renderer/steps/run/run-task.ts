import type { EngineSpec, Fastener, FastenerGroup, Pass, Procedure } from '../../../core/engine/index.ts'
import {
  isRunDone,
  isUsedUp,
  livePulls,
  nextPull,
  openFlags,
  openPulls,
  shortPull,
  remedyOf,
  windowNow,
} from '../../../core/tightening/index.ts'
import type { AcceptanceWindow, Flag, PlannedPull, Run } from '../../../core/tightening/index.ts'

export interface PullTask {
  readonly kind: 'pull'
  readonly next: PlannedPull
  readonly pass: Pass
  readonly fastener: Fastener | null
  readonly group: FastenerGroup | null
  readonly window: AcceptanceWindow | null
  /** The flag of a turn that came short, where what is left of it is turned now. */
  readonly short: Flag | null
}

/** What the run asks of the person now. */
export type Task =
  | { readonly kind: 'start' }
  | { readonly kind: 'declare-new'; readonly group: FastenerGroup }
  | { readonly kind: 'paused'; readonly reason: string }
  | { readonly kind: 'flag'; readonly flag: Flag }
  /**
   * Too much on a fastener, or a single-use one that was loosened: loosen it, fit a new one where that is the remedy, begin
   * it again.
   */
  | {
      readonly kind: 'replace'
      readonly remedy: 'replace' | 'begin-again'
      readonly flag: Flag | null
      readonly fastener: Fastener
      readonly loose: boolean
    }
  | {
      readonly kind: 'picked'
      readonly fastener: Fastener
      readonly open: PlannedPull | null
      /** Whether anything was pulled on it that still counts. */
      readonly pulled: boolean
    }
  | PullTask
  | { readonly kind: 'done' }

/** A run that was started. */
interface RunAt {
  readonly spec: EngineSpec
  readonly procedure: Procedure
  readonly run: Run
}

/**
 * What the run of a procedure asks for now. `picked` is what was tapped on the drawing, `putOff` the flags whose answers wait:
 * they come back with the end of the run, and with their fastener's turn.
 */
export function taskNow(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run | undefined,
  picked: string | null,
  putOff: readonly number[],
): Task {
  if (!run) return { kind: 'start' }
  if (run.paused !== null) return { kind: 'paused', reason: run.paused }
  if (isRunDone(procedure, run)) return { kind: 'done' }
  const at = { spec, procedure, run }
  const next = nextPull(procedure, run)
  const flags = openFlags(run)
  const flag = next ? flags.find(({ number }) => !putOff.includes(number)) : flags[0]
  if (flag) return settling(at, flag)
  const tapped = pickedTask(at, picked, next)
  if (tapped) return tapped
  if (!next) return { kind: 'done' }
  return newGroup(at, next) ?? usedUp(at, next) ?? pullTask(at, next, null)
}

function settling(at: RunAt, flag: Flag): Task {
  const { spec, procedure, run } = at
  const fastener = fastenerOf(spec, flag.fastener)
  const remedy = remedyOf(spec, procedure, run, flag)
  const pull = run.pulls.find(({ number }) => number === flag.pull)
  if (fastener === null || pull === undefined || remedy === 'say') return { kind: 'flag', flag }
  if (remedy === 'turn-on') return pullTask(at, { pass: pull.pass, fastener: fastener.id }, flag)
  return { kind: 'replace', remedy, flag, fastener, loose: run.loosened.includes(fastener.id) }
}

function pickedTask(
  { spec, procedure, run }: RunAt,
  picked: string | null,
  next: PlannedPull | null,
): Task | null {
  const fastener = fastenerOf(spec, picked?.replace(/^fastener\//, '') ?? null)
  if (!fastener || fastener.id === next?.fastener) return null
  const open = openPulls(procedure, run).find((planned) => planned.fastener === fastener.id)
  const pulled = [...livePulls(run).values()].some((pull) => pull.fastener === fastener.id)
  return { kind: 'picked', fastener, open: open ?? null, pulled }
}

function newGroup({ spec, run }: RunAt, next: PlannedPull): Task | null {
  const group = groupOf(spec, fastenerOf(spec, next.fastener))
  if (group?.reuse !== 'new-each-time' || run.declaredNew.includes(group.id)) return null
  return { kind: 'declare-new', group }
}

function usedUp({ spec, procedure, run }: RunAt, { fastener: id }: PlannedPull): Task | null {
  const fastener = fastenerOf(spec, id)
  if (fastener === null || !isUsedUp(spec, procedure, run, fastener.id)) return null
  return { kind: 'replace', remedy: 'replace', flag: null, fastener, loose: true }
}

function pullTask({ spec, procedure, run }: RunAt, next: PlannedPull, short: Flag | null): PullTask {
  const fastener = fastenerOf(spec, next.fastener)
  return {
    kind: 'pull',
    next,
    pass: procedure.passes[next.pass]!,
    fastener,
    group: groupOf(spec, fastener),
    window: windowNow(procedure, run, next),
    short: short ?? flagOfShort(run, next),
  }
}

function flagOfShort(run: Run, next: PlannedPull): Flag | null {
  const pull = shortPull(run, next)?.pull
  return pull === undefined ? null : (openFlags(run).find((flag) => flag.pull === pull.number) ?? null)
}

function fastenerOf(spec: EngineSpec, id: string | null): Fastener | null {
  return spec.fasteners.find((fastener) => fastener.id === id) ?? null
}

function groupOf(spec: EngineSpec, fastener: Fastener | null): FastenerGroup | null {
  return spec.fastenerGroups.find(({ id }) => id === fastener?.group) ?? null
}
