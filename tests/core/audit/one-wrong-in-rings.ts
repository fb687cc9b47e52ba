import { named, nth, type Draft } from '../engine/demo.ts'
import type { OneWrong } from './one-wrong.ts'

type RingSet = NonNullable<Draft['ringSets']>[number]

/** The rings of Moor flat 4: top 45°, second 225°, rails 315° and 135° with an expander at 225°. */
const rings = (change: (set: RingSet) => unknown): OneWrong => [
  'moor-flat-4',
  (spec) => change(nth(spec.ringSets, 0)),
]
const gapAt = (angle: string) => rings((set) => (named(set.rings, 'second').gapAt = angle))

/** One thing wrong with rings and pistons. */
export const oneWrongInRings: Readonly<Record<string, OneWrong>> = {
  'piston-without-cylinder': rings((set) =>
    set.pistons.push({ cylinder: 5, name: 'Piston 5', bore: 'Barrel 5' }),
  ),
  'cylinder-with-two-ring-sets': rings((set) =>
    set.pistons.push({ cylinder: 4, name: 'Piston 5', bore: 'Barrel 5' }),
  ),
  'cylinder-without-rings': rings((set) => set.pistons.pop()),
  'rings-out-of-order': rings((set) => {
    named(set.rings, 'top').groove = 2
    named(set.rings, 'second').groove = 1
  }),
  'groove-not-whole': rings((set) => (set.rings = set.rings.filter(({ id }) => id !== 'expander'))),
  'ring-without-gap': rings((set) => delete named(set.rings, 'top').endGap),
  'ring-gaps-in-line': gapAt('50 °'),
  'ring-gap-over-pin': gapAt('200 °'),
  'ring-gap-on-thrust': gapAt('250 °'),
  'rings-never-measured': [
    'moor-flat-4',
    (spec) => {
      spec.steps = spec.steps.filter(({ id }) => id !== 'ring-gaps')
      named(spec.steps, 'rings-on').after = []
    },
  ],
  'hot-part-without-caution': [
    'moor-flat-4',
    (spec) => (named(spec.steps, 'pins-ready').dangers = ['spring-load']),
  ],
}
