import type { EngineSpec, Procedure } from '../../engine/index.ts'
import { groupOf } from '../order/fastener-group.ts'
import { plannedIn } from './plan.ts'
import { openFlags } from './progress.ts'
import type { Flag, Run } from './run.ts'
import { isShort } from '../reading/short-turn.ts'
import { verdictOf, windowOf } from '../reading/window.ts'

/**
 * What settles a flag:
 * - `replace`: loosen the fastener, fit a new one, begin it again. It was stretched, and turning it back does not undo that.
 * - `begin-again`: loosen it and begin it again from its first pass.
 * - `turn-on`: continue from where it stands: turn what is left of a turn, tighten on what is not long enough.
 * - `say`: a person says what was done about it.
 */
export type FlagRemedy = 'replace' | 'begin-again' | 'turn-on' | 'say'

/**
 * The only way in which a flag is settled. What went past its upper limit is never left as it is: one that may be used once
 * only, or that is longer than it may be, is replaced; so is one that is turned by an angle, unless the spec says of its
 * group that it may begin again; any other begins again, unless the spec says that it is replaced.
 */
export function remedyOf(spec: EngineSpec, procedure: Procedure, run: Run, flag: Flag): FlagRemedy {
  const pull = run.pulls.find(({ number }) => number === flag.pull)
  if (flag.about === 'under') return pull !== undefined && isShort(run, pull) ? 'turn-on' : 'say'
  if (flag.about !== 'over' || flag.fastener === null || pull === undefined) return 'say'
  const group = groupOf(spec, flag.fastener)
  if (group?.reuse === 'new-each-time') return 'replace'
  const pass = procedure.passes[pull.pass]
  const window = pass && windowOf(pass, pull.fastener)
  if (window?.kind === 'length' && window.of === 'stretch' && pull.stretch !== null) {
    if (verdictOf(window, pull.stretch) === 'over') return 'replace'
    return group?.pastMost ?? 'begin-again'
  }
  if (group?.pastMost !== undefined) return group.pastMost
  return isTurned(procedure, flag.fastener) ? 'replace' : 'begin-again'
}

/** The open flag that bars a fastener from being pulled until it is settled by loosening it; null for none. */
export function barringFlag(spec: EngineSpec, procedure: Procedure, run: Run, fastener: string): Flag | null {
  const barring = openFlags(run).find((flag) => {
    if (flag.fastener !== fastener || flag.about !== 'over') return false
    const remedy = remedyOf(spec, procedure, run, flag)
    return remedy === 'replace' || remedy === 'begin-again'
  })
  return barring ?? null
}

/** Whether a fastener is turned by an angle anywhere in a procedure. */
function isTurned(procedure: Procedure, fastener: string): boolean {
  return procedure.passes.some(
    ({ kind }, pass) =>
      kind === 'angle' && plannedIn(procedure, pass).some((planned) => planned.fastener === fastener),
  )
}
