import fc from 'fast-check'
import { engineSpec, type EngineSpec } from '../../../../core/engine/index.ts'
import { newtonMetres } from '../../../../core/quantity/index.ts'
import type { HeldWrench } from '../../../../core/tightening/index.ts'
import { winchEngine } from '../winch-engine.ts'

/** The stretch that is asked for, in mm, and at what torque: 0.0022 mm for each N·m of a bolt as it should be. */
export const stretch = { least: 0.12, most: 0.15, torque: { least: 50, most: 75 } }
export const asItShouldBe = 0.0022
export const free = 80

/** What a hand does at one pull: how far off it is, whether a digit slips when the reading is typed, what happens besides. */
export interface Hand {
  readonly off: number
  readonly typo: boolean
  readonly reads: boolean
  readonly adapter: boolean
  /** Takes a stretch back that was confirmed, and measures it again. */
  readonly unsure: boolean
  readonly besides: 'nothing' | 'presses too early' | 'takes back' | 'loosens' | 'begins again'
}

export const hand: fc.Arbitrary<Hand> = fc.record({
  off: fc.oneof(
    fc.constant(0),
    fc.integer({ min: -60, max: 60 }).map((percent) => percent / 100),
  ),
  typo: fc.oneof(fc.constant(false), fc.constant(false), fc.boolean()),
  reads: fc.oneof(fc.constant(true), fc.constant(true), fc.boolean()),
  adapter: fc.boolean(),
  unsure: fc.boolean(),
  besides: fc.oneof(
    { weight: 6, arbitrary: fc.constant('nothing' as const) },
    {
      weight: 1,
      arbitrary: fc.constantFrom(
        'presses too early' as const,
        'takes back' as const,
        'loosens' as const,
        'begins again' as const,
      ),
    },
  ),
})

/** What is on the bench: a procedure, and how much its two bolts give way to a torque as they come out of the box. */
export interface Work {
  readonly engine: EngineSpec
  readonly bolts: readonly number[]
  /** What a nut out of the box takes to run down, in N·m, one after another; zeros where it runs free. */
  readonly nuts: readonly number[]
}

/** A 12 in wrench with a 4 in adapter straight on: the fastener has 4/3 of what its scale shows. */
export const withAdapter: HeldWrench = {
  wrench: 'Click',
  length_nm: 304_800_000,
  adapter: { name: 'Foot', offset_nm: 101_600_000, angle_deg: 0 },
}

/** The most that a nut of the bench may take to run down, in N·m. */
export const mostToRunDown = 8

export const seconds = 120

const includesPrevailing = { included: true, 'on-top': false, 'not-said': undefined }

function nutOf(nut: 'free' | keyof typeof includesPrevailing) {
  if (nut === 'free') return {}
  return { prevailing: newtonMetres(mostToRunDown), torqueIncludesPrevailing: includesPrevailing[nut] }
}

/**
 * A procedure over two bolts: torques that rise, at once or in steps, then turns at once or in steps, or tightening until
 * they are so much longer; with or without loosening half way, and a wait. Their nuts run free, or take a torque that its value has in
 * it, that goes on top, or of which nothing is said.
 */
