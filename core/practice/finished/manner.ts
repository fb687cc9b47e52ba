import { middleOf, type Limits, type Part, type Step } from '../../engine/index.ts'
import { formatNumber, inMillimetres, nanometres, sum } from '../../quantity/index.ts'
import type { Chance } from '../chance.ts'

/** A value that is aimed at, with the limits that it must stay within; all in the unit. */
export interface AimedValue {
  readonly unit: 'N·m' | '°'
  readonly target: number
  readonly least: number
  readonly most: number
}

/** How one works who does everything right: what the instruments show, and what is said where the spec leaves it open. */
export interface Manner {
  /** As the instrument shows it, without its unit. */
  pulls(aimed: AimedValue): string
  /** As it is typed, in mm; empty without limits. */
  measures(limits: Limits): string
  /** What is read where something is to be noted. */
  notes(step: Step): string
  /** Why there is no photo. */
  withoutPhoto(step: Step): string
  /** Whether a part goes in a second time. */
  usesAgain(part: Part): boolean
}

/** Every value met to a thousandth, and everything new. */
export const exact: Manner = {
  pulls: ({ target }) => target.toFixed(3),
  measures: (limits) => inMm(middleOf(limits), 3),
  notes: ({ name }) => name,
  withoutPhoto: ({ name }) => name,
  usesAgain: () => false,
}

/** As many steps lie between the target and either limit; a hand that knows its work stays within the middle ones. */
const stepsToLimit = 10
const mostSteps = 5
const zero = nanometres(0)

/** As a hand does it: near the target and within the limits, drawn by chance; parts that may be used again are. */
export function byHand(chance: Chance, texts: Pick<Manner, 'notes' | 'withoutPhoto'>): Manner {
  const off = () => (chance.below(2 * mostSteps + 1) - mostSteps) / stepsToLimit
  const between = (target: number, least: number, most: number) => {
    const share = off()
    return target + share * (share < 0 ? target - least : most - target)
  }
  return {
    ...texts,
    pulls: ({ unit, target, least, most }) =>
      between(target, least, most).toFixed(unit === '°' ? 0 : most - least < 1 ? 2 : 1),
    measures: ({ least, most }) => {
      if (most === undefined && least === undefined) return ''
      const [from, to] = [inMillimetres(least ?? zero), inMillimetres(most ?? sum(least!, least!))]
      const drawn = between((from + to) / 2, from, to)
      return `${formatNumber(drawn, to - from < 0.05 ? 3 : 2)} mm`
    },
    usesAgain: ({ reuse }) => reuse !== 'new-each-time',
  }
}

function inMm(length: ReturnType<typeof middleOf>, digits: number): string {
  return length === null ? '' : `${formatNumber(inMillimetres(length), digits)} mm`
}
