import { smallPicture, type PictureLines, type SmallPicture } from '../small-picture.ts'
import { ofBearings, ofCase } from './engine.ts'
import { ofFasteners } from './fastener.ts'
import { ofPasses } from './passes.ts'
import { ofClearances, ofPlaces } from './places.ts'

/** Each picture by the field of a spec that it is about: what stands there, and whatever is in it. */
export const fieldPictures: Readonly<Record<string, () => PictureLines>> = {
  ...ofFasteners,
  ...ofCase,
  ...ofBearings,
  ...ofPasses,
  ...ofPlaces,
  ...ofClearances,
}

/**
 * The picture of a field, with what it measures between arrows; null where there is none.
 * @param field Where it stands in a spec, as `fastenerGroups.thread.pitch`: without the numbers of lists, but with the 0 and 1
 * of a place along and across, and with the kind of a pass: `procedures.passes.torque.target`.
 */
export function fieldPicture(field: string): SmallPicture | null {
  for (let at = field; at !== ''; at = at.slice(0, Math.max(0, at.lastIndexOf('.')))) {
    const lines = fieldPictures[at]
    if (lines !== undefined) return smallPicture(lines())
  }
  return null
}
