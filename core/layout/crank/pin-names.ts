import { angleAmount, inMillimetres } from '../../quantity/index.ts'
import type { CrankThrow, EngineSpec } from '../../engine/index.ts'
import type { Words } from '../../words/index.ts'
import type { LaneName } from '../labels/lane-name.ts'
import type { Line } from '../labels/label.ts'
import type { View } from '../facts.ts'
import type { Sizes } from '../sizes.ts'
import type { Piece } from './pieces.ts'
import { pinAt } from './pieces.ts'

/** So near to straight or level a pin is said to be so. */
const nearly = Math.cos((12 * Math.PI) / 180)

/** Where a pin stands as a person sees it: towards them, away, on a side of the engine, or at an angle in between. */
export function pinStands(
  words: Words,
  { case: { sides } }: EngineSpec,
  one: CrankThrow,
  view: View,
): string {
  const { y, z } = pinAt(one, 1)
  const towards = z * (view.from === 'above' ? 1 : -1)
  const { pinStands: stands } = words.drawing
  if (towards > nearly) return stands.towards
  if (towards < -nearly) return stands.away
  if (y > nearly) return sides.plus
  if (y < -nearly) return sides.minus
  return words.amounts.amount(angleAmount(one.angle))
}

/** The pins of the crank where it lies in the case: the rods on each, and where it stands. */
export function pinLaneNames(
  words: Words,
  spec: EngineSpec,
  pieces: readonly Piece[],
  view: View,
  sizes: Sizes,
): readonly LaneName[] {
  const { rods } = spec.case
  return (spec.crank?.throws ?? []).flatMap((one): readonly LaneName[] => {
    const pin = pieces.find(({ id }) => id === `pin/${one.id}`)
    if (pin === undefined) return []
    const own = rods.filter(({ id }) => one.rods.includes(id)).toSorted((a, b) => a.at - b.at)
    const lines: readonly Line[] = [
      { text: own.map(({ id }) => id).join(' '), capital: sizes.name, weight: 'bold', role: 'label' },
      {
        text: pinStands(words, spec, one, view),
        capital: sizes.quiet,
        weight: 'regular',
        role: 'quiet-label',
      },
    ]
    const x = own.reduce((sum, { at }) => sum + inMillimetres(at), 0) / own.length
    const at = { x, y: pin.rounds[0]?.y ?? 0 }
    return [{ id: `pin/${one.id}/name`, about: `throw/${one.id}`, at, lines, edge: 'high', fromThing: false }]
  })
}
