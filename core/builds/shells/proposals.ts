import { problem } from '../../problem/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import { bearingAt, type BearingCase } from './bearing-at.ts'
import { fromTray } from './from-tray.ts'
import { noShells, proposalAt, type BearingProposal } from './proposal-at.ts'
import { bearingsIn, type BuildState } from '../events/state.ts'
import { memoized } from './memoized.ts'
import { fitOf } from '../steps/steps.ts'

/**
 * The shells for each position of a fit, as marks, readings, pins and the tray ask for; none while the marks of a part are
 * missing. Where a tray was noted, all bearings are filled from it at once.
 */
export function proposalsFor(spec: EngineSpec, state: BuildState, fitId: string): readonly BearingProposal[] {
  const marks = state.marks[fitId]
  if (!marks?.housing || !marks.journal) return []
  return proposalsOf(state, fitOf(spec, fitId), fitId)
}

const proposalsOf = memoized((state, fit): readonly BearingProposal[] => {
  const { tray } = bearingsIn(state, fit.id)
  const cases = fit.positions.map((position) => bearingAt(state, fit, position))
  return tray === null
    ? cases.map((bearing) => shellGone(bearing) ?? proposalAt(bearing))
    : fromTray(fit, tray, cases)
})

/** A bearing pinned to a shell of a tray that does not count any more; null for any other. */
function shellGone({ position, pins }: BearingCase): BearingProposal | null {
  const missingLabel = [pins?.upper, pins?.lower].flatMap((pin) =>
    pin && 'label' in pin ? [pin.label] : [],
  )[0]
  return missingLabel === undefined
    ? null
    : noShells(position, problem('tray-line-unknown', { position, label: missingLabel }))
}
