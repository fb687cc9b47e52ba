import type { HelpText, HelpTopic, HelpWords } from './help-words.ts'
import { terms, type TermId } from './terms.ts'
import type { Language } from '../language.ts'
import type { Words } from '../words.ts'
import { helpTopics, type HelpTopicId } from './topics.ts'

export const topicIds: readonly HelpTopicId[] = Object.values(helpTopics).flat()
export const termIds = Object.keys(terms) as readonly TermId[]

/** Words of the glossary in the order of a dictionary of the language: `Ölkanal` stands among those with O, `ángulo` with A. */
export function inDictionaryOrder(language: Language, ids: readonly TermId[]): readonly TermId[] {
  const order = new Intl.Collator(language)
  return ids.toSorted((one, other) => order.compare(terms[one][language], terms[other][language]))
}

export interface FoundHelp {
  readonly topics: readonly HelpTopicId[]
  readonly terms: readonly TermId[]
}

/** A text as it is looked for: accents, capitals and signs do not count (NFD, Unicode Standard Annex 15). */
export function folded(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replace(/[^\p{L}\p{N}?+−]+/gu, ' ')
    .trim()
}

/** A text of the help without what stands out in it. */
export function plainText(text: HelpText, shown: Words): string {
  if (typeof text === 'string') return text
  return text(shown)
    .map((part) => (typeof part === 'string' ? part : Object.values(part).join('')))
    .join('')
}

export function titleOf({ title }: HelpTopic, shown: Words): string {
  return typeof title === 'string' ? title : title(shown)
}

/**
 * What has every word of the query in it, be it within a longer word. First comes what has them in its title or term, and among these
 * what has them as whole words: `par` is the Spanish torque, and stands in every `para`.
 */
export function searchHelp({ topics, meanings }: HelpWords, shown: Words, query: string): FoundHelp {
  const words = folded(query).split(' ').filter(Boolean)
  if (words.length === 0) return { topics: [], terms: [] }
  const has = (text: string) => words.every((word) => folded(text).includes(word))
  const hasWhole = (text: string) => words.every((word) => ` ${folded(text)} `.includes(` ${word} `))
  const firstBy = <Id>(ids: readonly Id[], name: (id: Id) => string, all: (id: Id) => string) => {
    const found = ids.filter((id) => has(`${name(id)} ${all(id)}`))
    const rankOf = (id: Id) =>
      hasWhole(name(id)) ? 0 : has(name(id)) ? 1 : hasWhole(`${name(id)} ${all(id)}`) ? 2 : 3
    return found
      .map((id) => ({ id, rank: rankOf(id) }))
      .toSorted((one, other) => one.rank - other.rank)
      .map(({ id }) => id)
  }
  return {
    topics: firstBy(
      topicIds,
      (id) => titleOf(topics[id], shown),
      (id) => textOf(topics[id], shown),
    ),
    terms: firstBy(
      termIds,
      (id) => Object.values(terms[id]).join(' '),
      (id) => meanings[id],
    ),
  }
}

function textOf({ whatFor, how, troubles }: HelpTopic, shown: Words): string {
  const parts = [whatFor, ...how, ...troubles.flatMap(({ when, then }) => [when, then])]
  return parts.map((part) => plainText(part, shown)).join(' ')
}
