import { done, refused, type Outcome } from '../problem/index.ts'
import { lengthOf } from '../quantity/index.ts'
import type { EngineSpec, Pass, Procedure } from '../engine/index.ts'
import type { RunCommand } from './commands.ts'
import type { Reading, RunEvent } from './events.ts'
import { repeatAnswer } from './evolve-run.ts'
import { numberOf } from './flag.ts'
import { counts, livePulls, openPulls, plannedIn, pullKey } from './plan.ts'
import { isLengthUnit, takeReading } from './reading.ts'
import { readReason } from './reason.ts'
import type { Pull, Run } from './run.ts'
import { verdictOf, windowOf } from './window.ts'

type PullCommand = Extract<RunCommand, { type: 'pull' }>

/**
 * One pull: whether this fastener may be pulled in this pass now, and what its reading says. A reason lets a
 * fastener go before its turn, but no reason lets it skip a pass of its own: to turn by an angle what was
 * never torqued breaks bolts.
 */
export function decidePull(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  command: PullCommand,
): Outcome<readonly RunEvent[]> {
  const pass = procedure.passes[command.pass]
  if (pass === undefined)
    return refused('pass-unknown', {
      pass: command.pass + 1,
      passes: procedure.passes.length,
      name: procedure.name,
    })
  const turn = decideTurn(spec, procedure, run, command)
  if (!turn.ok) return turn
  const unused = undeclaredGroup(spec, run, command.fastener)
  if (unused !== null) return refused('declare-new-first', { group: unused })
  const result = judge(spec, procedure, run, pass, command)
  if (!result.ok) return result
  const common = { version: 1, procedure: procedure.id } as const
  return done([
    {
      type: 'fastener-pulled',
      ...common,
      pull: run.pulls.length + 1,
      pass: command.pass,
      fastener: command.fastener,
      ...result.value,
      ...(command.held !== undefined && isTorque(pass, command.fastener) && { held: command.held }),
      outOfOrder: turn.value,
    },
    ...(pass.kind === 'recheck' && pass.repeat !== undefined
      ? afterRecheck(procedure, run, command).map((event) => ({ ...event, ...common }))
      : []),
  ])
}

/**
 * A pass that is repeated until none moves answers for the one that moved, and begins again once all are through and one
 * has moved.
 */
function afterRecheck(procedure: Procedure, run: Run, { pass, fastener, moved }: PullCommand) {
  const live = livePulls(run)
  const own = pullKey({ pass, fastener })
  const others = plannedIn(procedure, pass)
    .map(pullKey)
    .filter((key) => key !== own)
  const someMoved = moved || others.some((key) => live.get(key)?.verdict === 'moved')
  return [
    ...(moved ? [{ type: 'flag-answered', flag: run.flags.length + 1, answer: repeatAnswer } as const] : []),
    ...(someMoved && others.every((key) => live.has(key)) ? [{ type: 'pass-repeated', pass } as const] : []),
  ]
}

/** Null when it is this pull's turn; the reason when it goes before its turn and there is one. */
function decideTurn(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  command: PullCommand,
): Outcome<string | null> {
  const { pass, fastener } = command
  const key = pullKey(command)
  const shown = numberOf(spec, fastener)
  if (!plannedIn(procedure, pass).some((planned) => pullKey(planned) === key))
    return refused('fastener-not-in-pass', { fastener: shown, pass: pass + 1, name: procedure.name })
  if (livePulls(run).has(key)) return refused('pulled-already', { fastener: shown, pass: pass + 1 })

  const open = openPulls(procedure, run)
  const next = open[0]
  if (next === undefined || pullKey(next) === key) return done(null)
  const own = open.find((planned) => planned.fastener === fastener)
  if (own !== undefined && fastener !== null && own.pass < pass)
    return refused('earlier-pass-first', {
      fastener: shown ?? fastener,
      earlier: own.pass + 1,
      pass: pass + 1,
    })
  const facts = { fastener: shown, next: numberOf(spec, next.fastener), pass: next.pass + 1 }
  if (command.outOfOrder === null) return refused('not-its-turn', facts)
  return readReason(command.outOfOrder, `why ${shown ?? 'this'} comes before ${facts.next ?? 'what is next'}`)
}

/** The name of the group of single-use fasteners that this one is of, unless they were declared new. */
function undeclaredGroup(spec: EngineSpec, run: Run, fastener: string | null): string | null {
  const id = spec.fasteners.find((each) => each.id === fastener)?.group
  const group = spec.fastenerGroups.find((each) => each.id === id)
  if (group?.reuse !== 'new-each-time' || run.declaredNew.includes(group.id)) return null
  return group.name
}

/** The reading as recorded and what it means. A fastener that moved has moved, whatever the reading. */
function judge(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  pass: Pass,
  { fastener, reading, moved, held }: PullCommand,
): Outcome<Judged> {
  const shown = numberOf(spec, fastener)
  if (moved && pass.kind !== 'recheck') return refused('moved-outside-recheck', { fastener: shown })
  const window = windowOf(pass, fastener)
  if (reading === null)
    return window?.kind === 'length' || window?.kind === 'free-length'
      ? refused('reading-missing', { fastener: shown })
      : done({ reading: null, verdict: moved ? 'moved' : 'unread' })
  if (window === null) return refused('reading-not-asked', { fastener: shown })
  const taken = takeReading(window, reading, held ?? null)
  if (!taken.ok) return taken
  const { value } = taken.value
  if (window.kind === 'length' && window.of === 'stretch') {
    const before = lengthBefore(procedure, run, fastener)
    if (before === null) return refused('length-missing', { fastener: shown })
    const stretch = value - before
    const verdict = verdictOf(window, stretch)
    return done({ reading: taken.value.reading, verdict, stretch_nm: stretch })
  }
  const verdict = moved ? 'moved' : verdictOf(window, value)
  return done({ reading: taken.value.reading, verdict })
}

/** Whether a pull is read off a torque wrench: only then does it matter which one. */
function isTorque(pass: Pass, fastener: string | null): boolean {
  return windowOf(pass, fastener)?.kind === 'torque'
}

interface Judged {
  readonly reading: Reading | null
  readonly verdict: Pull['verdict']
  readonly stretch_nm?: number
}

/** In nanometres, as it was last measured before it was pulled; null where that was not done. */
function lengthBefore(procedure: Procedure, run: Run, fastener: string | null): number | null {
  const measured = run.pulls.findLast(
    (pull) => counts(pull) && pull.fastener === fastener && procedure.passes[pull.pass]?.kind === 'length',
  )
  const { value, unit } = measured?.reading ?? {}
  return value === undefined || unit === undefined || !isLengthUnit(unit) ? null : lengthOf(value, unit)
}
