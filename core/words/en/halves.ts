import { halvesIn, type HalfName, type Split } from '../formats/index.ts'

export type { HalfName, OfPair, Split } from '../formats/index.ts'

const halves = { upper: 'upper', lower: 'lower', left: 'left', right: 'right' } satisfies Record<
  HalfName,
  string
>

export const { namesOf, pairText } = halvesIn(halves)

/** The halves of a bearing and of two at once, wherever they are named. */
export const halfWords = {
  halves,
  either: {
    'upper-lower': `${halves.upper} or ${halves.lower}`,
    'left-right': `${halves.left} or ${halves.right}`,
  } satisfies Record<Split, string>,
}
