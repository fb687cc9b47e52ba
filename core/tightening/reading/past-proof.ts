import { degrees, newtonMetres, torqueOf } from '../../quantity/index.ts'
import type { EngineSpec, Procedure } from '../../engine/index.ts'
import { explainPull } from '../explain-pull.ts'
import { isTorqueUnit, torqueAtFastener } from './reading.ts'
import type { Run } from '../run/run.ts'
import { turnedIn } from './short-turn.ts'

/**
 * Whether a pull as it was read loads its fastener past proof, by the usual friction: only then is it said to be stretched.
 * Null where the load cannot be calculated.
 */
export function isPastProof(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  pullNumber: number | null,
): boolean | null {
  const pull = run.pulls.find(({ number }) => number === pullNumber)
  if (pull === undefined || pull.fastener === null || pull.reading === null) return null
  const { unit } = pull.reading
  const read =
    unit === '°'
      ? degrees(turnedIn(pull))
      : isTorqueUnit(unit)
        ? newtonMetres(torqueOf(torqueAtFastener(pull.reading), unit))
        : null
  if (read === null) return null
  const explained = explainPull(spec, procedure, pull.pass, pull.fastener, read)
  return explained.ok && explained.value !== null ? explained.value.effect.ofProof.usual > 1 : null
}
