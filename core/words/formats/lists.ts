/** How a language puts several names into a sentence: `1, 2 and 3`, `1, 2 or 3`. */
export interface Lists {
  readonly and: (texts: readonly string[]) => string
  readonly or: (texts: readonly string[]) => string
}

export function listsOf(locale: string): Lists {
  const conjunction = new Intl.ListFormat(locale, { type: 'conjunction' })
  const disjunction = new Intl.ListFormat(locale, { type: 'disjunction' })
  return { and: (texts) => conjunction.format(texts), or: (texts) => disjunction.format(texts) }
}
