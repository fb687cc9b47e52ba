import { done, problem, refused, type Outcome, type Problem } from '../../problem/index.ts'
import { nanometres, newtonMetres, type Torque } from '../../quantity/index.ts'
import type { EngineSpec, Pass, Procedure } from '../../engine/index.ts'
import type { RunCommand } from './commands.ts'
import type { Reading, RunEvent } from './events.ts'
import { isUsedUp } from './begin-again.ts'
import { groupOf } from '../order/fastener-group.ts'
import { numberOf } from '../order/fastener-number.ts'
import { lengthDoubt } from '../reading/length-doubt.ts'
import { stretchOf } from '../reading/measured-length.ts'
import { livePulls, openPulls, plannedIn, pullKey } from './plan.ts'
import { openFlags } from './progress.ts'
import { prevailingIn, readRunning, runningBefore, runningTorque } from '../reading/prevailing.ts'
import { takeReading } from '../reading/reading.ts'
import { readReason } from './reason.ts'
import type { Pull, Run } from './run.ts'
import type { HeldWrench } from '../wrench/index.ts'
import { stretchOutcome, torqueRead, verdictOfStretch } from '../reading/stretch.ts'
import { shortPull } from '../reading/turned.ts'
import { verdictOfTurning } from '../reading/turning.ts'
import { lastTurning, riseOf } from './turned-before.ts'
import { decideWait } from './wait.ts'
import { barringFlag, remedyOf } from './flag-remedy.ts'
import {
  isFastenerLength,
  verdictOf,
  windowOf,
  type LengthWindow,
  type TurningWindow,
} from '../reading/window.ts'

type PullCommand = Extract<RunCommand, { type: 'pull' }>

/**
 * One pull: whether this fastener may be pulled in this pass now, and what its reading says. A reason lets a
 * fastener go before its turn, but no reason lets it skip a pass of its own: to turn by an angle what was
 * never torqued breaks bolts.
 *
 * @param turnedBefore what the crank took to turn in the steps before; null where that was not read.
 */
export function decidePull(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  command: PullCommand,
  turnedBefore: Torque | null,
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
  const barred = barredBy(spec, procedure, run, command.fastener)
  if (barred !== null) return { ok: false, problem: barred }
  const unused = undeclaredGroup(spec, run, command.fastener)
  if (unused !== null) return refused('declare-new-first', { group: unused })
  const running = decideRunning(spec, procedure, run, pass, command)
  if (!running.ok) return running
  const last = lastTurning(run) ?? turnedBefore
  const result = judge(spec, procedure, run, pass, command, running.value, last)
  if (!result.ok) return result
  const waited = decideWait(pass, command)
  if (!waited.ok) return waited
  const common = { version: 1, procedure: procedure.id } as const
  return done([
    {
      type: 'fastener-pulled',
      ...common,
      pull: run.pulls.length + 1,
      pass: command.pass,
      fastener: command.fastener,
      ...(command.cap !== undefined && { cap: command.cap }),
      ...result.value,
      ...(result.value.reading !== null && command.readWith !== undefined && { readWith: command.readWith }),
      ...waited.value,
      ...(command.held !== undefined && isTorque(pass, command.fastener) && { held: command.held }),
      ...(running.value !== null && { running: running.value }),
      outOfOrder: turn.value,
    },
    ...turnedOn(run, command).map((event) => ({ ...event, ...common })),
    ...(pass.kind === 'recheck' && pass.repeat !== undefined
      ? afterRecheck(procedure, run, command).map((event) => ({ ...event, ...common }))
      : []),
  ])
}

/**
 * What the fastener takes to run down, where that goes on top of the spec's torque: as typed, else as it was read before; null
 * where nothing goes on top.
 *
 * Refuses `running-torque-missing` where it was never read, and what `readRunning` refuses.
 */
function decideRunning(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  pass: Pass,
  { fastener, running }: PullCommand,
): Outcome<Reading | null> {
  const prevailing = prevailingIn(spec, pass, fastener)
  if (prevailing?.counts !== 'on-top') return done(null)
  const shown = numberOf(spec, fastener)
  if (running !== undefined) return readRunning(prevailing, running, shown)
  const before = runningBefore(procedure, run, fastener)
  if (before !== null) return done(before)
  return refused('running-torque-missing', { fastener: shown })
}

/** A pull that continues a short one answers for it. */
function turnedOn(run: Run, command: PullCommand) {
  const before = shortPull(run, command)
  const flag =
    before && openFlags(run).find(({ pull, about }) => pull === before.pull.number && about === 'under')
  const deed = before?.pull.torque === null ? 'turned-on' : 'tightened-on'
  return flag ? [{ type: 'flag-answered', flag: flag.number, deed } as const] : []
}

/**
 * Why a fastener may not be pulled whatever its turn is: it went past its upper limit and is still to be loosened or replaced, or
 * it may be used once only and was loosened.
 */
