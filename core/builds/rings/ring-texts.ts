import type { RingSet, SetGap } from '../../engine/index.ts'
import { amountsIn, degrees } from '../../quantity/index.ts'
import type { Words } from '../../words/index.ts'
import type { StepMeasure } from '../limits/measures-in.ts'

/** What is measured, as people call it: that of a ring says whether it is its end gap or its place in the groove. */
export function measureName(words: Words, { name, ring, what }: StepMeasure): string {
  if (ring === undefined || (what !== 'ring-gap' && what !== 'groove-clearance')) return name
  return words.rings.measures[what]({ ring: name })
}

/** Each ring with the angle at which its gap stands, in the order of the set. */
export function gapTexts(
  words: Words,
  { rings }: RingSet,
  gaps: readonly SetGap[],
): readonly { readonly ring: string; readonly angle: string }[] {
  const shown = amountsIn(words)
  return rings.flatMap(({ id, name }) => {
    const gap = gaps.find(({ ring }) => ring === id)
    return gap === undefined ? [] : [{ ring: name, angle: shown.angle(degrees(gap.degrees)) }]
  })
}
