import { done, refused, type Outcome } from '../../problem/index.ts'
import { newtonMetres, type Torque } from '../../quantity/index.ts'
import type { Procedure } from '../../engine/index.ts'
import type { RunCommand } from './commands.ts'
import type { RunEvent } from './events.ts'
import { judgeStretch, judgeTurning } from './decide-pull.ts'
import { stretchOf } from '../reading/measured-length.ts'
import { counts } from './plan.ts'
import { openFlags } from './progress.ts'
import { runningTorque } from '../reading/prevailing.ts'
import { takeReading } from '../reading/reading.ts'
import { readReason } from './reason.ts'
import type { Run } from './run.ts'
import { lastTurning } from './turned-before.ts'
import { verdictOf, windowOf } from '../reading/window.ts'

type ReadAgain = Extract<RunCommand, { type: 'read-again' }>

/**
 * A flagged pull read once more: the reading is judged as the first one was, by the same wrench. Refuses
 * `not-flagged-reading` where no flag about that reading is open.
 */
export function decideReadAgain(
  procedure: Procedure,
  run: Run,
  { pull: number, reading, readWith, torque, reason: typed }: ReadAgain,
  turnedBefore: Torque | null,
): Outcome<readonly RunEvent[]> {
  const pull = run.pulls.find((each) => each.number === number && counts(each))
  const flagged = openFlags(run).some(
    (flag) => flag.pull === number && (flag.about === 'under' || flag.about === 'over'),
  )
  const pass = pull && procedure.passes[pull.pass]
  const window = pull && pass ? windowOf(pass, pull.fastener) : null
  if (!pull || !flagged || window === null) return refused('not-flagged-reading', { pull: number })
  const onTop = runningTorque(pull.running)
  const read = takeReading(window, reading, pull.held, onTop)
  if (!read.ok) return read
  const reason = readReason(typed, { what: 'pull-read-again' })
  if (!reason.ok) return reason
  const taken = { reading: read.value.reading, ...(readWith !== undefined && { readWith }) }
  if (window.kind === 'turning') {
    const last = lastTurning(run, pull.number) ?? turnedBefore
    const judged = judgeTurning(window, newtonMetres(read.value.value), last)
    const again = { type: 'pull-read-again', version: 1, procedure: procedure.id, pull: number } as const
    return done([{ ...again, ...taken, ...judged, reason: reason.value }])
  }
  const stretch = pull.stretch === null ? null : stretchOf(procedure, run, pull.fastener, read.value.value)
  if (stretch !== null && window.kind === 'length') {
    const judged = judgeStretch(window, stretch, torque, pull.held, onTop, pull.torque)
    if (!judged.ok) return judged
    if (judged.value === null) return refused('torque-missing', { fastener: pull.fastener })
    const again = { type: 'pull-read-again', version: 1, procedure: procedure.id, pull: number } as const
    return done([{ ...again, ...taken, ...judged.value, stretch_nm: stretch, reason: reason.value }])
  }
  return done([
    {
      type: 'pull-read-again',
      version: 1,
      procedure: procedure.id,
      pull: number,
      ...taken,
      verdict: verdictOf(window, pull.from + read.value.value),
      reason: reason.value,
    },
  ])
}
