import { describe, expect, it } from 'vitest'
import {
  en as shown,
  helpTopics,
  helpWords,
  plainText,
  searchHelp,
  termIds,
  terms,
  titleOf,
  topicIds,
  type HelpWords,
} from '../../../core/words/index.ts'
import { topicOfPlace, topicOfStep } from '../../../renderer/help/topic-of.ts'

const languages = ['en', 'de', 'es'] as const
const help: Readonly<Record<(typeof languages)[number], HelpWords>> = {
  en: await helpWords.en(),
  de: await helpWords.de(),
  es: await helpWords.es(),
}

describe('the help', () => {
  it('lists each topic once', () => {
    expect(topicIds).toHaveLength(new Set(topicIds).size)
    expect(topicIds.length).toBeGreaterThanOrEqual(35)
    expect(Object.keys(help.en.topics).toSorted()).toEqual(topicIds.toSorted())
  })

  it('is opened by each topic of a page or a step, or is about what is done there', () => {
    const opened = new Set([...Object.values(topicOfPlace), ...Object.values(topicOfStep)])
    const within = [
      'start-build',
      'guided-build',
      'again-and-skip',
      'drawing',
      'interrupted',
      'measuring',
      'angle',
      'stretch',
      'flags',
      'own-order',
    ]
    const papers = ['finish', 'order-and-labels', 'second-person']
    expect(topicIds.filter((id) => !opened.has(id)).toSorted()).toEqual([...within, ...papers].toSorted())
  })

  describe.each(languages)('in %s', (language) => {
    const { topics, meanings } = help[language]

    it('has three to seven lines for each topic, each with something in it', () => {
      for (const id of topicIds) {
        const { whatFor, how, troubles } = topics[id]
        expect(how.length, id).toBeGreaterThanOrEqual(3)
        expect(how.length, id).toBeLessThanOrEqual(7)
        expect(troubles.length, id).toBeGreaterThan(0)
        const texts = [whatFor, ...how, ...troubles.flatMap(({ when, then }) => [when, then])]
        for (const text of texts) {
          const plain = plainText(text, shown)
          expect(plain, id).not.toMatch(/undefined|\[object|=>/)
          expect(plain.length, plain).toBeLessThanOrEqual(330)
        }
        expect(titleOf(topics[id], shown)).not.toBe('')
      }
    })

    it('says what each word of the glossary means, in one sentence', () => {
      for (const id of termIds) expect(meanings[id], id).toMatch(/^\p{Lu}[^.]+[.?]$/u)
    })

    it('names what the window names by its own text, and not the English one', () => {
      const marked = { ...shown, run: { ...shown.run, pause: 'PAUSE-BUTTON' } }
      expect(topics.run.how.map((line) => plainText(line, marked)).join(' ')).toContain('PAUSE-BUTTON')
    })

    it('has as many lines and as many names of the window in them as in English', () => {
      const named = (text: Parameters<typeof plainText>[0]) =>
        typeof text === 'string' ? [] : text(shown).filter((part) => typeof part !== 'string')
      for (const id of topicIds) {
        const [here, there] = [topics[id], help.en.topics[id]]
        expect(
          here.how.map((text) => named(text).length),
          id,
        ).toEqual(there.how.map((text) => named(text).length))
        expect(
          here.troubles.map(({ then }) => named(then)),
          id,
        ).toEqual(there.troubles.map(({ then }) => named(then)))
      }
    })
  })
})

describe('the glossary', () => {
  it('has each word once in each language', () => {
    expect(termIds.length).toBeGreaterThanOrEqual(60)
    for (const language of languages) {
      const words = termIds.map((id) => terms[id][language])
      expect(words.filter((word, at) => words.indexOf(word) !== at)).toEqual([])
    }
  })
})

describe('a search in the help', () => {
  const topicsOf = (language: (typeof languages)[number], query: string) =>
    searchHelp(help[language], shown, query).topics
  const termsOf = (language: (typeof languages)[number], query: string) =>
    searchHelp(help[language], shown, query).terms

  it.each([
    ['en', 'sealant', 'bead'],
    ['en', 'RING rings', 'rings'],
    ['de', 'stoss ringe', 'rings'],
    ['de', 'unterbrechung', 'interrupted'],
    ['de', 'Drehwinkel', 'angle'],
    ['es', 'cordon', 'bead'],
    ['es', 'INTERRUPCIÓN', 'interrupted'],
  ] as const)('in %s for “%s” finds the topic %s first', (language, query, topic) => {
    expect(topicsOf(language, query)[0]).toBe(topic)
  })

  it('puts those with the word in their title before those with it in their text', () => {
    const found = topicsOf('en', 'angle')
    expect(found[0]).toBe('angle')
    expect(found.length).toBeGreaterThan(1)
  })

  it('puts those with it as a word before those with it in a longer one: “par” is the Spanish torque, and stands in “para”', () => {
    const found = topicsOf('es', 'par')
    expect(found.slice(0, 3)).toContain('angle')
    expect(found.length).toBeGreaterThan(10)
  })

  it('finds what the window writes on a button that a topic names', () => {
    expect(topicsOf('de', shown.run.pause)).toContain('run')
  })

  it.each(languages)('in %s finds a word of the glossary by each of its languages', (language) => {
    for (const query of ['feeler gauge', 'Fühlerlehre', 'fuhlerlehre', 'galgas de espesores'])
      expect(termsOf(language, query)).toContain('feeler-gauge')
  })

  it('finds nothing by nothing, by signs alone, and by what is nowhere', () => {
    for (const query of ['', '  ', '—', 'carburettor'])
      expect(searchHelp(help.en, shown, query)).toEqual({ topics: [], terms: [] })
  })

  it('groups every topic', () => {
    expect(Object.keys(help.de.page.groups)).toEqual(Object.keys(helpTopics))
  })
})
