import { z } from 'zod'
import type { Outcome } from '../problem/index.ts'
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
  readTorque,
  type Torque,
  type TorqueUnit,
} from '../quantity/index.ts'
import { adviceMessage, advise } from './advice.ts'
import { firstWritten, translated } from './translations.ts'

/** A value with its unit, as a person writes it (`"24 N·m"`), turned into what the core computes with. */
function withUnit<Value>(parse: (typed: string) => Outcome<Value>, example: string) {
  return z
    .string({ error: advise('value-with-unit', { example }) })
    .meta({ examples: [example] }) // for the JSON Schema, which editors of text read
    .transform((typed, context): Value => {
      const parsed = parse(typed)
      if (parsed.ok) return parsed.value
      context.addIssue({ code: 'custom', message: adviceMessage(parsed.problem) })
      return z.NEVER
    })
}

/** No engine is larger; a bound far inside what a length can hold, so that sums of lengths cannot leave it. */
const mostMillimetres = 100_000

/** A length or a place on an axis, of either sign, within ±100 m. */
export const lengthText = withUnit((typed) => readBoth(typed, parseLength), '63.5 mm').refine(
  (length) => Math.abs(inMillimetres(length)) <= mostMillimetres,
  advise('length-within', { metres: mostMillimetres / 1000 }),
)

/** A length above zero: the size of a thing. */
export const sizeText = lengthText.refine((length) => length > 0, advise('size-above-zero'))

/** A length of zero or more: the gap between two things. */
export const gapText = lengthText.refine((length) => length >= 0, advise('gap-not-negative'))

/** Above zero: a wrench cannot be set to nothing. */
export const torqueText = withUnit((typed) => readBoth(typed, parseTorque), '24 N·m').refine(
  (torque) => torque > 0,
  advise('torque-above-zero'),
)

/** A torque above zero with the unit in which it is printed, the first one where there are two. */
export const printedTorqueText = z
  .string({ error: advise('value-with-unit', { example: '2.5 N·m' }) })
  .meta({ examples: ['2.5 N·m'] })
  .transform((typed, context): { readonly torque: Torque; readonly unit: TorqueUnit } => {
    const torque = readBoth(typed, parseTorque)
    const printed = torque.ok ? readTorque(typed.split('(')[0] ?? '', 'N·m') : torque
    if (torque.ok && printed.ok && torque.value > 0) return { torque: torque.value, unit: printed.value.unit }
    const message = printed.ok ? advise('torque-above-zero') : adviceMessage(printed.problem)
    context.addIssue({ code: 'custom', message })
    return z.NEVER
  })

/** A size with its tolerance class, as on a drawing (`"62 mm H6"`), as the limits that ISO 286 gives it. */
export const toleranceText = withUnit((typed) => limitsOfClass(typed), '62 mm H6')

/** A thread by its designation, `"M10×1.25"` or `"3/8-16 UNC"`. */
export const threadText = withUnit((typed) => readThread(typed), 'M10×1.25')

/** A force above zero. */
export const forceText = withUnit((typed) => readBoth(typed, parseForce), '12 kN').refine(
  (force) => force > 0,
  advise('force-above-zero'),
)

export const angleText = withUnit((typed) => parseAngle(typed), '90 °')
export const temperatureText = withUnit((typed) => readBoth(typed, parseTemperature), '100 °C')

/**
 * The name by which one part of a spec refers to another: letters, digits, `-`, `.`; unique within its list. Names that
 * every JavaScript object has are refused: states are kept by id, and `constructor` would be found where nothing was put.
 */
export const idText = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9.-]{0,39}$/, advise('id-characters'))
  .refine((id) => !(id in {}), advise('id-of-javascript'))

const longestName = 80
const longestSentence = 600

/** A name that is the same in every language: one line, not empty. */
export const nameText = z
  .string({ error: advise('write-kind', { kind: 'string' }) })
  .trim()
  .min(1, advise('name-empty'))
  .max(longestName, advise('name-long', { most: longestName }))

/** A name that people read, in one language or in several. */
export const shownName = translated(nameText).meta({ id: 'name' })

/** The name of something that has no id and that entries of a build refer to. */
export interface RecordedName {
  /** As entries have it: in the first language of the file, whatever language is shown. */
  readonly key: string
  /** As people read it. */
  readonly text: string
}

/** Such a name, in one language or in several. */
export const recordedName = shownName.transform((text): RecordedName => ({ key: firstWritten(text), text }))

/** A sentence or two that people read, in one language or in several. */
export const sentenceText = translated(
  z
    .string()
    .trim()
    .min(1, advise('sentence-empty'))
    .max(longestSentence, advise('sentence-long', { most: longestSentence })),
).meta({ id: 'sentence' })

const pairHint = advise('two-lengths')

/** A place in the engine's own frame. x runs along the crank axis from the nose, y across it. See `case.ts`. */
export const placeText = z.tuple([lengthText, lengthText], { error: pairHint })

/** The extent of a thing along and across. */
export const extentText = z.tuple([sizeText, sizeText], { error: pairHint })