function barredBy(spec: EngineSpec, procedure: Procedure, run: Run, fastener: string | null): Problem | null {
  if (fastener === null) return null
  const shown = numberOf(spec, fastener) ?? fastener
  const flag = barringFlag(spec, procedure, run, fastener)
  if (flag !== null)
    return problem(
      remedyOf(spec, procedure, run, flag) === 'replace' ? 'must-be-replaced' : 'must-begin-again',
      { fastener: shown },
    )
  return isUsedUp(spec, procedure, run, fastener) ? problem('used-once-already', { fastener: shown }) : null
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
    ...(moved ? [{ type: 'flag-answered', flag: run.flags.length + 1, deed: 'pass-repeated' } as const] : []),
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
  if (shortPull(run, command) !== null) return done(null)
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
  return readReason(command.outOfOrder, { what: 'out-of-order', fastener: shown, next: facts.next })
}

/** The name of the group of single-use fasteners that this one is of, unless they were declared new. */
function undeclaredGroup(spec: EngineSpec, run: Run, fastener: string | null): string | null {
  const group = groupOf(spec, fastener)
  if (group?.reuse !== 'new-each-time' || run.declaredNew.includes(group.id)) return null
  return group.name
}

/** The reading as recorded and what it means. A fastener that moved has moved, whatever the reading. */
function judge(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  pass: Pass,
  command: PullCommand,
  running: Reading | null,
  last: Torque | null,
): Outcome<PullVerdict> {
  const { pass: place, fastener, reading, moved, held, sure } = command
  const shown = numberOf(spec, fastener)
  if (moved && pass.kind !== 'recheck') return refused('moved-outside-recheck', { fastener: shown })
  const window = windowOf(pass, fastener)
  const turned = window?.kind === 'angle' ? (shortPull(run, { pass: place, fastener })?.turned ?? 0) : 0
  const from = turned === 0 ? {} : { from_deg: turned }
  if (reading === null)
    return window?.kind === 'length' || window?.kind === 'free-length' || window?.kind === 'turning'
      ? refused('reading-missing', { fastener: shown })
      : done({ reading: null, ...from, verdict: moved ? 'moved' : 'unread' })
  if (window === null) return refused('reading-not-asked', { fastener: shown })
  const onTop = runningTorque(running)
  const read = takeReading(window, reading, held ?? null, onTop)
  if (!read.ok) return read
  const { value } = read.value
  if (window.kind === 'turning')
    return done({ reading: read.value.reading, ...judgeTurning(window, newtonMetres(value), last) })
  const doubt = isFastenerLength(window)
    ? lengthDoubt(spec, procedure, run, { pass: place, fastener }, nanometres(value))
    : null
  if (doubt !== null && sure !== true) return { ok: false, problem: doubt }
  const sureness = doubt === null ? {} : { sure: true as const }
  if (window.kind === 'length' && window.of === 'stretch') {
    const stretch = stretchOf(procedure, run, fastener, value)
    if (stretch === null) return refused('length-missing', { fastener: shown })
    const judged = judgeStretch(window, stretch, command.torque, held ?? null, onTop, null)
    if (!judged.ok) return judged
    if (judged.value === null) return refused('torque-missing', { fastener: shown })
    return done({ reading: read.value.reading, ...sureness, stretch_nm: stretch, ...judged.value })
  }
  const verdict = moved ? 'moved' : verdictOf(window, turned + value)
  return done({ reading: read.value.reading, ...sureness, ...from, verdict })
}

/** A turning torque with its rise since the last one. */
export function judgeTurning(window: TurningWindow, torque: Torque, last: Torque | null) {
  const rise = riseOf(torque, last)
  return { turning: { rise_Nm: rise }, verdict: verdictOfTurning(window, torque, rise) }
}

export interface JudgedStretch {
  readonly verdict: 'within' | 'under' | 'over'
  readonly torque?: Reading
}

/** A stretch with the torque that belongs to it: what is typed, else what was read before. Null where one is missing. */
export function judgeStretch(
  window: LengthWindow,
  stretch: number,
  typed: PullCommand['torque'],
  heldWrench: HeldWrench | null,
  running: Torque,
  before: Reading | null,
): Outcome<JudgedStretch | null> {
  if (window.torque === undefined) return done({ verdict: verdictOf(window, stretch) })
  const read = typed === undefined ? null : takeReading(window.torque, typed, heldWrench, running)
  if (read?.ok === false) return read
  const torque = read?.value.reading ?? before
  if (torque === null) return done(null)
  const outcome = stretchOutcome(window, nanometres(stretch), torqueRead(torque))
  return done({ verdict: verdictOfStretch(outcome), torque })
}

/** Whether a pull is read off a torque wrench: only then does it matter which one. */
function isTorque(pass: Pass, fastener: string | null): boolean {
  const window = windowOf(pass, fastener)
  return window?.kind === 'torque' || (window?.kind === 'length' && window.torque !== undefined)
}

interface PullVerdict {
  readonly reading: Reading | null
  readonly verdict: Pull['verdict']
  readonly sure?: true
  readonly turning?: { readonly rise_Nm: number | null }
  readonly from_deg?: number
  readonly stretch_nm?: number
  readonly torque?: Reading
}
