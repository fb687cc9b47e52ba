/** The languages that the window and its hosts speak, by their tags (BCP 47); what has none of them is shown in the first. */
export const languages = ['en', 'de', 'es'] as const

export type Language = (typeof languages)[number]

/** Each language by its own name: found by somebody who can read no other. */
export const languageNames: Readonly<Record<Language, string>> = {
  en: 'English',
  de: 'Deutsch',
  es: 'Español',
}

/** Asks for one in all of them. */
export const languageQuestion = 'Language · Sprache · Idioma'

export function isLanguage(tag: string): tag is Language {
  return (languages as readonly string[]).includes(tag)
}

/** The first language of a person's list, `['de-AT', 'en-GB']`, that there are words of; null for none. */
export function languageOf(tags: readonly string[]): Language | null {
  const [first] = tags.map((tag) => tag.toLowerCase().split(/[-_]/)[0] ?? '').filter(isLanguage)
  return first ?? null
}
