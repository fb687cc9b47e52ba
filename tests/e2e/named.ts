import { en, type Words } from '../../core/words/index.ts'

/** Stands in a name for whatever a test does not know of it. */
const any = '\u0000'

function asPattern(text: string): string {
  return text
    .split(any)
    .map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    .join('.*')
}

/** A name on the screen, made by the table of texts, whatever the facts in it are: `named(any => en.x.y({ place: any }))`. */
export function named(...names: readonly ((any: never) => string)[]): RegExp {
  return new RegExp(`^(${names.map((name) => asPattern(name(any as never))).join('|')})$`)
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
