import type { AmountText } from '../../amount.ts'
import type { PhraseText } from '../../phrase.ts'

export interface OfProcedure {
  readonly procedure: string
}
export interface OfPass extends OfProcedure {
  /** Counted from 1, as people count. */
  readonly pass: number
}

/** Sentences about what is wrong or doubtful in the tightening that a spec asks for: orders, passes, torques and angles. */
export const auditTighteningWords = {
  // Orders
  'order-misses': (facts: OfProcedure & { order: string; group: string; numbers: readonly string[] }) =>
    `${facts.procedure}: the order “${facts.order}” leaves out ${listed(facts.numbers)} of ${facts.group}. ` +
    'Put in every one of them, or none.',
  'order-repeats': (facts: OfProcedure & { order: string; numbers: readonly string[] }) =>
    `${facts.procedure}: the order “${facts.order}” has ${listed(facts.numbers)} more than once. Leave each in once.`,
  'order-of-other-face': (facts: OfProcedure & { order: string; numbers: readonly string[]; face: string }) =>
    `${facts.procedure}: the order “${facts.order}” has ${listed(facts.numbers)}, which are not on ${facts.face}. ` +
    'Take them out, or correct their face.',
  'order-unused': ({ procedure, order }: OfProcedure & { order: string }) =>
    `${procedure}: no pass follows the order “${order}”. Name it in a pass, or remove it.`,
  'group-never-tightened': ({ group, face, count }: { group: string; face: string; count: number }) =>
    `${group}: no procedure tightens the ${count} of them on ${face}. Put them into an order and a pass.`,
  'number-twice': ({ number, face }: { number: string; face: string }) =>
    `${face}: two fasteners have the number ${number}. Give each its own, as it stands on the drawing.`,
  'value-outside-order': (facts: OfPass & { numbers: readonly string[] }) =>
    `${facts.procedure}, pass ${facts.pass}: a value of its own is given for ${listed(facts.numbers)}, which the ` +
    'pass does not touch. Correct the fasteners, or the order.',
  'recheck-outside-order': (facts: OfPass & { numbers: readonly string[] }) =>
    `${facts.procedure}, pass ${facts.pass}: ${listed(facts.numbers)} would be rechecked and are not in the pass’s ` +
    'order. Correct the fasteners, or the order.',
  'value-given-twice': (facts: OfPass & { numbers: readonly string[] }) =>
    `${facts.procedure}, pass ${facts.pass}: two values of their own are given for ${listed(facts.numbers)}. Keep one.`,

  // Cap by cap
  'cap-by-cap-without-caps': ({ procedure, face }: OfProcedure & { face: string }) =>
    `${procedure} goes cap by cap, and ${face} has no caps. Take that out, or correct the face.`,
  'cap-with-one-fastener': ({ procedure, cap, number }: OfProcedure & { cap: string; number: string }) =>
    `${procedure} goes cap by cap, and holds the cap of ${cap} by ${number} alone. Put in the others of that cap, or correct where ` +
    'they are.',
  'cap-by-cap-repeats': ({ procedure, pass }: OfPass) =>
    `${procedure}, pass ${pass}: it goes cap by cap, and so cannot go through all of them again until none moves. Leave one of the two.`,
  'two-readings-at-once': ({ procedure, pass }: OfPass) =>
    `${procedure}, pass ${pass}: a length and a turning torque are read at once. Make an action of each.`,
  'rise-above-most': (facts: { place: PhraseText; rise: AmountText; most: AmountText }) =>
    `${facts.place}: the turning torque may rise by ${facts.rise} at once, and be ${facts.most} at most. Look whether the two are ` +
    'exchanged.',

  // Passes
  'angle-without-torque': (facts: OfPass & { numbers: readonly string[] }) =>
    `${facts.procedure}, pass ${facts.pass}: ${listed(facts.numbers)} would be turned by an angle without having been ` +
    'seated or torqued before. Put a torque pass in front.',
  'angle-beyond-a-turn': ({ procedure, pass, angle }: OfPass & { angle: AmountText }) =>
    `${procedure}, pass ${pass}: ${angle} is more than a full turn; a bolt breaks on the way. Correct the angle.`,
  'angle-missing': ({ procedure, pass }: OfPass) =>
    `${procedure}, pass ${pass}: an angle of 0° turns nothing. Give the angle, or remove the pass.`,
  'recheck-before-torque': (facts: OfPass & { numbers: readonly string[] }) =>
    `${facts.procedure}, pass ${facts.pass}: ${listed(facts.numbers)} would be rechecked before being torqued. ` +
    'Move the recheck behind the torque pass.',
  'stretch-without-length': (facts: OfPass & { numbers: readonly string[] }) =>
    `${facts.procedure}, pass ${facts.pass}: the stretch of ${listed(facts.numbers)} has no length to compare with. ` +
    'Put a pass in front that measures the length before anything is pulled.',
  'length-after-pull': (facts: OfPass & { numbers: readonly string[] }) =>
    `${facts.procedure}, pass ${facts.pass}: ${listed(facts.numbers)} would be measured when they are tightened already, ` +
    'and so stretched in part. Measure the length before the first torque.',
  'stretch-large': (
    facts: OfPass & { group: string; most: AmountText; grip: AmountText; percent: AmountText },
  ) =>
    `${facts.procedure}, pass ${facts.pass}: a stretch of ${facts.most} is ${facts.percent} of the ${facts.grip} that ` +
    `${facts.group} clamp: more than any bolt is stretched on purpose. Check the value and its unit.`,
  'stretch-not-by-torque': (
    facts: OfPass & {
      group: string
      torque: AmountText
      longer: AmountText
      bound: AmountText
      tooShort: boolean
    },
  ) =>
    `${facts.procedure}, pass ${facts.pass}: calculated from their thread, grip and friction, ${facts.torque} makes ` +
    `${facts.group} ${facts.longer} longer at ${facts.tooShort ? 'most' : 'least'}, and ${facts.bound} is the ` +
    `${facts.tooShort ? 'minimum' : 'maximum'} that is asked for. Check the torques, the stretch and the grip.`,
  'torque-after-turn': (facts: OfPass & { numbers: readonly string[] }) =>
    `${facts.procedure}, pass ${facts.pass}: ${listed(facts.numbers)} would be torqued after they were turned by an angle: ` +
    'the wrench clicks at once, or stretches them further. Check the order of the passes, or loosen them first.',
  'torque-below-last': (
    facts: OfPass & { numbers: readonly string[]; target: AmountText; last: AmountText },
  ) =>
    `${facts.procedure}, pass ${facts.pass}: ${facts.target} on ${listed(facts.numbers)} is below the ` +
    `${facts.last} they already have, so the wrench clicks at once. Check both values.`,
  'recheck-above-last': (
    facts: OfPass & { numbers: readonly string[]; target: AmountText; last: AmountText },
  ) =>
    `${facts.procedure}, pass ${facts.pass}: the recheck of ${listed(facts.numbers)} is set to ${facts.target}, above ` +
    `the ${facts.last} they were torqued to, so they will move. Check both values.`,
  'left-loose': ({ procedure, numbers }: OfProcedure & { numbers: readonly string[] }) =>
    `${procedure}: ${listed(numbers)} end up loosened. Add the pass that tightens them.`,
  'only-seated': ({ procedure, numbers }: OfProcedure & { numbers: readonly string[] }) =>
    `${procedure}: ${listed(numbers)} are only seated by hand, never torqued. Add the pass that tightens them.`,

  // Torque against proof load
  'torque-overload': (facts: OfPass & Load & { slip: Slip | null }) =>
    `${facts.procedure}, pass ${facts.pass}: ${facts.torque} would pull ${facts.group} (${facts.thread}, ` +
    `${facts.propertyClass}) to ${facts.preload} even at high friction; their proof load is ${facts.proof}. ` +
    `Correct the torque, the thread or the class.${slipWords(facts.slip)}`,
  'torque-likely-overload': (facts: OfPass & Load & { slip: Slip | null }) =>
    `${facts.procedure}, pass ${facts.pass}: ${facts.torque} would pull ${facts.group} (${facts.thread}, ` +
    `${facts.propertyClass}) to ${facts.preload} at usual friction; their proof load is ${facts.proof}. ` +
    `Check the value, the thread and the class.${slipWords(facts.slip)}`,
  'torque-clamps-nothing': (facts: OfPass & Load & { slip: Slip | null }) =>
    `${facts.procedure}, pass ${facts.pass}: ${facts.torque}, the last they get, pulls ${facts.group} (${facts.thread}, ` +
    `${facts.propertyClass}) to ${facts.preload} at most, out of ${facts.proof}: next to no clamp. ` +
    `Check the value and its unit.${slipWords(facts.slip)}`,
  'turn-leaves-elastic-line': (
    facts: OfPass & {
      group: string
      angle: AmountText
      preload: AmountText
      proof: AmountText
      yieldLoad: AmountText
    },
  ) =>
    `${facts.procedure}, pass ${facts.pass}: calculated as elastic, ${facts.angle} takes ${facts.group} to ` +
    `${facts.preload}, far past yield (${facts.yieldLoad}; proof ${facts.proof}). Check the angle, the grip and the class.`,
  'same-torque-for-small': (facts: OfPass & { torque: AmountText; small: string; large: string }) =>
    `${facts.procedure}, pass ${facts.pass}: ${facts.small} get ${facts.torque} like the larger ${facts.large}. ` +
    'Check that the smaller thread has no value of its own.',
  'tolerance-too-fine': (facts: OfPass & { torque: AmountText; spread: AmountText }) =>
    `${facts.procedure}, pass ${facts.pass}: ±${facts.spread} of ${facts.torque} is finer than any wrench holds. ` +
    'Check the limits.',

  'no-usual-wrench': ({ procedure, pass, torque }: OfPass & { torque: AmountText }) =>
    `${procedure}, pass ${pass}: hardly any wrench reads ${torque}. Check the value and its unit.`,
}

export interface Load {
  readonly torque: AmountText
  readonly group: string
  readonly thread: string
  readonly propertyClass: string
  readonly preload: AmountText
  readonly proof: AmountText
}

/** What the value would be if inch-pounds and foot-pounds were mixed up. */
export interface Slip {
  readonly written: AmountText
  readonly meant: AmountText
  readonly inNewtonMetres: AmountText
}

function slipWords(slip: Slip | null): string {
  return slip === null
    ? ''
    : ` If ${slip.meant} was meant, not ${slip.written}, it is ${slip.inNewtonMetres}.`
}

/** `3`, `3 and 5`, `3, 5 and 9 more`. */
function listed(numbers: readonly string[]): string {
  const shown = numbers.slice(0, 8)
  const more = numbers.length - shown.length
  const last = more > 0 ? `${more} more` : shown.pop()
  return shown.length === 0 ? (last ?? '') : `${shown.join(', ')} and ${last}`
}
