import { readingDistances, type ReadingDistance, type View } from '../../core/layout/index.ts'
import type { Theme } from '../canvas/look.ts'

/** What a stage shows, and how: all of it stands in the address, so that any picture can be come back to. */
export interface Presentation {
  /** Id of an entry; empty for none. */
  readonly entry: string
  readonly look: Theme
  readonly distance: ReadingDistance
  readonly from: View['from']
}

export const looks = ['light', 'dark', 'print'] as const satisfies readonly Theme[]
export const sides = ['above', 'below'] as const satisfies readonly Presentation['from'][]

export function addressOf({ entry, look, distance, from }: Presentation): string {
  return `#${new URLSearchParams({ entry, look, distance: String(distance), from })}`
}

/** What is not said, or said wrongly, is as one would first look at it. */
export function shownAt(address: string): Presentation {
  const parameters = new URLSearchParams(address.replace(/^#/, ''))
  return {
    entry: parameters.get('entry') ?? '',
    look: looks.find((each) => each === parameters.get('look')) ?? 'light',
    distance: readingDistances.find((each) => String(each) === parameters.get('distance')) ?? 1,
    from: sides.find((each) => each === parameters.get('from')) ?? 'above',
  }
}
