import { done, refused, type Outcome } from '../problem/index.ts'
import type { EngineSpec, Procedure } from '../engine/index.ts'
import type { RunCommand } from './commands.ts'
import type { RunEvent } from './events.ts'
import { numberOf } from './flag.ts'
import { counts, plannedIn, plannedPulls } from './plan.ts'
import { readReason } from './reason.ts'
import type { Flag, Run } from './run.ts'

const version = 1

/**
 * Whether what a flag is about ends only with a new fastener that begins again: one that is turned by an angle, or that
 * may be used once only, has been stretched by design, and too much of it cannot be taken back.
 */
export function mustBeReplaced(spec: EngineSpec, procedure: Procedure, { about, fastener }: Flag): boolean {
  if (about !== 'over' || fastener === null) return false
  const id = spec.fasteners.find((each) => each.id === fastener)?.group
  const once = spec.fastenerGroups.find((each) => each.id === id)?.reuse === 'new-each-time'
  return once || anglePasses(procedure).some((pass) => hasFastener(procedure, pass, fastener))
}

/**
 * The passes, counted from 0, from which a run may begin again: those that have pulls in or after them. The first one
 * always, with every fastener loosened before; a later one only while nothing was turned by an angle in or after it,
 * because what is turned twice breaks.
 */
export function restartPoints(procedure: Procedure, run: Run): readonly number[] {
  const made = run.pulls.filter(counts).map(({ pass }) => pass)
  const lastMade = Math.max(-1, ...made)
  const angles = anglePasses(procedure)
  const lastTurned = Math.max(-1, ...made.filter((pass) => angles.includes(pass)))
  return procedure.passes
    .map((_, pass) => pass)
    .filter((pass) => pass <= lastMade && (pass === 0 || pass > lastTurned))
}

function anglePasses({ passes }: Procedure): readonly number[] {
  return passes.flatMap(({ kind }, pass) => (kind === 'angle' ? [pass] : []))
}

function hasFastener(procedure: Procedure, pass: number, fastener: string): boolean {
  return plannedIn(procedure, pass).some((planned) => planned.fastener === fastener)
}

type Asked<Type extends RunCommand['type']> = Extract<RunCommand, { type: Type }>

/** Refuses a fastener that the procedure does not pull, or that has not been pulled yet. */
export function decideLoosen(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  { fastener, reason: typed }: Asked<'loosen-fastener'>,
): Outcome<readonly RunEvent[]> {
  const shown = numberOf(spec, fastener) ?? fastener
  if (!plannedPulls(procedure).some((planned) => planned.fastener === fastener))
    return refused('fastener-not-in-procedure', { fastener: shown, name: procedure.name })
  if (!run.pulls.some((pull) => counts(pull) && pull.fastener === fastener))
    return refused('fastener-not-pulled', { fastener: shown })
  const reason = readReason(typed, `why fastener ${shown} is loosened`)
  if (!reason.ok) return reason
  return done([
    { type: 'fastener-loosened', version, procedure: procedure.id, fastener, reason: reason.value },
  ])
}

/** Refuses a fastener that is still tight: it was not loosened, or was pulled since. */
export function decideReplace(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  { fastener }: Asked<'replace-fastener'>,
): Outcome<readonly RunEvent[]> {
  if (!run.loosened.includes(fastener))
    return refused('loosen-first', { fastener: numberOf(spec, fastener) ?? fastener })
  return done([{ type: 'fastener-replaced', version, procedure: procedure.id, fastener }])
}

/** A run that was interrupted begins again, whether it is paused or not. */
export function decideRestart(
  procedure: Procedure,
  run: Run,
  { pass, reason: typed }: Asked<'restart-run'>,
): Outcome<readonly RunEvent[]> {
  if (!restartPoints(procedure, run).includes(pass)) {
    const name = procedure.name
    const later = run.pulls.some((pull) => counts(pull) && pull.pass >= pass)
    return later
      ? refused('restart-after-angle', { pass: pass + 1, name })
      : refused('nothing-to-restart', { pass: pass + 1, name })
  }
  const reason = readReason(typed, 'why it begins again')
  if (!reason.ok) return reason
  const common = { version, procedure: procedure.id } as const
  return done([
    ...(run.paused === null ? [] : [{ type: 'run-resumed', ...common } as const]),
    { type: 'run-restarted', ...common, pass, reason: reason.value },
  ])
}