export const work: fc.Arbitrary<Work> = fc
  .record({
    end: fc.constantFrom('turns' as const, 'stretch' as const),
    steps: fc.constantFrom(1, 1, 2, 3),
    waits: fc.boolean(),
    bolts: fc.array(fc.constantFrom(1, 1, 1, 0.75, 1.5), { minLength: 2, maxLength: 2 }),
    torques: fc.array(fc.integer({ min: 5, max: 60 }), { minLength: 1, maxLength: 3 }),
    angles: fc.array(fc.integer({ min: 20, max: 120 }), { maxLength: 3 }),
    /** Whether the later angles are printed as what they come to with those before. */
    inAll: fc.boolean(),
    recheck: fc.boolean(),
    seat: fc.boolean(),
    nut: fc.constantFrom(
      'free' as const,
      'included' as const,
      'not-said' as const,
      'on-top' as const,
      'on-top' as const,
    ),
    // One in six takes more than it may.
    nuts: fc.array(fc.constantFrom(1, 3, 5, 6.5, 8, 9), { minLength: 5, maxLength: 5 }),
    tolerance: fc.constantFrom(0.02, 0.05, 0.1),
    loosen: fc.boolean(),
    /** The two bolts hold one cap each, or one together, and the crank is turned after each; or nothing of that. */
    caps: fc.constantFrom(0, 0, 1, 2),
    reuse: fc.constantFrom('reusable' as const, 'reusable' as const, 'new-each-time' as const),
    pastMost: fc.constantFrom(undefined, 'replace' as const, 'begin-again' as const, 'begin-again' as const),
  })
  .map(
    ({
      end,
      steps,
      waits,
      bolts,
      torques,
      angles,
      inAll,
      recheck,
      seat,
      nut,
      nuts,
      tolerance,
      loosen,
      caps,
      reuse,
      pastMost,
    }) => {
      const sorted = torques.toSorted((a, b) => a - b)
      const rising = end === 'turns' ? sorted : sorted.slice(0, 1).map((each) => Math.min(each, 40))
      const limits = (target: number, unit: string) => ({
        target: `${target} ${unit}`,
        least: `${target * (1 - tolerance)} ${unit}`,
        most: `${target * (1 + tolerance)} ${unit}`,
      })
      const torque = (target: number) => ({ kind: 'torque', order: 'pair', ...limits(target, 'N·m') })
      /** In as many steps as that, from what was before. */
      const stepped = (from: number, to: number, unit: string) =>
        steps === 1 || to - from < 6
          ? {}
          : {
              inSteps: {
                least: `${((to - from) / steps) * 0.95} ${unit}`,
                most: `${((to - from) / steps) * 1.05} ${unit}`,
              },
            }
      const passes = [
        ...(end === 'stretch' ? [{ kind: 'length', order: 'pair' }] : []),
        ...(seat ? [{ kind: 'seat', order: 'pair' }] : []),
        ...rising.map((target, index) => ({
          ...torque(target),
          ...stepped(rising[index - 1] ?? 0, target, 'N·m'),
        })),
        ...(loosen ? [{ kind: 'loosen', order: 'pair' }, torque(rising[0]!)] : []),
        ...(recheck && end === 'turns'
          ? [{ ...torque(loosen ? rising[0]! : rising.at(-1)!), kind: 'recheck' }]
          : []),
        ...(waits ? [{ kind: 'action', instruction: 'Wait.', waitMinutes: seconds / 60 }] : []),
        ...(end === 'turns'
          ? angles.map((target, index) => {
              if (!inAll || index === 0)
                return {
                  ...{ kind: 'angle', order: 'pair' },
                  ...limits(target, '°'),
                  ...stepped(0, target, '°'),
                }
              const { target: total, ...around } = limits(
                angles.slice(0, index + 1).reduce((sum, each) => sum + each),
                '°',
              )
              return { kind: 'angle', order: 'pair', inAll: total, ...around }
            })
          : [
              {
                ...{ kind: 'tighten-to-stretch', order: 'pair' },
                ...{ least: `${stretch.least} mm`, most: `${stretch.most} mm` },
                torque: { least: `${stretch.torque.least} N·m`, most: `${stretch.torque.most} N·m` },
              },
            ]),
      ]
      const turning = { most: '4 N·m', mostRise: '1 N·m' }
      const turned = { kind: 'action', instruction: 'Turn the crank.', turning }
      const [procedure] = engineSpec.shape.procedures.parse([
        {
          id: 'rods',
          name: 'Rod bolts',
          face: 'rods',
          orders: [{ id: 'pair', sequence: ['rod-1', 'rod-2'] }],
          passes: caps === 0 ? passes : [...passes, turned],
        },
      ])
      const ofOneCap = [{ id: 'B1', fasteners: ['rod-1', 'rod-2'] }]
      const ofTwo = ['1', '2'].map((cap) => ({ id: `B${cap}`, fasteners: [`rod-${cap}`] }))
      const byCap = { capByCap: true as const, caps: caps === 1 ? ofOneCap : ofTwo }
      const procedures = [{ ...procedure!, ...(caps > 0 && byCap) }]
      const fastenerGroups = winchEngine.fastenerGroups.map((group) =>
        group.id === 'rod-bolts' ? { ...group, reuse, pastMost, ...nutOf(nut) } : group,
      )
      return {
        engine: { ...winchEngine, procedures, fastenerGroups },
        bolts: bolts.map((share) => share * asItShouldBe),
        nuts: nut === 'free' ? nuts.map(() => 0) : nuts,
      }
    },
  )
