/** Sentences about threads, property classes and bearing faces. */
export const jointWords = {
  'thread-diameter-out-of-range': ({ diameterMm }: { diameterMm: number }) =>
    `A thread of ${diameterMm} mm is not made: ISO 261 has 1 mm to 300 mm. Check the diameter and its unit.`,
  'thread-pitch-out-of-range': ({ diameterMm, pitchMm }: { diameterMm: number; pitchMm: number }) =>
    `A pitch of ${pitchMm} mm cannot be cut on a diameter of ${diameterMm} mm. ` +
    'Give the distance from one thread to the next, which is at most a third of the diameter.',
  'property-class-unknown': (facts: {
    propertyClass: string
    diameterMm: number
    known: readonly string[]
  }) =>
    `There is no property class “${facts.propertyClass}” (ISO 898-1) or grade (SAE J429, ASTM A574) for a thread of ${facts.diameterMm} mm. ` +
    `Read the mark on the head again: it is one of ${facts.known.join(', ')}.`,
  'bearing-face-out-of-range': ({ outerMm, holeMm }: { outerMm: number; holeMm: number }) =>
    `A bearing face of ${outerMm} mm has nothing to bear on around a hole of ${holeMm} mm. ` +
    'Check both diameters: the face is the larger one.',
}
