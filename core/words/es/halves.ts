import type { HalfName, OfPair, Split } from '../en/halves.ts'

const halves: Readonly<Record<HalfName, string>> = {
  upper: 'superior',
  lower: 'inferior',
  left: 'izquierda',
  right: 'derecha',
}

/** The two halves of a bearing, the one that stands as `upper` in specs and entries first. */
const names: Readonly<Record<Split, readonly [HalfName, HalfName]>> = {
  'upper-lower': ['upper', 'lower'],
  'left-right': ['left', 'right'],
}

/** The halves of a bearing and of two at once, wherever they are named. */
export const halfWords = {
  halves,
  either: {
    'upper-lower': `${halves.upper} o ${halves.lower}`,
    'left-right': `${halves.left} o ${halves.right}`,
  } satisfies Record<Split, string>,
}

/** `superior K, inferior M`, or with another text between the two. */
export function pairText({ split, upper, lower }: OfPair, between = ', '): string {
  const [first, second] = namesOf(split)
  return `${first} ${upper}${between}${second} ${lower}`
}

export function namesOf(split: Split): readonly [first: string, second: string] {
  const [first, second] = names[split]
  return [halves[first], halves[second]]
}
