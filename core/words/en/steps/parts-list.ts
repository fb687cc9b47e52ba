import type { RichText } from '../../rich.ts'
import { counted } from '../formats.ts'

export interface OfPart {
  readonly name: string
  readonly count: number
}
type Reuse = 'new-each-time' | { readonly limit?: string | undefined; readonly uses?: number | undefined }

const reuse = (rule: Reuse) => {
  if (rule === 'new-each-time') return 'new each time'
  const limits = [
    ...(rule.limit === undefined ? [] : [rule.limit]),
    ...(rule.uses === undefined ? [] : [`in ${counted(rule.uses, 'build', 'builds')} in all`]),
  ]
  return `may be used again: ${limits.join('; ')}`
}
/** The count stands after the name, which is that of one: `Piston (4)`. */
const times = ({ name, count }: OfPart) => (count === 1 ? name : `${name} (${count})`)

/** The parts list of a spec: what is fitted, ordered and left over. */
export const partsList = {
  title: 'Parts of this step',
  order: 'Order list',
  times,
  part: ({ name, count, place }: OfPart & { readonly place: string }): RichText => [
    { strong: times({ name, count }) },
    `, ${place}`,
  ],
  reuse,
  isInNew: ({ name, count }: OfPart) => `${times({ name, count })}: in, new`,
  inNew: ({ count }: { readonly count: number }) => (count === 1 ? 'In, new' : `All ${count} in, new`),
  otherwise: 'Otherwise …',
  tickLater: 'It is in, tick parts later',
  /** Once the work of a step is done, where parts of it are not ticked. */
  later: 'Tick parts later',
  takeBack: 'Take the tick back',
  whyTakenBack: ({ name }: { readonly name: string }) => `${name}: why does it not count as fitted?`,
  /** What was said of some of a part. */
  tick: (facts: {
    readonly count: number
    readonly condition: 'new' | 'used-again'
    readonly before: number | null
    readonly reason: string | null
    readonly number: string | null
  }) =>
    `${facts.reason === null ? '✓' : '!'} ${facts.count} ${facts.condition === 'new' ? 'new' : 'used again'}` +
    `${facts.before === null ? '' : `, in ${counted(facts.before, 'build', 'builds')} before`}` +
    `${facts.number === null ? '' : `, no. ${facts.number}`}` +
    `${facts.reason === null ? '' : `, against the spec: ${facts.reason}`}`,
  form: {
    condition: 'They are',
    conditions: { new: 'new', 'used-again': 'used again' },
    count: ({ left }: { readonly left: number }) => `How many of ${left}`,
    before: 'In how many builds they were before',
    number: 'Supplier’s number, if there is one',
    why: {
      'new-each-time': 'The spec wants new ones each time. Why are these used again?',
      'used-up': 'They have reached their limit. Why are they used again?',
    },
    limit: ({ limit }: { readonly limit: string }) => `Only: ${limit}.`,
    tick: 'Note it so',
    countWrong: ({ left }: { readonly left: number }) => `Type a whole number from 1 to ${left}.`,
    beforeWrong: 'Type in how many builds they were, a whole number from 1 on.',
  },
  count: {
    whatFor:
      'Every part of the list is in the engine, or it is said where it is. Look into every tray and under the bench.',
    accounted: ({ parts }: { readonly parts: number }) =>
      `✓ All ${counted(parts, 'part', 'parts')} of the list are accounted for.`,
    left: ({ name, left, step }: { readonly name: string; readonly left: number; readonly step: string }) =>
      `${times({ name, count: left })} for “${step}”: not ticked.`,
    where: ({ name, left, step }: { readonly name: string; readonly left: number; readonly step: string }) =>
      `${times({ name, count: left })} for “${step}”: not ticked. In the engine: say so above. If not: where ${
        left === 1 ? 'is it' : 'are they'
      }, and why?`,
    usual: ['Left over, not needed', 'The old one stayed in place'],
    noteLeftOver: 'Note it as left over',
    leftOver: (facts: { readonly name: string; readonly count: number; readonly reason: string }) =>
      `${times(facts)} left over: ${facts.reason}`,
    done: 'The count is right',
    isDone: '✓ Counted.',
  },
  orderList: {
    title: 'Parts to order',
    whatFor:
      'What is not fitted yet. What may be used again is got only where the old one is past its limit.',
    nothing: 'Every part of the list is fitted.',
    part: 'Part',
    place: 'Place',
    count: 'Count',
    when: 'When',
    number: 'Supplier’s number',
    for: 'For',
    csv: 'Everything to order as CSV',
    shellsOf: ({ fit }: { readonly fit: string }) => `shell, ${fit}`,
    grade: ({ grade, size }: { readonly grade: string; readonly size: string | null }) =>
      `grade ${grade}${size === null ? '' : `, ${size}`}`,
  },
  sheet: {
    title: 'Parts',
    replaced: 'New',
    usedAgain: 'Used again',
    against: 'USED AGAIN AGAINST THE SPEC',
    againstOne: (facts: {
      readonly name: string
      readonly count: number
      readonly step: string
      readonly reason: string
    }) => `! ${times(facts)} (${facts.step}): ${facts.reason}`,
    left: 'Left over',
    open: 'Not accounted for',
    part: 'Part',
    fitted: 'Fitted',
    whenWho: 'When, who',
    notFitted: ({ count }: { readonly count: number }) => `! ${count} not accounted for`,
    leftOver: ({ count, reason }: { readonly count: number; readonly reason: string }) =>
      `${count} left over: ${reason}`,
  },
}
