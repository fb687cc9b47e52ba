import type { PhraseText } from '../../phrase.ts'
import type { ReasonText } from '../../reason.ts'

export interface At {
  /** Where in the file; empty for the whole of it. */
  readonly place: PhraseText
}

export interface InText {
  readonly line: number
  readonly column: number
}

/** What may stand at a place in JSON. */
const wantedParts = {
  value: 'a value',
  'value-or-end': 'a value or ]',
  key: 'a name in quotes',
  'key-or-end': 'a name in quotes or }',
  colon: 'a colon',
  'comma-or-bracket': 'a comma or ]',
  'comma-or-brace': 'a comma or }',
  nothing: 'the end of the file',
}

/** What has an id, a mark or a grade of its own. */
export const namedParts = {
  'balance-bearing': 'balance bearing',
  bead: 'bead',
  bearing: 'bearing',
  dowel: 'dowel',
  face: 'face',
  'face-part': 'part in a face',
  fastener: 'fastener',
  'fastener-group': 'fastener group',
  fit: 'fit',
  grade: 'grade',
  'housing-mark': 'housing mark',
  'journal-mark': 'journal mark',
  'oil-passage': 'oil passage',
  order: 'order',
  part: 'part',
  position: 'position',
  procedure: 'procedure',
  ring: 'ring',
  'ring-set': 'ring set',
  rod: 'rod',
  saddle: 'saddle',
  step: 'step',
  throw: 'throw of the crank',
  wheel: 'wheel of the crank',
}
type NamedPart = keyof typeof namedParts

/** Of what has a list of its own, where it is named there. */
const namedHere = { ...namedParts, order: 'order of this procedure', position: 'position of this fit' }

type FoundValue =
  | { readonly kind: 'list'; readonly length: number }
  | { readonly kind: 'group' }
  | { readonly kind: 'text'; readonly text: string; readonly isCut: boolean }
  | { readonly kind: 'value'; readonly json: string }

type Should = PhraseText | ReasonText

/** Sentences about reading a spec. What is wrong with the engine that a readable spec describes: `audit.ts`. */
export const specWords = {
  'spec-too-large': ({ mostCharacters }: { readonly mostCharacters: number }) =>
    `The file has more than ${mostCharacters / 1_000_000} million characters; no spec is that long. Choose the right file.`,
  'spec-not-json': (facts: InText & { readonly found: string; readonly wanted: keyof typeof wantedParts }) =>
    `The file is not JSON: line ${facts.line}, column ${facts.column} has ` +
    `${facts.found === '' ? 'nothing more' : `“${facts.found}”`} where ${wantedParts[facts.wanted]} must stand. Correct it there.`,
  'spec-key-twice': ({ line, column, key }: InText & { readonly key: string }) =>
    `Line ${line}, column ${column} gives ${key} for the second time in one group. Remove one of the two.`,
  'spec-too-deep': ({ line, column, levels }: InText & { readonly levels: number }) =>
    `Line ${line}, column ${column} is nested more than ${levels} deep; no spec is. Choose the right file.`,
  'spec-part-missing': ({ place, should }: At & { readonly should: Should }) =>
    `${capital(place)} is missing. ${capital(should)}${stop(should)}`,
  'spec-part-wrong': ({
    place,
    found,
    should,
  }: At & { readonly found: FoundValue; readonly should: Should }) =>
    `${place === '' ? 'The file' : capital(place)} is ${foundIn(found)}. ${capital(should)}${stop(should)}`,
  'spec-keys-unknown': ({ place, keys }: At & { readonly keys: readonly string[] }) =>
    `${place === '' ? 'The file' : capital(place)} has ${keys.map((key) => `“${key}”`).join(', ')}, which no spec has ` +
    'there. Correct the spelling, or remove it.',
  'spec-id-twice': (facts: {
    readonly what: NamedPart
    readonly of: { readonly what: 'fit' | 'procedure' | 'ring-set'; readonly id: string } | null
    readonly id: string
  }) =>
    `“${facts.id}” stands twice as ${namedParts[facts.what]}` +
    `${facts.of === null ? '' : ` of ${namedParts[facts.of.what]} “${facts.of.id}”`}. Give each its own.`,
  'spec-reference-dangling': ({ place, what, id }: At & { readonly what: NamedPart; readonly id: string }) =>
    `${capital(place)} names “${id}”, and there is no such ${namedHere[what]}. Correct the name, or add what it names.`,
  'spec-more-problems': ({ count }: { readonly count: number }) =>
    `There are ${count} more problems. Put the first ones right and read the file again.`,
}

function foundIn(found: FoundValue): string {
  switch (found.kind) {
    case 'list':
      return `a list of ${found.length}`
    case 'group':
      return 'a group in { }'
    case 'text':
      return `“${found.text}${found.isCut ? '…' : ''}”`
    case 'value':
      return found.json
  }
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}

function stop(text: string): string {
  return text.endsWith('.') ? '' : '.'
}
