/** What a place in a spec must hold, by the name that the schema has for it. */
const kinds: Readonly<Record<string, string>> = {
  array: 'a list in [ ]',
  boolean: 'true or false',
  int: 'a whole number',
  number: 'a number without quotes',
  object: 'a group in { }',
  string: 'a text in quotes',
  tuple: 'a list in [ ]',
}

const relations = { 'at-least': 'at least', above: 'more than', 'at-most': 'at most', below: 'less than' }

export interface Limit {
  readonly relation: keyof typeof relations
  readonly limit: number
}
type None = Record<never, never>

/** What to write instead of what cannot be read in a spec or of a wrench: a clause without its stop. */
export const specAdvice = {
  // Of any value
  'write-kind': ({ kind }: { readonly kind: string }) => `write ${kinds[kind] ?? kind}`,
  'write-one-of': ({ values }: { readonly values: readonly (string | number)[] }) => {
    const listed = values.map((value) => (typeof value === 'string' ? `“${value}”` : value))
    return `write ${listed.length === 1 ? '' : 'one of '}${listed.join(', ')}`
  },
  'write-as-shown': (_: None) => 'write it in one of the ways that the README beside the demo specs shows',
  'turning-empty': (_: None) =>
    'give a most, a least or a most rise of the turning torque; leave it out where the manual has none',
  'type-number': (_: None) => 'type a number',
  'type-whole-number': (_: None) => 'type a whole number',
  'write-date': (_: None) => 'write the date as year, month and day, for example 2026-03-31',
  'write-another-way': (_: None) => 'write it another way',
  'write-another-name': (_: None) => 'write another name',
  'write-another-value': (_: None) => 'write another value',
  'number-within': ({ relation, limit }: Limit) => `give ${relations[relation]} ${limit}`,
  'entries-within': ({ relation, limit }: Limit) => `give ${relations[relation]} ${limit} of them`,
  'characters-within': ({ relation, limit }: Limit) => `write ${relations[relation]} ${limit} characters`,
  'multiple-of': ({ divisor }: { readonly divisor: number }) => `write a multiple of ${divisor}`,

  // Quantities and places
  'value-with-unit': ({ example }: { readonly example: string }) =>
    `write the value with its unit in quotes, for example "${example}"`,
  'length-within': ({ metres }: { readonly metres: number }) => `give a length of at most ${metres} m`,
  'size-above-zero': (_: None) => 'give a size above zero',
  'gap-not-negative': (_: None) => 'give a gap of zero or more',
  'torque-above-zero': (_: None) => 'give a torque above zero',
  'force-above-zero': (_: None) => 'give a force above zero',
  'two-lengths': (_: None) => 'write two lengths, along and across, for example ["120 mm", "-46 mm"]',

  // Wrenches
  'step-above-zero': (_: None) => 'give a step above zero',
  'angle-to-handle': (_: None) => 'give the angle to the line of the handle, 0 ° to 180 °',

  // Names
  'id-characters': (_: None) => 'use up to 40 letters, digits, hyphens and points',
  'id-of-javascript': (_: None) => 'choose another id: JavaScript keeps this one for itself',
  'languages-none': (_: None) => 'write the text in one language at least: “en”, “de” or “es”',
  'name-empty': (_: None) => 'write a name',
  'name-long': ({ most }: { readonly most: number }) => `keep the name below ${most} characters`,
  'sentence-empty': (_: None) => 'write a sentence',
  'sentence-long': ({ most }: { readonly most: number }) => `keep it below ${most} characters`,
  'number-of-fastener': (_: None) => 'a number is up to three digits, one capital letter before them at most',
  'mark-characters': (_: None) => 'a mark is one to three characters without a space',
  'grade-characters': (_: None) => 'a grade is one to three capital letters or digits',
  'colour-digits': (_: None) => 'write the colour as # and six capital hexadecimal digits',

  // What an engine has
  'angle-within-circle': (_: None) => 'give an angle of 0 ° up to, but not including, 360 °',
  'throws-none': (_: None) => 'a crank needs at least one throw',
  'throw-without-rods': (_: None) => 'name the rods that run on the pin',
  'outline-corners': (_: None) => 'an outline needs at least three corners',
  'cylinders-none': (_: None) => 'an engine has at least one cylinder',
  'faces-none': (_: None) => 'a case has at least one joint face',
  'order-empty': (_: None) => 'an order has at least one fastener',
  'passes-none': (_: None) => 'a procedure has at least one pass',
  'limits-empty': (_: None) => 'give the least, the most or both',
  'pistons-none': (_: None) => 'name one piston at least that gets these rings',
  'rings-none': (_: None) => 'name one ring at least',
  'angle-on-the-clock': (_: None) => 'give an angle of 0 ° up to 360 °, clockwise from the nose side',
  'angle-up-to-90': (_: None) => 'give an angle of 0 ° to 90 °',
  'angle-up-to-180': (_: None) => 'give an angle above 0 °, 180 ° at most',
  'places-none': (_: None) => 'name one place at least at which something is done',
  'measures-none': (_: None) => 'name one thing at least that is measured',
  'part-limit': (_: None) =>
    'say that it is new each time, or how long it may be used again: a limit in words, or so many builds in all',
  'part-unused': (_: None) => 'name one step at least that uses it',
  'parts-too-many': ({ most }: { readonly most: number }) =>
    `a parts list has at most ${most} lines: put alike parts into one line with their count, and leave out what this build does not fit`,
  'steps-none': (_: None) => 'a spec has at least one step',
  'fasteners-none': (_: None) => 'name one fastener at least',
  'version-of-spec': ({ version }: { readonly version: number }) =>
    `write ${version} in a spec of your own, and open one of a newer program with that: this one reads version ${version}`,

  // Values as manuals print them
  'torque-or-range': (_: None) => 'give the torque as one value, or as a range with its least and its most',
  'turn-or-in-all': (_: None) => 'give either how far it is turned, or how far in all',
  'others-with-in-all': (_: None) => 'leave it out where the pass says how far in all',
  'in-all-unclear': (_: None) =>
    'give an angle above what they were turned before, which must be the same for all of them, or give how far each is turned',
  'steps-do-not-come-out': (_: None) =>
    'no number of equal steps of this size comes to the value of the pass: give the size as a range, from and to, ' +
    'or another size',
  'steps-from-unlike': (_: None) =>
    'all fasteners of a value must have the same torque before, from which the steps count: write one pass for each step',
}
