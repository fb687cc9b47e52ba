import { z } from 'zod'
import { languages, type Language } from '../words/index.ts'
import { advise } from './advice.ts'

type ByLanguage = { readonly [Each in Language]?: string | undefined }

/** A text of a spec that its file has in more than one language, until `inLanguage` takes one of them. */
class Translations {
  readonly #texts: ByLanguage

  constructor(texts: ByLanguage) {
    this.#texts = texts
  }

  /** In this language, else in the first of the program's that there is. */
  in(language: Language): string {
    const texts = this.#texts
    const [first] = languages.flatMap((each) => texts[each] ?? [])
    return texts[language] ?? first ?? ''
  }
}

/**
 * A text that may be written once, or once for each of some languages: `"Crankcase"`, `{ "en": "Crankcase", "de": "Kurbelgehäuse" }`.
 * What it gives is a text as soon as `inLanguage` has been over the whole that it is a part of, which `readSpec` sees to; nothing
 * else may look at it before.
 */
export function translated(text: z.ZodType<string, string>): z.ZodType<string, string | ByLanguage> {
  const each = text.optional()
  const byLanguage = z
    .strictObject({ en: each, de: each, es: each } satisfies Record<Language, unknown>)
    .refine((texts) => Object.keys(texts).length > 0, advise('languages-none'))
    .transform((texts) => new Translations(texts))
  const either = z.union([text, byLanguage], { error: advise('write-kind', { kind: 'string' }) })
  return either as unknown as z.ZodType<string, string | ByLanguage>
}

/**
 * A text that may be in several languages as the file has it first: the same whatever language is shown, so that entries of a build can
 * refer to it. For what `translated` gives alone.
 */
export function firstWritten(text: string): string {
  const written: unknown = text
  return written instanceof Translations ? written.in(languages[0]) : text
}

/** Parts with what they are in a language, by the very object. */
export type TextsByPart = WeakMap<object, unknown>

/**
 * The same value with each text in this language; a part without translations is given as it is. What is `known` is not gone through
 * again, and what is gone through is known then.
 */
export function inLanguage<Value>(language: Language, value: Value, known: TextsByPart | null = null): Value {
  return valueIn(language, value, known) as Value
}

function valueIn(language: Language, value: unknown, known: TextsByPart | null): unknown {
  if (typeof value !== 'object' || value === null) return value
  if (value instanceof Translations) return value.in(language)
  const before = known?.get(value)
  if (before !== undefined) return before
  const now = partsTaken(language, value, known)
  known?.set(value, now)
  return now
}

function partsTaken(language: Language, value: object, known: TextsByPart | null): object {
  if (Array.isArray(value)) {
    const parts = value.map((each: unknown) => valueIn(language, each, known))
    return parts.some((each, index) => each !== value[index]) ? parts : (value as unknown[])
  }
  const entries = Object.entries(value)
  const parts = entries.map(([key, each]): [string, unknown] => [key, valueIn(language, each, known)])
  return parts.some(([, each], index) => each !== entries[index]?.[1]) ? Object.fromEntries(parts) : value
}

/**
 * A text as the file has it, or one of its translations, the first where there is none in the language: for the place of a fault,
 * before the file is known to be read.
 */
export function anyText(written: unknown, language?: Language): string | null {
  if (typeof written === 'string') return written
  if (typeof written !== 'object' || written === null || Array.isArray(written)) return null
  const texts = written as Readonly<Record<string, unknown>>
  const order = language === undefined ? languages : [language, ...languages]
  const [first] = order.flatMap((each) => (typeof texts[each] === 'string' ? [texts[each]] : []))
  return first ?? null
}
