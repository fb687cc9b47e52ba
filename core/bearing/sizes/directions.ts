/**
 * In which directions a diameter is measured, in degrees clockwise from straight up, seen from the nose: evenly spread over
 * half a turn. A bore has its joint across: there a diameter says nothing of the bore, so its directions lie alike on both
 * sides of straight up and none lies in the joint. A journal has no joint, and begins with straight up.
 *
 * Throws a RangeError unless `count` is a whole number from 1.
 */
export function directionsAcross(part: 'housing' | 'journal', count: number): readonly number[] {
  if (!Number.isInteger(count) || count < 1)
    throw new RangeError(`a diameter is measured in one direction or more, not ${count}`)
  const between = 180 / count
  const first = part === 'housing' ? (-between * (count - 1)) / 2 : 0
  return Array.from({ length: count }, (_, direction) => first + direction * between)
}
