import { en, type RichText, type Words } from '../../core/words/index.ts'

/** Stands in a name for whatever a test does not know of it. */
const any = '\u0000'

type Said = string | RichText
/** A text of the tables, with its facts: `(any) => en.x.y({ place: any })`. */
type Saying = (any: never) => Said

function plain(said: Said): string {
  return typeof said === 'string'
    ? said
    : said.map((part) => (typeof part === 'string' ? part : Object.values(part).join(''))).join('')
}

/** One space is as good as another: the page parts numbers and their units by one that does not break. */
function asPattern(text: string): string {
  return text
    .split(any)
    .map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(/\s/g, '\\s'))
    .join('.*')
}

function patternOf(sayings: readonly Saying[]): string {
  return sayings.map((saying) => asPattern(plain(saying(any as never)))).join('|')
}

/** Among the facts of a text: an amount or a part of a sentence as it stands on the screen. */
export const shown = (text: string) => text as never

/** A name on the screen, made by the table of texts, whatever the facts in it are: `named((any) => en.x.y({ place: any }))`. */
export function named(...names: readonly Saying[]): RegExp {
  return new RegExp(`^(${patternOf(names)})$`)
}

/** The same within a longer text: `saying((any) => en.problems['order-of-caps']({ caps: 5 }))`. */
export function saying(...texts: readonly Saying[]): RegExp {
  return new RegExp(patternOf(texts))
}

/** The same whatever its numbers are, such as a time that runs: `sayingWithNumbers((any) => en.x.y({ place: any, seconds: 60 }))`. */
export function sayingWithNumbers(text: Saying): RegExp {
  return new RegExp(patternOf([text]).replaceAll(/\d+/g, '\\d+'))
}

/** Where a reading is typed, at a check or at a pull. */
export function readingFieldIn(words: Words): RegExp {
  return named(
    (any) => words.steps.check.reading({ least: any, most: any }),
    (any) => words.run.readingIn({ unit: any, onScale: false }),
    (any) => words.limits.reading({ unit: any }),
  )
}

export const readingField = readingFieldIn(en)
