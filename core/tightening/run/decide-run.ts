import { done, refused, type Outcome } from '../../problem/index.ts'
import type { Torque } from '../../quantity/index.ts'
import type { EngineSpec, Procedure } from '../../engine/index.ts'
import { decideLoosen, decideReplace, decideRestart } from './begin-again.ts'
import type { RunCommand } from './commands.ts'
import { decidePull } from './decide-pull.ts'
import { decideReadAgain } from './decide-read-again.ts'
import type { RunEvent } from './events.ts'
import { numberOf } from '../order/fastener-number.ts'
import { decideStart } from '../order/own-order.ts'
import { counts, lastLivePull, plannedPulls } from './plan.ts'
import { isRunDone, openFlags } from './progress.ts'
import { readReason } from './reason.ts'
import type { Flag, Run } from './run.ts'
import { remedyOf } from './flag-remedy.ts'

const version = 1

/**
 * What follows from a command to a run: the events to record, or why there are none. `run` is undefined until
 * it is started. Pure: nothing is changed.
 *
 * @param turnedBefore what the crank took to turn in the steps before; null where that was not read.
 */
export function decideRun(
  spec: EngineSpec,
  run: Run | undefined,
  command: RunCommand,
  turnedBefore: Torque | null = null,
): Outcome<readonly RunEvent[]> {
  const procedure = spec.procedures.find(({ id }) => id === command.procedure)
  if (procedure === undefined) return refused('procedure-unknown', { procedure: command.procedure })
  const name = procedure.name
  const common = { version, procedure: procedure.id } as const
  if (command.type === 'start-run')
    return run === undefined
      ? decideStart(spec, procedure, command)
      : refused('run-started-already', { name })
  if (run === undefined) return refused('run-not-started', { name })

  switch (command.type) {
    case 'declare-new':
      return decideNew(spec, procedure, run, command.group)
    case 'pull':
      return run.paused === null
        ? decidePull(spec, procedure, run, command, turnedBefore)
        : refused('run-paused', { name })
    case 'take-back':
      return run.paused === null
        ? decideTakeBack(spec, procedure, run, command)
        : refused('run-paused', { name })
    case 'note-problem': {
      const { fastener } = command
      if (fastener !== null && !plannedPulls(procedure).some((planned) => planned.fastener === fastener))
        return refused('fastener-not-in-procedure', {
          fastener: numberOf(spec, fastener) ?? fastener,
          name,
        })
      const text = readReason(command.text, { what: 'problem' })
      if (!text.ok) return text
      const pull = run.pulls.findLast((each) => each.fastener === fastener && counts(each))?.number ?? null
      return done([{ type: 'problem-noted', ...common, pull, fastener, text: text.value }])
    }
    case 'answer-flag': {
      const flag = openFlags(run).find(({ number }) => number === command.flag)
      if (flag === undefined) return refused('flag-not-open', { flag: command.flag })
      const remedy = remedyOf(spec, procedure, run, flag)
      if (remedy !== 'say')
        return refused(codeOf(remedy, run, flag), { fastener: numberOf(spec, flag.fastener) ?? '' })
      const answer = readReason(command.answer, { what: 'flag-answered' })
      return answer.ok
        ? done([{ type: 'flag-answered', ...common, flag: command.flag, answer: answer.value }])
        : answer
    }
    case 'read-again':
      return run.paused === null
        ? decideReadAgain(procedure, run, command, turnedBefore)
        : refused('run-paused', { name })
    case 'loosen-fastener':
      return run.paused === null
        ? decideLoosen(spec, procedure, run, command)
        : refused('run-paused', { name })
    case 'replace-fastener':
      return run.paused === null
        ? decideReplace(spec, procedure, run, command)
        : refused('run-paused', { name })
    case 'restart-run':
      return decideRestart(spec, procedure, run, command)
    case 'pause-run':
      if (run.paused !== null) return refused('run-paused', { name })
      if (isRunDone(procedure, run)) return refused('run-done', { name })
      return done([{ type: 'run-paused', ...common, reason: command.reason.trim() }])
    case 'resume-run':
      return run.paused === null
        ? refused('run-not-paused', { name })
        : done([{ type: 'run-resumed', ...common }])
    default:
      return command satisfies never
  }
}

/**
 * Only fasteners that this procedure pulls can be declared new, and once: it is a statement about the parts
 * that are fitted.
 */
function decideNew(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  group: string,
): Outcome<readonly RunEvent[]> {
  const found = spec.fastenerGroups.find(({ id }) => id === group)
  const pulled = new Set(plannedPulls(procedure).map(({ fastener }) => fastener))
  if (found === undefined || !spec.fasteners.some((each) => each.group === group && pulled.has(each.id)))
    return refused('group-not-in-procedure', { group: found?.name ?? group, name: procedure.name })
  if (run.declaredNew.includes(group)) return refused('declared-already', { group: found.name })
  return done([{ type: 'fasteners-declared-new', version, procedure: procedure.id, group }])
}

const remedyCodes = {
  replace: 'must-be-replaced',
  'begin-again': 'must-begin-again',
  'turn-on': 'turn-on-first',
} as const

function codeOf(remedy: keyof typeof remedyCodes, run: Run, flag: Flag) {
  const pull = run.pulls.find(({ number }) => number === flag.pull)
  return remedy === 'turn-on' && pull?.torque ? 'pull-on-first' : remedyCodes[remedy]
}

type TakeBack = Extract<RunCommand, { type: 'take-back' }>

function decideTakeBack(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  command: TakeBack,
): Outcome<readonly RunEvent[]> {
  const last = lastLivePull(run)
  if (last === null) return refused('nothing-to-take-back', {})
  if (last.number !== command.pull)
    return refused('not-the-last-pull', { last: numberOf(spec, last.fastener), pass: last.pass + 1 })
  const reason = readReason(command.reason, { what: 'pull-taken-back' })
  if (!reason.ok) return reason
  const isTurn = procedure.passes[last.pass]?.kind === 'angle'
  if (isTurn && command.notTurned !== true)
    return refused('turn-not-taken-back', { fastener: numberOf(spec, last.fastener) ?? '' })
  const common = { version, procedure: procedure.id, pull: last.number } as const
  return done([
    {
      type: 'pull-taken-back',
      ...common,
      ...(isTurn && { notTurned: true as const }),
      ...(command.mistyped === true && last.reading !== null && { mistyped: true as const }),
      reason: reason.value,
    },
  ])
}
