import { correctedFloat, gapFault, washerFor } from '../../../core/bearing/index.ts'
import type { Washer } from '../../../core/bearing/index.ts'
import { sentenceOf } from '../../../core/problem/index.ts'
import { formatLength, half, nanometres, parseLength, sum } from '../../../core/quantity/index.ts'
import type { EngineSpec, Step } from '../../../core/engine/index.ts'

type Gap = NonNullable<Extract<Step, { kind: 'check' }>['gap']>

/** What the spec's table or limits say of a gap that was measured; `known` is what goes onto the sheet. */
export interface GapAdvice {
  readonly known: string | null
  /** Null where nothing is wrong. */
  readonly fault: string | null
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
    const fault = gapFault('The rods', 'side clearance', reading.value, limits)
    return { known: null, fault: fault && sentenceOf(fault) }
  }
  const { endFloat } = spec
  if (endFloat === undefined) return null
  const fault = gapFault(endFloat.saddle, 'end float', reading.value, endFloat)
  const limits = fault && sentenceOf(fault)
  if (endFloat.washers.length === 0) return { known: null, fault: limits }
  const supposed = supposedWasher(spec)
  const both = (washer: Washer | null) => nanometres(2 * (washer?.thickness ?? 0))
  const float =
    supposed === null || fitted === null
      ? reading.value
      : correctedFloat(reading.value, both(supposed), both(fitted))
  const washer = washerFor(endFloat, float)
  if (!washer.ok)
    return {
      known: 'Washers: not defined',
      fault: [limits, sentenceOf(washer.problem)].filter(Boolean).join(' '),
    }
  const { name, thickness } = washer.value
  const known = `Washers by the table: ${name}, ${formatLength(thickness, 'mm')} each`
  return { known, fault: limits }
}
