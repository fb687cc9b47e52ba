/** An order while it is tapped in: what is tapped comes last; the last one tapped again is taken back. */
export function tapped(sequence: readonly string[], fastener: string): readonly string[] {
  if (sequence.at(-1) === fastener) return sequence.slice(0, -1)
  return sequence.includes(fastener) ? sequence : [...sequence, fastener]
}

/** Two fasteners change places. */
export function swapped(sequence: readonly string[], one: string, other: string): readonly string[] {
  return sequence.map((each) => (each === one ? other : each === other ? one : each))
}

/** A fastener goes to another place, counted from 1; those between move up or back by one. */
export function movedToPlace(
  sequence: readonly string[],
  fastener: string,
  place: number,
): readonly string[] {
  if (!sequence.includes(fastener)) return sequence
  const others = sequence.filter((each) => each !== fastener)
  const index = Math.min(Math.max(place, 1), sequence.length) - 1
  return [...others.slice(0, index), fastener, ...others.slice(index)]
}
