import type { Cap } from '../../../../core/engine/index.ts'
import { flagProblem, isPastProof, type Flag } from '../../../../core/tightening/index.ts'
import type { RunDesk } from '../run-desk.svelte.ts'

/** The cap that a flag about turning the crank is about; null for any other flag, and where none is known. */
export function capOfFlag({ spec, procedure, run }: RunDesk, flag: Flag): Cap | null {
  const problem = run && flagProblem(spec, procedure, run, flag)
  const id = problem?.code === 'turning-over' ? (problem.facts.lookAt?.cap ?? null) : null
  return procedure.caps?.find((cap) => cap.id === id) ?? null
}

/** The pass of a flag about the gap of the joint face, where the run can begin again from it; null for any other flag. */
export function gapPassOf(
  { procedure, run, restartPoints }: RunDesk,
  { pull: number, fastener, about }: Flag,
): number | null {
  const pull = run?.pulls.find((each) => each.number === number)
  const isGap = about === 'over' && fastener === null && procedure.passes[pull?.pass ?? -1]?.kind === 'seat'
  return isGap && restartPoints.includes(pull!.pass) ? pull!.pass : null
}

/** Whether the load of a flagged pull, as it was read, is calculated to be past proof. */
export function isStretched({ spec, procedure, run }: RunDesk, { pull }: Flag): boolean {
  return run !== undefined && isPastProof(spec, procedure, run, pull) === true
}
