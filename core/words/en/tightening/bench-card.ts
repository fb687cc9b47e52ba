import type { RichText } from '../../rich.ts'
import { engineParts } from '../engine-parts.ts'

/** The card of a procedure, printed for the bench. */
export const benchCard = {
  foot: (facts: { readonly engine: string; readonly revision: string; readonly procedure: string }) =>
    `Bedplate bench card · ${facts.engine}, revision ${facts.revision} · ${facts.procedure}`,
  of: (facts: {
    readonly engine: string
    readonly revision: string
    readonly face: string
    readonly seenFrom: 'above' | 'below'
  }) =>
    `${facts.engine}, spec revision ${facts.revision}. ${facts.face}, seen from ${sides[facts.seenFrom]}.`,
  demo: ({ note }: { readonly note: string }) => `DEMO: ${note}`,
  group: (facts: {
    readonly group: string
    readonly threads: keyof typeof engineParts.threadStates
    readonly newEachTime: boolean
  }) =>
    `${facts.group}: threads ${engineParts.threadStates[facts.threads]}` +
    `${facts.newEachTime ? ', new ones each time' : ''}.`,
  /** A group that does not run free; `most` comes with its unit. */
  prevailing: (facts: {
    readonly group: string
    readonly most: string
    readonly counts: 'included' | 'on-top' | 'not-said'
  }) =>
    `${facts.group}: up to ${facts.most} to run down. ` +
    {
      included: 'The torque includes that: add nothing.',
      'not-said': 'Nothing says whether the torque includes that: add nothing.',
      'on-top':
        'The torque does not include that. Read it at each before it touches, off a wrench without an adapter, write it down, and add it to ' +
        'the torque and to its limits. One that takes more is undone: look at both threads.',
    }[facts.counts],
  runsDownAt: ({ group, unit }: { readonly group: string; readonly unit: string }) =>
    `${group} run down at, in ${unit}:`,
  /** `reason` is null while the order is not recorded; one text for each of the maker’s orders. */
  ownOrder: ({
    reason,
    ofMaker: givenOrder,
  }: {
    readonly reason: string | null
    readonly ofMaker: readonly (readonly string[])[]
  }): RichText => [
    { strong: '! Own order, not the maker’s.' },
    ` ${reason === null ? 'It is not recorded yet.' : `Why: ${reason}.`} ` +
      `The maker’s order: ${givenOrder.map((numbers) => numbers.join(', ')).join('; ')}.`,
  ],
  serial: 'Serial no.',
  name: 'Name',
  date: 'Date',
  wrench: 'Wrench no.',
  passes: 'Passes: tick each fastener as it is done',
  capByCap: 'Cap by cap: tick all passes of one before the next is begun',
  gap: 'gap',
  done: 'done',
  drawing: ({ face, procedure }: { readonly face: string; readonly procedure: string }) =>
    `${face}: ${procedure}`,

  /** A turn by an angle; angles with their sign, `flats` the same angle by the flats of the head. */
  turnBy: ({ angle }: { readonly angle: string }) => `Turn by ${angle}`,
  turn: (facts: {
    readonly angle: string
    readonly flats: string
    readonly least: string
    readonly most: string
  }) =>
    `Turn ${facts.angle}: ${facts.flats}. Right from ${facts.least} to ${facts.most}. Dashed: where the mark starts.`,
}

const sides = { above: 'above', below: 'below' }
