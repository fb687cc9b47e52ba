import { z } from 'zod'
import { sentenceOf, type Outcome } from '../problem/index.ts'
import {
  inMillimetres,
  limitsOfClass,
  parseAngle,
  parseForce,
  parseLength,
  parseTemperature,
  parseTorque,
  readBoth,
  readThread,
} from '../quantity/index.ts'

/** A value with its unit, as a person writes it (`"24 N·m"`), turned into what the core computes with. */
function withUnit<Value>(parse: (typed: string) => Outcome<Value>, example: string) {
  return z
    .string({ error: `write the value with its unit in quotes, for example "${example}"` })
    .transform((typed, context): Value => {
      const parsed = parse(typed)
      if (parsed.ok) return parsed.value
      context.addIssue({ code: 'custom', message: sentenceOf(parsed.problem) })
      return z.NEVER
    })
}

/** No engine is larger; a bound far inside what a length can hold, so that sums of lengths cannot leave it. */
const mostMillimetres = 100_000

/** A length or a place on an axis, of either sign, within ±100 m. */
export const lengthText = withUnit((typed) => readBoth(typed, parseLength), '63.5 mm').refine(
  (length) => Math.abs(inMillimetres(length)) <= mostMillimetres,
  'give a length of at most 100 m',
)

/** A length above zero: the size of a thing. */
export const sizeText = lengthText.refine((length) => length > 0, 'give a size above zero')

/** A length of zero or more: the gap between two things. */
export const gapText = lengthText.refine((length) => length >= 0, 'give a gap of zero or more')

/** Above zero: a wrench cannot be set to nothing. */
export const torqueText = withUnit((typed) => readBoth(typed, parseTorque), '24 N·m').refine(
  (torque) => torque > 0,
  'give a torque above zero',
)

/** A size with its tolerance class, as on a drawing (`"62 mm H6"`), as the limits that ISO 286 gives it. */
export const toleranceText = withUnit((typed) => limitsOfClass(typed), '62 mm H6')

/** A thread by its designation, `"M10×1.25"` or `"3/8-16 UNC"`. */
export const threadText = withUnit((typed) => readThread(typed), 'M10×1.25')

/** A force above zero. */
export const forceText = withUnit((typed) => readBoth(typed, parseForce), '12 kN').refine(
  (force) => force > 0,
  'give a force above zero',
)

export const angleText = withUnit((typed) => parseAngle(typed), '90 °')
export const temperatureText = withUnit((typed) => readBoth(typed, parseTemperature), '100 °C')

/**
 * The name by which one part of a spec refers to another: letters, digits, `-`, `.`; unique within its list. Names that
 * every JavaScript object has are refused: states are kept by id, and `constructor` would be found where nothing was put.
 */
export const idText = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9.-]{0,39}$/, 'use up to 40 letters, digits, hyphens and points')
  .refine((id) => !(id in {}), 'choose another id: JavaScript keeps this one for itself')

/** A name that people read: one line, not empty. */
export const nameText = z.string().trim().min(1, 'write a name').max(80, 'keep the name below 80 characters')

/** A sentence or two that people read. */
export const sentenceText = z
  .string()
  .trim()
  .min(1, 'write a sentence')
  .max(600, 'keep it below 600 characters')

const pairHint = 'write two lengths, along and across, for example ["120 mm", "-46 mm"]'

/** A place in the engine's own frame. x runs along the crank axis from the nose, y across it. See `case.ts`. */
export const placeText = z.tuple([lengthText, lengthText], { error: pairHint })

/** The extent of a thing along and across. */
export const extentText = z.tuple([sizeText, sizeText], { error: pairHint })
