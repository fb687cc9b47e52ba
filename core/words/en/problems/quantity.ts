import type { AmountText } from '../../amount.ts'

/** Sentences about numbers as they are typed. */
export const quantityWords = {
  'number-missing': (_: Record<never, never>) => 'Nothing was typed. Type a number, for example 12.5.',
  'number-unreadable': ({ typed }: { typed: string }) =>
    `“${typed}” is not a number. Type digits with a point or a comma, for example 12.5 or 12,5.`,
  'number-ambiguous': ({ typed }: { typed: string }) =>
    `“${typed}” has more than one point or comma. Type it with one at most, for example 1234.5.`,
  'number-out-of-range': ({ typed }: { typed: string }) =>
    `“${typed}” is too large or too small to be a reading. Read the scale and type it again.`,
  'number-negative': ({ typed }: { typed: string }) =>
    `“${typed}” is below zero. Read the scale and type it again.`,
  'unit-unknown': ({ typed, units }: { typed: string; units: readonly string[] }) =>
    `The unit of “${typed}” is not known here. Use ${units.join(', ')}.`,
  'units-disagree': ({ first, second, is }: { first: string; second: string; is: AmountText }) =>
    `${first} is ${is}, and ${second} stands beside it. One of the two is a misprint: find out which is right, and write that one.`,
  'tolerance-class-unknown': ({ typed }: { typed: string }) =>
    `“${typed}” has no tolerance class that is known here. Write a letter (D to H, JS, K, M, N, P, R, S; small ones for shafts) and ` +
    'a grade from 5 to 11, for example 62 mm H6, or write both limits.',
  'tolerance-class-size': ({ size }: { size: string }) =>
    `${size}: tolerance classes are for sizes above zero and up to 500 mm. Write both limits.`,
  'thread-designation-unknown': ({ typed }: { typed: string }) =>
    `“${typed}” is no thread that is known here. Write it as it is marked, for example M10, M10×1.25, 3/8-16 UNC or #10-32 UNF, or ` +
    'give its diameter and pitch.',
  'unit-missing': ({ typed, units }: { typed: string; units: readonly string[] }) =>
    `“${typed}” has no unit. Add one of ${units.join(', ')}.`,
}
