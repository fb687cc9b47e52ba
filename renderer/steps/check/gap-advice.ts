import { correctedFloat, gapFault, washerFor } from '../../../core/bearing/index.ts'
import type { Washer } from '../../../core/bearing/index.ts'
import type { Problem } from '../../../core/problem/index.ts'
import { half, nanometres, parseLength, sum } from '../../../core/quantity/index.ts'
import type { EngineSpec, Step } from '../../../core/engine/index.ts'

type Gap = NonNullable<Extract<Step, { kind: 'check' }>['gap']>

/** What the spec's table and limits say of a gap that was measured. */
export interface GapAdvice {
  /** Those that the table gives; null where it says nothing of such a gap. */
  readonly washers: Washer | 'not-defined' | null
  readonly faults: readonly Problem[]
}

/** The washers that the table of the spec supposes: those that it gives for a float in the middle of the limits. */
export function supposedWasher({ endFloat }: EngineSpec): Washer | null {
  if (endFloat === undefined) return null
  const found = washerFor(endFloat, half(sum(endFloat.least, endFloat.most)))
  return found.ok ? found.value : null
}

/** Null while nothing that can be read is typed, or the spec says nothing of such a gap. `fitted` are both washers alike. */
export function gapAdvice(
  spec: EngineSpec,
  gap: Gap,
  typed: string,
  fitted: Washer | null,
): GapAdvice | null {
  const reading = parseLength(typed, 'mm')
  if (!reading.ok || reading.value < 0) return null
  if (gap === 'rod-side') {
    const limits = spec.rodSideClearance
    if (limits === undefined) return null
    const fault = gapFault(null, 'side-clearance', reading.value, limits)
    return { washers: null, faults: fault ? [fault] : [] }
  }
  const { endFloat } = spec
  if (endFloat === undefined) return null
  const fault = gapFault(endFloat.saddle, 'end-float', reading.value, endFloat)
  const faults = fault ? [fault] : []
  if (endFloat.washers.length === 0) return { washers: null, faults }
  const supposed = supposedWasher(spec)
  const both = (washer: Washer | null) => nanometres(2 * (washer?.thickness ?? 0))
  const float =
    supposed === null || fitted === null
      ? reading.value
      : correctedFloat(reading.value, both(supposed), both(fitted))
  const washer = washerFor(endFloat, float)
  return washer.ok
    ? { washers: washer.value, faults }
    : { washers: 'not-defined', faults: [...faults, washer.problem] }
}
