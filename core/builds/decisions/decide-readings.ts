import {
  measure,
  partAtTemperature,
  readGrid,
  sensibleTemperature,
  type TypedReading,
} from '../../bearing/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import {
  lengthAmount,
  parseLength,
  parseTemperature,
  type Length,
  type Temperature,
} from '../../quantity/index.ts'
import type { EngineSpec, Fit } from '../../engine/index.ts'
import type { BearingCommand } from '../commands/bearing-commands.ts'
import type { BearingEvent, TypedLength } from '../events/bearing-events.ts'
import { expectedAt, measuringOf } from '../shells/expected-at.ts'

type CommandOf<Type extends BearingCommand['type']> = Extract<BearingCommand, { type: Type }>
type Events = Outcome<readonly BearingEvent[]>

/**
 * Every cell must be about what the spec expects there, and go with the others by the rule of `measure`; temperatures must be ones at which
 * somebody measures.
 */
export function noteReadings(spec: EngineSpec, fit: Fit, command: CommandOf<'note-readings'>): Events {
  const { step, position, part, cells } = command
  const expected = expectedAt(spec, fit, position, part === 'housing' ? 'bore' : 'journal')
  const grid = readGrid(cells, measuringOf(fit), expected)
  if (!grid.ok) return grid
  const partIs = readTemperature(command.partTemperature === '' ? '20 °C' : command.partTemperature)
  if (!partIs.ok) return partIs
  const body = partAtTemperature(fit, position, part, partIs.value)
  if (!body.ok) return body
  const suspect = measure(grid.value, body.value).suspects[0]
  if (suspect !== undefined && command.sure !== true)
    return refused('reading-outlier', {
      place: position,
      plane: suspect.plane + 1,
      direction: suspect.direction + 1,
      size: lengthAmount(suspect.size, 'mm'),
      middle: lengthAmount(suspect.middle, 'mm'),
    })
  const gauge = command.gaugeTemperature === '' ? null : readTemperature(command.gaugeTemperature)
  if (gauge !== null && !gauge.ok) return gauge
  const uncertainty = command.uncertainty === '' ? null : readUncertainty(command.uncertainty)
  if (uncertainty !== null && !uncertainty.ok) return uncertainty
  return done([
    {
      type: 'readings-noted',
      version: 1,
      step,
      fit: fit.id,
      position,
      part,
      cells: cells.map((plane, at) =>
        plane.map((cell, direction) => ({
          ...noted(cell, grid.value[at]![direction]!),
          ...(cell.readWith !== undefined && { readWith: cell.readWith }),
        })),
      ),
      partTemperature: { typed: command.partTemperature || '20 °C', celsius: partIs.value },
      gaugeTemperature: gauge === null ? null : { typed: command.gaugeTemperature, celsius: gauge.value },
      uncertainty:
        uncertainty === null ? null : noted({ typed: command.uncertainty, unit: 'µm' }, uncertainty.value),
      ...(suspect !== undefined && { sure: true as const }),
    },
  ])
}

/** The width of the thread is a clearance; a card's step is far below a millimetre. */
export function readThread(fit: Fit, command: CommandOf<'read-thread'>): Events {
  const { step, position, width, cardStep } = command
  const read = readAboveZero(position, 'thread-width', width)
  if (!read.ok) return read
  const stepRead = readAboveZero(position, 'card-step', cardStep)
  if (!stepRead.ok) return stepRead
  const common = { version: 1, step, fit: fit.id, position } as const
  return done([
    {
      type: 'thread-read',
      ...common,
      width: noted(width, read.value),
      ...(command.readWith !== undefined && { readWith: command.readWith }),
      cardStep: noted(cardStep, stepRead.value),
    },
  ])
}

/** A length as typed and what it comes to. */
export function noted({ typed, unit }: TypedReading, length: Length): TypedLength {
  return { typed: typed.trim(), unit, length_nm: length }
}

function readAboveZero(
  place: string,
  what: 'thread-width' | 'card-step',
  { typed, unit }: TypedReading,
): Outcome<Length> {
  const length = parseLength(typed, unit)
  if (!length.ok || length.value > 0) return length
  return refused('size-not-above-zero', { place, what, typed: typed.trim() })
}

/** With its unit, or a bare number in °C. */
function readTemperature(typed: string): Outcome<Temperature> {
  const withUnit = parseTemperature(typed)
  const read =
    !withUnit.ok && withUnit.problem.code === 'unit-missing' ? parseTemperature(`${typed} °C`) : withUnit
  return read.ok ? sensibleTemperature(read.value, 'measuring') : read
}

function readUncertainty(typed: string): Outcome<Length> {
  const length = parseLength(typed, 'µm')
  if (!length.ok || length.value >= 0) return length
  return refused('number-negative', { typed: typed.trim() })
}
