import { z } from 'zod'
import { problem, type Problem } from '../../problem/index.ts'
import {
  lengthAmount,
  shortAmount,
  torqueAmount,
  torqueOf,
  torqueUnits,
  type Length,
  type Torque,
} from '../../quantity/index.ts'
import {
  adviceMessage,
  advise,
  angleText,
  idText,
  nameText,
  sizeText,
  torqueText,
} from '../../engine/index.ts'
import { classesOf } from './deviation.ts'

/** The number by which a shop knows its wrench: as it is marked, a serial number say. */
export const numberText = z.string().trim().min(1).max(40)

/** What goes between the drive and the fastener and moves the fastener away from the drive's axis. */
export const adapter = z.strictObject({
  id: idText,
  name: nameText,
  /** E, from the axis of the drive to that of the fastener. */
  offset: sizeText,
  /** α, how it usually stands to the handle: 0° straight on, 90° square, 180° back along the handle. */
  angle: angleText.refine((angle) => angle <= 180, advise('angle-to-handle')),
})

/** A torque wrench of the shop, as its owner writes it down. */
export const wrench = z
  .strictObject({
    id: idText,
    name: nameText,
    number: numberText.optional(),
    /** The lowest and the highest mark of the scale. */
    range: z.strictObject({ least: torqueText, most: torqueText }),
    /** From where on it is stated to read true, where that is not a fifth of full scale. */
    statedMinimum: torqueText.optional(),
    scale: z.strictObject({
      unit: z.enum(torqueUnits),
      /** From one mark to the next, in the unit of the scale. */
      step: z.number().positive(advise('step-above-zero')),
    }),
    /** Type and class by ISO 6789, as marked on it. */
    made: z.strictObject({ type: z.enum(['I', 'II']), class: z.string().max(1) }).optional(),
    /** L, from the middle of the grip to the axis of the drive. */
    length: sizeText.optional(),
    adapters: z.array(adapter).max(20).default([]),
    calibration: z
      .strictObject({
        on: z.iso.date(advise('write-date')),
        /** Pulls made since then. */
        cycles: z.int().min(0),
      })
      .optional(),
  })
  .superRefine((written, context) => {
    for (const { path, problem } of faultsOf(written))
      context.addIssue({ code: 'custom', path: [...path], message: adviceMessage(problem) })
  })

export type Adapter = z.output<typeof adapter>
export type Wrench = z.output<typeof wrench>

interface Fault {
  readonly path: readonly PropertyKey[]
  readonly problem: Problem
}

/** What cannot be, though each value by itself can. */
function faultsOf({ range, statedMinimum, scale, made, length, adapters }: Wrench): readonly Fault[] {
  const shown = (torque: Torque) => torqueAmount(torque, scale.unit)
  const most = shown(range.most)
  const faults: Fault[] = []
  if (range.least >= range.most) {
    const facts = { least: shown(range.least), most }
    faults.push({ path: ['range'], problem: problem('wrench-range-reversed', facts) })
  }
  if (statedMinimum !== undefined && statedMinimum >= range.most) {
    const facts = { minimum: shown(statedMinimum), most }
    faults.push({ path: ['statedMinimum'], problem: problem('wrench-minimum-past-range', facts) })
  }
  if (torqueOf(scale.step, scale.unit) > range.most) {
    const facts = { step: shortAmount(scale.step, scale.unit, 6), most }
    faults.push({ path: ['scale', 'step'], problem: problem('wrench-step-past-range', facts) })
  }
  if (made !== undefined && !classesOf(made.type).includes(made.class)) {
    const facts = { ...made, known: classesOf(made.type) }
    faults.push({ path: ['made', 'class'], problem: problem('wrench-class-unknown', facts) })
  }
  adapters.forEach((each, index) => {
    if (length !== undefined && each.offset >= length)
      faults.push({ path: ['adapters', index, 'offset'], problem: adapterTooLong(each, length) })
  })
  return faults
}

/** Says that an adapter reaches as far as the wrench it sits on, or further: no setting is safe with that. */
export function adapterTooLong({ name, offset }: Omit<Adapter, 'id'>, length: Length): Problem {
  return problem('adapter-too-long', {
    adapter: name,
    offset: lengthAmount(offset, 'mm', 0),
    length: lengthAmount(length, 'mm', 0),
  })
}
