import type { Words } from '../words.ts'
import { halvesIn } from '../formats/index.ts'

/** Of the feminine `mitad`. */
const halves = { upper: 'superior', lower: 'inferior', left: 'izquierda', right: 'derecha' }

export const { namesOf, pairText } = halvesIn(halves)

/** The halves of a bearing and of two at once, wherever they are named. */
export const halfWords: Pick<Words['engineParts'], 'halves' | 'either'> = {
  halves,
  either: {
    'upper-lower': `${halves.upper} o ${halves.lower}`,
    'left-right': `${halves.left} o ${halves.right}`,
  },
}
