import { capOf, capsOn } from '../../joint/index.ts'
import { problem, type Problem } from '../../problem/index.ts'
import { inMillimetres } from '../../quantity/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import { numberOf } from './fastener-number.ts'
import { measureOrder } from './order-measure.ts'
import type { Place } from './pattern-ranks.ts'

/** Where the fasteners of an order are, in its order. One that the spec does not know is left out. */
export function placesOf(spec: EngineSpec, sequence: readonly string[]): readonly Place[] {
  const at = new Map(spec.fasteners.map((fastener) => [fastener.id, fastener.at]))
  return sequence.flatMap((id) => {
    const place = at.get(id)
    return place === undefined ? [] : [{ id, x: inMillimetres(place[0]), y: inMillimetres(place[1]) }]
  })
}

/**
 * What is unusual about an order of fasteners on a face, in words. Fasteners that hold separate caps are measured cap by
 * cap, and it is said so: in which order the caps come tells nothing about a joint.
 */
export function orderRemarks(
  spec: EngineSpec,
  faceId: string,
  sequence: readonly string[],
): readonly Problem[] {
  const places = placesOf(spec, sequence)
  const label = ({ id }: Place) => numberOf(spec, id) ?? id
  const face = spec.case.faces.find(({ id }) => id === faceId)
  const caps = face === undefined ? [] : capsOn(spec, face)
  const pieces = [...Map.groupBy(places, (place) => capOf(caps, place)).values()]
  const remarks = pieces.flatMap((piece) => measureOrder(piece, label).remarks)
  return pieces.length > 1 ? [problem('order-of-caps', { caps: pieces.length }), ...remarks] : remarks
}
