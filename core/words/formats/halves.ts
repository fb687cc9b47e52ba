/** How a half of a bearing is called. */
export type HalfName = 'upper' | 'lower' | 'left' | 'right'
/** How the housing of a bearing is split. */
export type Split = 'upper-lower' | 'left-right'
/** The grades of the two halves of one bearing. Of a left and a right half, the left one stands as `upper`. */
export interface OfPair {
  readonly split: Split
  readonly upper: string
  readonly lower: string
}

/** The two halves of a bearing, the one that stands as `upper` in specs and entries first. */
const names: Readonly<Record<Split, readonly [HalfName, HalfName]>> = {
  'upper-lower': ['upper', 'lower'],
  'left-right': ['left', 'right'],
}

/** The two halves of a bearing as a language names them. */
export function halvesIn(halves: Readonly<Record<HalfName, string>>) {
  const namesOf = (split: Split): readonly [first: string, second: string] => {
    const [first, second] = names[split]
    return [halves[first], halves[second]]
  }
  /** `upper K, lower M`, or with another text between the two. */
  const pairText = ({ split, upper, lower }: OfPair, between = ', '): string => {
    const [first, second] = namesOf(split)
    return `${first} ${upper}${between}${second} ${lower}`
  }
  return { namesOf, pairText }
}
