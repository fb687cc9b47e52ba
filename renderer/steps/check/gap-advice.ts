import {
  correctedFloat,
  gapFault,
  isByThickness,
  thrustPairFor,
  washerFor,
  washersToGet,
} from '../../../core/bearing/index.ts'
import type { FittedWashers, ThrustPair, Washer } from '../../../core/bearing/index.ts'
import type { Problem } from '../../../core/problem/index.ts'
import { half, nanometres, parseLength, sum, type Length } from '../../../core/quantity/index.ts'
import type { EngineSpec, Step } from '../../../core/engine/index.ts'

type Gap = NonNullable<Extract<Step, { kind: 'check' }>['gap']>
type EndFloat = NonNullable<EngineSpec['endFloat']>

/** Washers chosen by their thickness, and what of them has to be got. */
export interface PairAdvice {
  readonly pair: ThrustPair
  readonly toGet: ReturnType<typeof washersToGet>
}

/** What the spec's table and limits say of a gap that was measured. */
export interface GapAdvice {
  /** Those that the table gives; null where it says nothing of such a gap. */
  readonly washers: Washer | 'not-defined' | null
  /**
   * Those that are chosen by thickness. `say-which`: nobody has said what it was measured with, and it is not within; null where
   * the spec has a table, or no washers.
   */
  readonly byThickness: PairAdvice | 'say-which' | 'none-fits' | null
  readonly faults: readonly Problem[]
}

/** The washers that the table of the spec supposes: those that it gives for a float in the middle of the limits. */
export function supposedWasher({ endFloat }: EngineSpec): Washer | null {
  if (endFloat === undefined) return null
  const found = washerFor(endFloat, half(sum(endFloat.least, endFloat.most)))
  return found.ok ? found.value : null
}

/**
 * Null while nothing that can be read is typed, or the spec says nothing of such a gap. `fitted` are the washers that it was
 * measured with, none where it is the gap for them; null while nobody has said.
 */
export function gapAdvice(
  spec: EngineSpec,
  gap: Gap,
  typed: string,
  fitted: FittedWashers | null,
): GapAdvice | null {
  const reading = parseLength(typed, 'mm')
  if (!reading.ok || reading.value < 0) return null
  if (gap === 'rod-side') {
    const limits = spec.rodSideClearance
    if (limits === undefined) return null
    const fault = gapFault(null, 'side-clearance', reading.value, limits)
    return { washers: null, byThickness: null, faults: fault ? [fault] : [] }
  }
  const { endFloat } = spec
  if (endFloat === undefined) return null
  const fault = gapFault(endFloat.saddle, 'end-float', reading.value, endFloat)
  const faults = fault ? [fault] : []
  if (endFloat.washers.length === 0) return { washers: null, byThickness: null, faults }
  if (isByThickness(endFloat)) return adviceByThickness(endFloat, reading.value, fitted, faults)
  return adviceByTable(spec, endFloat, reading.value, fitted?.[0] ?? supposedWasher(spec), faults)
}

function adviceByTable(
  spec: EngineSpec,
  endFloat: EndFloat,
  measured: Length,
  fitted: Washer | null,
  faults: readonly Problem[],
): GapAdvice {
  const supposed = supposedWasher(spec)
  const both = (washer: Washer | null) => nanometres(2 * (washer?.thickness ?? 0))
  const float =
    supposed === null || fitted === null ? measured : correctedFloat(measured, both(supposed), both(fitted))
  const washer = washerFor(endFloat, float)
  return washer.ok
    ? { washers: washer.value, byThickness: null, faults }
    : { washers: 'not-defined', byThickness: null, faults: [...faults, washer.problem] }
}

function adviceByThickness(
  endFloat: EndFloat,
  measured: Length,
  fitted: FittedWashers | null,
  faults: readonly Problem[],
): GapAdvice {
  if (fitted === null) {
    const byThickness = faults.length === 0 ? null : ('say-which' as const)
    return { washers: null, byThickness, faults }
  }
  const pair = thrustPairFor(endFloat, measured, fitted)
  // The gap without washers is no end float, and has no limits.
  const ofFloat = fitted.length === 0 ? [] : faults
  return pair.ok
    ? {
        washers: null,
        byThickness: { pair: pair.value, toGet: washersToGet(pair.value, fitted) },
        faults: ofFloat,
      }
    : { washers: null, byThickness: 'none-fits', faults: [...ofFloat, pair.problem] }
}
