import { z } from 'zod'
import type { Outcome } from '../problem/index.ts'
import { sentenceOf } from '../problem/index.ts'
import { parseAngle, parseForce, parseLength, parseTemperature, parseTorque } from '../quantity/index.ts'

/** A value with its unit, as a person writes it (`"24 N·m"`), turned into the type the core computes with. */
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

export const lengthText = withUnit((typed) => parseLength(typed), '63.5 mm')
export const torqueText = withUnit((typed) => parseTorque(typed), '24 N·m')
export const angleText = withUnit((typed) => parseAngle(typed), '90 °')
export const forceText = withUnit((typed) => parseForce(typed), '12 kN')
export const temperatureText = withUnit((typed) => parseTemperature(typed), '100 °C')

/** The name by which one part of a spec refers to another: letters, digits, `-`, `.`; unique within its list. */
export const idText = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9.-]{0,39}$/, 'use up to 40 letters, digits, hyphens and points')

/** A name that people read: one line, not empty. */
export const nameText = z.string().trim().min(1, 'write a name').max(80, 'keep the name below 80 characters')

/** A sentence or two that people read. */
export const sentenceText = z.string().trim().min(1, 'write a sentence').max(600, 'keep it below 600 characters')

/** A place in the engine's own frame. x runs along the crank axis from the nose, y across it. See `case.ts`. */
export const placeText = z.tuple([lengthText, lengthText], {
  error: 'write the place as two lengths, along and across, for example ["120 mm", "-46 mm"]',
})
