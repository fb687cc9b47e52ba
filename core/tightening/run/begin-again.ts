import { done, refused, type Outcome } from '../../problem/index.ts'
import type { Cap, EngineSpec, PassKind, Procedure } from '../../engine/index.ts'
import type { RunCommand } from './commands.ts'
import type { RunEvent } from './events.ts'
import { groupOf } from '../order/fastener-group.ts'
import { numberOf } from '../order/fastener-number.ts'
import { capOfPull, counts, plannedPulls } from './plan.ts'
import { openFlags } from './progress.ts'
import { readReason } from './reason.ts'
import type { Flag, Run } from './run.ts'
import { remedyOf } from './flag-remedy.ts'

const version = 1

/**
 * Whether a fastener that may be used once only was tightened and then loosened, and no new one is in its place: tightening
 * it again would use it twice.
 */
export function isUsedUp(spec: EngineSpec, procedure: Procedure, run: Run, fastener: string): boolean {
  const once = groupOf(spec, fastener)?.reuse === 'new-each-time'
  if (!once || !run.loosened.includes(fastener)) return false
  return run.pulls.some(
    (pull) =>
      pull.fastener === fastener &&
      pull.setAside === 'loosened' &&
      tightens.includes(procedure.passes[pull.pass]?.kind),
  )
}

const tightens: readonly (PassKind | undefined)[] = ['torque', 'angle', 'tighten-to-stretch', 'recheck']

/**
 * The passes, counted from 0, from which a run may begin again: those that have pulls in or after them. The first one
 * always, with every fastener loosened before; a later one only while nothing was turned by an angle or tightened to a
 * stretch in or after it, because what is stretched twice breaks.
 */
export function restartPoints(procedure: Procedure, run: Run): readonly number[] {
  const made = run.pulls.filter(counts).map(({ pass }) => pass)
  const lastMade = Math.max(-1, ...made)
  const lastTurned = Math.max(-1, ...made.filter((pass) => stretches.includes(procedure.passes[pass]?.kind)))
  return procedure.passes
    .map((_, pass) => pass)
    .filter((pass) => pass <= lastMade && (pass === 0 || pass > lastTurned))
}

const stretches: readonly (PassKind | undefined)[] = ['angle', 'tighten-to-stretch']

type CommandOf<Type extends RunCommand['type']> = Extract<RunCommand, { type: Type }>

/**
 * Refuses a fastener that the procedure does not pull, or that has not been pulled yet. Where the way out of a flag is to
 * begin again, loosening answers it.
 */
export function decideLoosen(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  { fastener, reason: typed, cause }: CommandOf<'loosen-fastener'>,
): Outcome<readonly RunEvent[]> {
  const shown = numberOf(spec, fastener) ?? fastener
  if (!plannedPulls(procedure).some((planned) => planned.fastener === fastener))
    return refused('fastener-not-in-procedure', { fastener: shown, name: procedure.name })
  const flags = openFlags(run).filter((flag) => flag.fastener === fastener && flag.about === 'over')
  if (flags.length === 0 && !run.pulls.some((pull) => counts(pull) && pull.fastener === fastener))
    return refused('fastener-not-pulled', { fastener: shown })
  const ownCap = capOfPull(procedure, { fastener })
  const isSaid =
    typed === '' && (cause === 'crank-stiff' ? isStiff(run, ownCap) : cause !== undefined && flags.length > 0)
  const reason = isSaid ? done(null) : readReason(typed, { what: 'fastener-loosened', fastener: shown })
  if (!reason.ok) return reason
  const common = { version, procedure: procedure.id } as const
  const cap = ownCap?.id
  return done([
    {
      type: 'fastener-loosened',
      ...common,
      fastener,
      ...(cap !== undefined && { cap }),
      ...(reason.value === null ? { cause } : { reason: reason.value }),
    },
    ...settledByLoosening(spec, procedure, run, flags).map((event) => ({ ...event, ...common })),
  ])
}

/** Whether a cap is loosened because the crank took too much: that was read, or one of its fasteners is loose for it already. */
function isStiff(run: Run, cap: Cap | null): boolean {
  if (cap === null) return false
  const read = run.pulls.filter(({ turning }) => turning !== null).map(({ number }) => number)
  return (
    openFlags(run).some(({ about, pull }) => about === 'over' && pull !== null && read.includes(pull)) ||
    cap.fasteners.some((each) => run.loosened.includes(each))
  )
}

function settledByLoosening(spec: EngineSpec, procedure: Procedure, run: Run, flags: readonly Flag[]) {
  return flags
    .filter((flag) => remedyOf(spec, procedure, run, flag) === 'begin-again')
    .map(({ number }) => ({ type: 'flag-answered', flag: number, deed: 'begun-again' }) as const)
}

/** Refuses a fastener that is still tight: it was not loosened, or was pulled since. */
export function decideReplace(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  { fastener }: CommandOf<'replace-fastener'>,
): Outcome<readonly RunEvent[]> {
  if (!run.loosened.includes(fastener))
    return refused('loosen-first', { fastener: numberOf(spec, fastener) ?? fastener })
  return done([{ type: 'fastener-replaced', version, procedure: procedure.id, fastener }])
}

/**
 * A run that was interrupted begins again, whether it is paused or not. From the first pass every fastener is loosened,
 * which answers the flags that ask for that.
 */
export function decideRestart(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  { pass, measuredAgain, reason: typed }: CommandOf<'restart-run'>,
): Outcome<readonly RunEvent[]> {
  if (!restartPoints(procedure, run).includes(pass)) {
    const name = procedure.name
    const later = run.pulls.some((pull) => counts(pull) && pull.pass >= pass)
    return later
      ? refused('restart-after-angle', { pass: pass + 1, name })
      : refused('nothing-to-restart', { pass: pass + 1, name })
  }
  const isSaid = measuredAgain === true && typed === ''
  const reason = isSaid ? done(null) : readReason(typed, { what: 'run-restarted' })
  if (!reason.ok) return reason
  const common = { version, procedure: procedure.id } as const
  return done([
    ...(run.paused === null ? [] : [{ type: 'run-resumed', ...common } as const]),
    {
      type: 'run-restarted',
      ...common,
      pass,
      ...(measuredAgain === true && { measuredAgain }),
      ...(reason.value === null ? { cause: 'gap-out' as const } : { reason: reason.value }),
    },
    ...(pass === 0 ? settledByLoosening(spec, procedure, run, openFlags(run)) : []).map((event) => ({
      ...event,
      ...common,
    })),
  ])
}
