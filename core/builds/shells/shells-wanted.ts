import { orderList, type OrderLine, type BearingToFill } from '../../bearing/index.ts'
import type { EngineSpec, Fit } from '../../engine/index.ts'
import type { Half } from '../events/events.ts'
import { proposalsFor } from './proposals.ts'
import { bearingAt } from './bearing-at.ts'
import { bearingsIn, type BuildState } from '../events/state.ts'

/** The shells of a fit that have to be got: what the tray lacks or, where none was noted, all of them. */
export interface ShellsWanted {
  readonly from: 'tray-lacks' | 'no-tray'
  readonly lines: readonly OrderLine[]
  /** Bearings for which no shells are chosen or proposed, so that it is not known what they want. */
  readonly open: readonly string[]
}

/** By what was chosen; while nothing is, by what is proposed. */
export function shellsWanted(spec: EngineSpec, state: BuildState, fit: Fit): ShellsWanted {
  const { tray } = bearingsIn(state, fit.id)
  const proposals = new Map(proposalsFor(spec, state, fit.id).map((each) => [each.position, each]))
  const halfAt = (position: string, half: Half) =>
    state.shells[fit.id]?.find((choice) => choice.position === position && choice.half === half) ??
    proposals.get(position)?.[half] ??
    null
  const differ = (tray?.halves ?? fit.seating?.halves ?? 'alike') === 'differ'
  const filled: BearingToFill[] = []
  const open: string[] = []
  for (const position of fit.positions) {
    const { undersize } = bearingAt(state, fit, position)
    const wanted = (half: Half) => {
      const shell = halfAt(position, half)
      if (shell === null) return null
      const { grade, label = null } = shell
      return { grade, undersize, half: differ ? half : ('either' as const), label }
    }
    const [upper, lower] = [wanted('upper'), wanted('lower')]
    if (upper === null || lower === null) open.push(position)
    else filled.push({ position, upper, lower })
  }
  return { from: tray === null ? 'no-tray' : 'tray-lacks', lines: orderList({ filled }), open }
}
