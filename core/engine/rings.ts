import { z } from 'zod'
import { half, lengthOf, sum, type Length } from '../quantity/index.ts'
import { advise } from './advice.ts'
import { limits, type Limits, type Measure } from './measure.ts'
import { angleText, idText, lengthText, recordedName, sentenceText, shownName, sizeText } from './text.ts'

/**
 * Rings by what they do (ISO 6621-1): a compression ring seals, a scraper ring seals and scrapes, an oil control ring scrapes. An oil
 * control ring of several parts has two rails and an expander between them, all in one groove.
 */
export const ringKinds = ['compression', 'scraper', 'oil', 'rail', 'expander'] as const

/** A share of the bore: nothing that is a ring gap lies outside. */
const shareOfBore = z.number().gt(0).max(0.1)

const service = limits.optional()

/** How wide the gap must be between the ends of the ring in its bore, what ISO 6621 calls the closed gap. */
const endGap = z.union([
  z.strictObject({ new: limits, service }),
  /** By the bore: the least is a share of its diameter, never less than `minimum`; the most a larger share, where it is said. */
  z.strictObject({
    perBore: shareOfBore,
    minimum: lengthText.optional(),
    mostPerBore: shareOfBore.optional(),
    service,
  }),
])

/** An angle on the piston, clockwise from its nose side, looking at the crown. */
const clockAngle = angleText.refine((angle) => angle >= 0 && angle < 360, advise('angle-on-the-clock'))

/** A least angle between a gap and something else; more than a quarter leaves no place for it. */
const keepOff = angleText.refine((angle) => angle >= 0 && angle <= 90, advise('angle-up-to-90'))

const ring = z.strictObject({
  id: idText,
  name: shownName,
  kind: z.enum(ringKinds),
  /** Counted from the crown. */
  groove: z.int().min(1).max(6),
  /** What is seen on the side that lies towards the crown: `TOP`, `the dot`. Left out where either side may. */
  up: shownName.optional(),
  /** Left out for an expander alone, whose ends butt. */
  endGap: endGap.optional(),
  grooveClearance: z.strictObject({ new: limits, service }).optional(),
  gapAt: clockAngle,
})

const piston = z.strictObject({
  cylinder: z.int().min(1),
  /** What they are called: `Piston 1` in `Barrel 1`. */
  name: recordedName,
  bore: recordedName,
  /** Of its bore, where it is not that of the case. */
  diameter: sizeText.optional(),
})

/** The rings of alike pistons, from the crown down, with where their gaps stand. */
export const ringSet = z.strictObject({
  id: idText,
  name: shownName,
  pistons: z.array(piston).min(1, advise('pistons-none')).max(24),
  rings: z.array(ring).min(1, advise('rings-none')).max(12),
  /** How the ring lies and where the feeler goes, in words. */
  where: z.strictObject({ gap: sentenceText, groove: sentenceText.optional() }),
  clock: z.strictObject({
    /** The least between the gaps of neighbouring rings. */
    apart: angleText.refine((angle) => angle > 0 && angle <= 180, advise('angle-up-to-180')),
    /** How far a gap stays away from the ends of the pin, and from the thrust sides. */
    offPin: keepOff.optional(),
    offThrust: keepOff.optional(),
    /** The side on which combustion presses the piston against its bore, looking at the crown and towards the nose. */
    thrustSide: z.enum(['left', 'right']).optional(),
  }),
})

export type RingSet = z.output<typeof ringSet>
export type Ring = RingSet['rings'][number]
export type RingPiston = RingSet['pistons'][number]

/** The limits of the end gap in a bore, for a new ring and a used one; null for a ring without a rule. */
export function endGapIn({ endGap: rule }: Ring, bore: Length): Pick<Measure, 'new' | 'service'> | null {
  if (rule === undefined) return null
  if ('new' in rule) return rule
  const share = (part: number): Length => lengthOf(bore * part * 1e-6, 'mm')
  const byBore = share(rule.perBore)
  const least = rule.minimum === undefined || rule.minimum < byBore ? byBore : rule.minimum
  const most = rule.mostPerBore === undefined ? undefined : share(rule.mostPerBore)
  return { new: { least, ...(most !== undefined && { most }) }, service: rule.service }
}

/** The middle of limits, or the one there is; null without any. */
export function middleOf({ least, most }: Limits): Length | null {
  return least !== undefined && most !== undefined ? half(sum(least, most)) : (least ?? most ?? null)
}

/** A measure of one ring in one bore. */
export interface RingMeasure extends Measure {
  readonly ring: Ring
  readonly bore: Length
}

/**
 * What is measured of a set, ring by ring in each bore: the end gap, then the clearance in the groove where it has limits. Bores
 * of one diameter share a measure, so that it reads as one line of a manual.
 */
export function ringMeasures(set: RingSet, usualBore: Length): readonly RingMeasure[] {
  const known = measures.get(set)
  if (known?.usualBore === usualBore) return known.found
  const found = measureAll(set, usualBore)
  measures.set(set, { usualBore, found })
  return found
}

/** What `ringMeasures` found: a set never changes, and every confirmation asks. */
const measures = new WeakMap<
  RingSet,
  { readonly usualBore: Length; readonly found: readonly RingMeasure[] }
>()

function measureAll(set: RingSet, usualBore: Length): readonly RingMeasure[] {
  const bores = [...new Set(set.pistons.map(({ diameter }) => diameter ?? usualBore))]
  return bores.flatMap((bore, index) => {
    const pistons = set.pistons.filter(({ diameter }) => (diameter ?? usualBore) === bore)
    const suffix = index === 0 ? '' : `.${index + 1}`
    return set.rings.flatMap((ring): readonly RingMeasure[] => {
      const gap = endGapIn(ring, bore)
      const common = { name: ring.name, ring, bore }
      return [
        ...(gap === null
          ? []
          : [
              {
                ...{ ...common, ...gap, id: `${ring.id}${suffix}`, what: 'ring-gap' as const },
                ...{ at: pistons.map((each) => each.bore), where: set.where.gap },
              },
            ]),
        ...(ring.grooveClearance === undefined
          ? []
          : [
              {
                ...{ ...common, ...ring.grooveClearance, id: `${ring.id}.groove${suffix}` },
                ...{ what: 'groove-clearance' as const, at: pistons.map((each) => each.name) },
                where: set.where.groove ?? set.where.gap,
              },
            ]),
      ]
    })
  })
}
