import type { AmountText } from '../../amount.ts'
import { day } from '../formats.ts'

export interface WrenchRange {
  readonly name: string
  /** What the wrench would have to be set to, in the unit of its scale. */
  readonly setting: AmountText
}

const starts = {
  mark: 'its lowest mark',
  fifth: 'a fifth of its range',
  stated: 'its stated minimum',
} as const

/** Ends that go on again only so far round. */
const ends = { hexagon: 'a hexagon end', 'bi-hexagon': 'a bi-hexagon end' } as const

/** Sentences about wrenches, swings and orders. */
export const wrenchWords = {
  'wrench-range-reversed': ({ least, most }: { readonly least: AmountText; readonly most: AmountText }) =>
    `The range ends at ${most}, which is not above ${least}, where it starts. Write the lowest mark of ` +
    'the scale first, then the highest.',
  'wrench-minimum-past-range': (facts: { readonly minimum: AmountText; readonly most: AmountText }) =>
    `A minimum of ${facts.minimum} is not below ${facts.most}, the end of the scale. Read both ` +
    'off the wrench again.',
  'wrench-step-past-range': ({ step, most }: { readonly step: AmountText; readonly most: AmountText }) =>
    `A scale that goes in steps of ${step} has no mark below its end, ${most}. Give the distance from ` +
    'one mark to the next, in the unit of the scale.',
  'wrench-class-unknown': (facts: {
    readonly type: string
    readonly class: string
    readonly known: readonly string[]
  }) =>
    `ISO 6789 has no type ${facts.type} class “${facts.class}”. Read the mark on the wrench again: for this type it is one of ` +
    `${facts.known.join(', ')}.`,
  'adapter-too-long': (facts: {
    readonly adapter: string
    readonly offset: AmountText
    readonly length: AmountText
  }) =>
    `“${facts.adapter}” reaches out by ${facts.offset}, and the wrench is ${facts.length} long: no setting ` +
    'is safe with that. Measure both again: the wrench from the middle of its grip to its drive, the ' +
    'adapter from the drive to the fastener.',
  'wrench-length-missing': ({ name, adapter }: { readonly name: string; readonly adapter: string }) =>
    `${name} has no length noted, and the setting with “${adapter}” depends on it. Measure it from the ` +
    'middle of the grip to the drive, or turn the adapter square to the handle and set the wrench as ' +
    'without it.',
  'wrench-target-zero': (_: Record<never, never>) =>
    'No wrench can be set to nothing. Give the torque above zero, or have the fastener seated by hand.',
  'wrench-below-range': (
    facts: WrenchRange & { readonly starts: AmountText; readonly below: keyof typeof starts },
  ) =>
    `${facts.name} starts at ${facts.starts}; ${facts.setting} would be below ${starts[facts.below]}. ` +
    'Use a smaller one.',
  'wrench-above-range': ({ name, setting, ends }: WrenchRange & { readonly ends: AmountText }) =>
    `${name} ends at ${ends}; ${setting} would be past its scale. Use a larger one.`,
  'wrench-steps-too-coarse': (
    facts: WrenchRange & { readonly step: AmountText; readonly limits: AmountText },
  ) =>
    `${facts.name} goes in steps of ${facts.step}: no mark near ${facts.setting} keeps the fastener within ` +
    `${facts.limits}. Use one with a finer scale.`,
  'wrench-may-leave-window': (facts: {
    readonly name: string
    readonly reach: AmountText
    readonly limits: AmountText
  }) =>
    `${facts.name} may be off so far that the fastener gets ${facts.reach}; allowed are ${facts.limits}. ` +
    'Use one of a finer class, or have this one measured at that value.',
  'calibration-overdue': (facts: {
    readonly name: string
    readonly on: string
    readonly cycles: number
    readonly due: 'months' | 'cycles'
  }) =>
    `${facts.name} is due for calibration: ${
      facts.due === 'months'
        ? `the last was on ${day(facts.on)}, more than 12 months ago`
        : `${facts.cycles} cycles since ${day(facts.on)}, and 5000 are the most`
    } (ISO 6789: 12 months or 5000 cycles, whichever comes first). Have it calibrated, or use another.`,
  'calibration-unknown': ({ name }: { readonly name: string }) =>
    `No calibration of ${name} is noted. Have it calibrated, and note the date under Wrenches, or use another.`,
  'calibration-in-future': ({ name, on }: { readonly name: string; readonly on: string }) =>
    `${name} is noted as calibrated on ${day(on)}, which is still to come. Correct the date, or the clock of ` +
    'this computer.',
  'no-wrench-fits': (facts: {
    readonly target: AmountText
    readonly from: AmountText
    readonly to: AmountText
  }) =>
    `No wrench here can be set for ${facts.target}. Use one with its full scale between ${facts.from} ` +
    `and ${facts.to}, best where the value lies in the middle of its range.`,
  'choking-up': (_: Record<never, never>) =>
    'Taking a larger wrench nearer its head gives a finer feel and is only second best: its scale reads no ' +
    'lower for it, and a wrench that is not held at the middle of its grip may click early or late. Do not ' +
    'rely on it for a last pass.',

  'turn-out-of-range': ({ typed, most }: { readonly typed: AmountText; readonly most: AmountText }) =>
    `A turn of ${typed} is more than any pass asks for: ${most} is the most here, two full turns. Read ` +
    'the value again.',
  'turn-missing': (_: Record<never, never>) =>
    'A turn of 0° turns nothing. Give the angle to turn, for example 90°.',
  'room-too-small': (facts: {
    readonly room: AmountText
    readonly flat: AmountText
    readonly grip: keyof typeof ends
  }) =>
    `With ${facts.room} to swing, ${ends[facts.grip]} cannot be taken off and put back on: that needs ` +
    `${facts.flat}. Use a ratchet, or a bi-hexagon ring, which needs 30°.`,
  'no-room': (_: Record<never, never>) =>
    'The handle has no room to swing. Turn the case, or use another handle or an extension.',
  'order-begins-outside': (facts: { readonly first: string; readonly nearer: number }) =>
    `It begins with ${facts.first}, and ${facts.nearer} ` +
    `${facts.nearer === 1 ? 'fastener is' : 'fasteners are'} nearer the middle. Most orders begin there. ` +
    'Unusual, which does not make it wrong.',
  'order-goes-inwards': ({ percent }: { readonly percent: number }) =>
    `Of each two fasteners the outer one comes first ${percent} % of the time: the order works inwards. ` +
    'Most work outwards. Unusual, which does not make it wrong.',
  'order-in-line': (facts: { readonly hops: number; readonly first: string; readonly last: string }) =>
    `From ${facts.first} to ${facts.last} it goes ${facts.hops} times in a row to a neighbour on the same ` +
    'side. Most orders change sides more often. Unusual, which does not make it wrong.',
  'order-of-caps': ({ caps }: { readonly caps: number }) =>
    `These fasteners hold ${caps} caps, each a joint of its own: the order is measured within each cap, not from cap ` +
    'to cap.',
  'face-without-fasteners': ({ face }: { readonly face: string }) =>
    `No fastener is on “${face}”, so there is nothing to clamp it with. Choose a face that is bolted.`,
}
