import type { EngineSpec } from '../../engine/index.ts'
import { liftedReason, numbersOf, type RunCommand, type RunEvent } from '../../tightening/index.ts'

/** As `commandOf`, for what happens in a run; the numbers of an own order are the spec's. */
export function runCommandOf(spec: EngineSpec, event: RunEvent): RunCommand | null {
  const { procedure } = event
  switch (event.type) {
    case 'run-started': {
      if (event.ownOrder === undefined) return { type: 'start-run', procedure }
      const orders = event.ownOrder.orders.map(({ order, sequence }) => ({
        order,
        typed: numbersOf(spec, sequence).join(' '),
      }))
      return { type: 'start-run', procedure, own: { reason: event.ownOrder.reason, orders } }
    }
    case 'fasteners-declared-new':
      return { type: 'declare-new', procedure, group: event.group }
    case 'fastener-pulled': {
      const {
        pass,
        fastener,
        cap,
        reading,
        readWith,
        torque,
        running,
        held,
        waited_s,
        waitShortened,
        overTime,
        verdict,
        outOfOrder,
      } = event
      return {
        type: 'pull',
        procedure,
        pass,
        fastener,
        ...(cap !== undefined && { cap }),
        reading: reading === null ? null : { typed: reading.typed, unit: reading.unit },
        ...(readWith !== undefined && { readWith }),
        ...(torque !== undefined && { torque: { typed: torque.typed, unit: torque.unit } }),
        ...(running !== undefined && { running: { typed: running.typed, unit: running.unit } }),
        ...(waited_s !== undefined && {
          waited: { seconds: waited_s, shortened: waitShortened ?? null },
        }),
        ...(held !== undefined && { held }),
        ...(overTime !== undefined && { overTime: overTime.reason }),
        moved: verdict === 'moved',
        // An entry without it may be of an earlier version, which did not ask or did not record the answer.
        sure: true,
        outOfOrder,
      }
    }
    case 'pull-taken-back':
      return {
        type: 'take-back',
        procedure,
        pull: event.pull,
        ...(event.notTurned === true && { notTurned: true as const }),
        ...(event.mistyped === true && { mistyped: true as const }),
        reason: event.reason,
      }
    case 'pull-read-again': {
      const { pull, reading, readWith, torque, reason } = event
      return {
        type: 'read-again',
        procedure,
        pull,
        reading: { typed: reading.typed, unit: reading.unit },
        ...(readWith !== undefined && { readWith }),
        ...(torque !== undefined && { torque: { typed: torque.typed, unit: torque.unit } }),
        reason,
      }
    }
    case 'problem-noted':
      return { type: 'note-problem', procedure, fastener: event.fastener, text: event.text }
    case 'flag-answered':
      return event.answer === undefined
        ? null
        : { type: 'answer-flag', procedure, flag: event.flag, answer: event.answer }
    case 'fastener-loosened':
      return loosenCommand(event)
    case 'fastener-replaced':
      return { type: 'replace-fastener', procedure, fastener: event.fastener }
    case 'run-restarted':
      return {
        type: 'restart-run',
        procedure,
        pass: event.pass,
        ...(event.measuredAgain === true && { measuredAgain: true as const }),
        ...(event.jointOpened === true && { jointOpened: true as const }),
        reason: liftedReason(event).reason ?? '',
      }
    case 'run-paused':
      return { type: 'pause-run', procedure, reason: event.reason }
    case 'run-resumed':
      return { type: 'resume-run', procedure }
    case 'pass-repeated':
      return null
    default:
      return event satisfies never
  }
}

function loosenCommand(event: Extract<RunEvent, { type: 'fastener-loosened' }>): RunCommand {
  const { procedure, fastener, reason = '', cause } = liftedReason(event)
  const command = { type: 'loosen-fastener', procedure, fastener, reason } as const
  return cause === 'to-be-replaced' || cause === 'to-begin-again' || cause === 'crank-stiff'
    ? { ...command, cause }
    : command
}
