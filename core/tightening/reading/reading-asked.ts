import { nanometres, newtonMetres, type Torque } from '../../quantity/index.ts'
import type { EngineSpec, Procedure } from '../../engine/index.ts'
import { lengthDoubt } from './length-doubt.ts'
import { stretchOf } from './measured-length.ts'
import type { PlannedPull } from '../run/plan.ts'
import { takeReading, type TypedReading } from './reading.ts'
import type { Run } from '../run/run.ts'
import { lastTurning, riseOf } from '../run/turned-before.ts'
import { verdictOfTurning } from './turning.ts'
import { windowNow } from './turned.ts'
import { isFastenerLength, verdictOf } from './window.ts'
import type { HeldWrench } from '../wrench/held.ts'

/**
 * Whether what was typed is the very reading that a pull asks for: it can be read, is within its limits, and is a length that
 * need not be asked about. `running` is as for `takeReading`. What is not may be right all the same, and is for a person to confirm.
 */
export function isReadingAsked(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  planned: PlannedPull,
  typed: TypedReading,
  heldWrench: HeldWrench | null = null,
  running: Torque = newtonMetres(0),
): boolean {
  const window = windowNow(procedure, run, planned)
  if (window === null) return false
  const reading = takeReading(window, typed, heldWrench, running)
  if (!reading.ok) return false
  const { value } = reading.value
  if (window.kind === 'turning') {
    const rise = riseOf(newtonMetres(value), lastTurning(run))
    return verdictOfTurning(window, newtonMetres(value), rise) === 'within'
  }
  if (!isFastenerLength(window)) return verdictOf(window, value) === 'within'
  if (lengthDoubt(spec, procedure, run, planned, nanometres(value)) !== null) return false
  if (window.kind === 'free-length') return true
  const stretch = stretchOf(procedure, run, planned.fastener, value)
  return stretch !== null && verdictOf(window, stretch) === 'within'
}
