import { readingDistances, type ReadingDistance, type View } from '../../core/layout/index.ts'
import type { Theme } from '../canvas/look.ts'
import type { ShownLanguage } from '../shown-language.svelte.ts'
import { stageLanguages, type StageLanguage } from './stage-language.ts'

/** What a stage shows, and how: all of it stands in the address, so that any picture can be come back to. */
export interface Presentation {
  /** Id of an entry; empty for none. */
  readonly entry: string
  readonly look: Theme
  readonly lang: StageLanguage
  readonly distance: ReadingDistance
  readonly from: View['from']
}

/** The same for an entry that is loaded: the language that its bench follows. */
export interface OnStage extends Presentation {
  readonly language: ShownLanguage
}

export const looks = ['light', 'dark', 'print'] as const satisfies readonly Theme[]
export const sides = ['above', 'below'] as const satisfies readonly Presentation['from'][]

export function addressOf({ entry, look, lang, distance, from }: Presentation): string {
  return `#${new URLSearchParams({ entry, look, lang, distance: String(distance), from })}`
}

/** What is not said, or said wrongly, is as one would first look at it. */
export function shownAt(address: string): Presentation {
  const parameters = new URLSearchParams(address.replace(/^#/, ''))
  return {
    entry: parameters.get('entry') ?? '',
    look: looks.find((each) => each === parameters.get('look')) ?? 'light',
    lang: stageLanguages.find((each) => each === parameters.get('lang')) ?? 'en',
    distance: readingDistances.find((each) => String(each) === parameters.get('distance')) ?? 1,
    from: sides.find((each) => each === parameters.get('from')) ?? 'above',
  }
}
