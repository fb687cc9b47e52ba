import type { RichText } from '../rich.ts'
import type { Words } from '../words.ts'
import type { TermId } from './terms.ts'
import type { HelpGroup, helpTopics, HelpTopicId } from './topics.ts'

/** What stands on buttons and pages comes from the table that the window itself is written with, so that both say the same. */
export type HelpText = string | ((shown: Words) => RichText)

/** How one page or one kind of step is used. */
export interface HelpTopic {
  /** The name of the page or step, as it stands there where it has one. */
  readonly title: string | ((shown: Words) => string)
  readonly whatFor: HelpText
  /** What to do, line by line: three to seven. */
  readonly how: readonly HelpText[]
  readonly troubles: readonly { readonly when: HelpText; readonly then: HelpText }[]
}

/** The topics of one group. */
export type TopicsOf<Group extends HelpGroup> = Readonly<
  Record<(typeof helpTopics)[Group][number], HelpTopic>
>

/** The texts of the help in one language; they are loaded when the help is opened. */
export interface HelpWords {
  readonly page: {
    readonly title: string
    readonly back: string
    readonly search: string
    readonly searchExample: string
    readonly nothingFound: string
    readonly found: (facts: { readonly topics: number; readonly terms: number }) => string
    readonly topics: string
    readonly allTopics: string
    readonly groups: Readonly<Record<HelpGroup, string>>
    readonly whatFor: string
    readonly how: string
    readonly troubles: string
    /** Stands under each topic. */
    readonly manualFirst: string
    readonly glossary: string
    readonly aboutGlossary: string
    readonly term: string
    readonly meaning: string
    readonly demo: string
    /** The note beside the work in a guided first build. */
    readonly guide: {
      readonly title: string
      readonly read: string
      readonly more: string
      readonly leave: string
    }
  }
  readonly topics: Readonly<Record<HelpTopicId, HelpTopic>>
  /** What each word of the trade means, in a sentence. */
  readonly meanings: Readonly<Record<TermId, string>>
}

/** A text in which what is put in stands out, as it stands on a button or a page. */
export function say(texts: TemplateStringsArray, ...names: readonly string[]): RichText {
  return texts.flatMap((text, index) => [
    ...(text === '' ? [] : [text]),
    ...(names[index] === undefined ? [] : [{ strong: names[index] }]),
  ])
}
