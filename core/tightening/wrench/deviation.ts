import type { Torque } from '../../quantity/index.ts'

const smallFullScaleNm = 10

const classes = {
  I: ['A', 'B', 'C', 'D', 'E'],
  II: ['A', 'B', 'C', 'D', 'E', 'F', 'G'],
} as const

/**
 * The classes of ISO 6789 in a type. Type I shows the torque: A is a bar that bends or twists, B has a dial,
 * C a display, D and E are screwdrivers. Type II is set to it: A is adjustable with a scale, B fixed, C
 * adjustable without a scale, D to F are screwdrivers, G is a bar that bends.
 */
export function classesOf(type: keyof typeof classes): readonly string[] {
  return classes[type]
}

/** A wrench by its class, where that is known, and its full scale. */
export interface ClassedWrench {
  readonly made?: { readonly type: keyof typeof classes; readonly class: string } | undefined
  readonly range: { readonly most: Torque }
}

/** Those that are held to ±4 % above 10 N·m full scale. */
const closeClasses: Readonly<Record<keyof typeof classes, readonly string[]>> = {
  I: ['B', 'C', 'E'],
  II: ['A', 'B', 'C'],
}

/**
 * The share of the true torque by which the set or shown one may be off it, either way (x_a − x_r)/x_r: 0.04 or 0.06 (ISO 6789-1,
 * 5.1.5; type II class A seen in print, the other classes from memory). ±6 % for all up to and including 10
 * N·m full scale, and for a wrench of which the class is not known.
 */
export function permittedDeviation({ made, range }: ClassedWrench): number {
  const close = made !== undefined && closeClasses[made.type].includes(made.class)
  return close && range.most > smallFullScaleNm ? 0.04 : 0.06
}
