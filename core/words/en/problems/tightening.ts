import type { AmountText } from '../../amount.ts'
import type { PhraseText } from '../../phrase.ts'
import { clock } from '../../formats/index.ts'
import { turningLimits, type TurningLimits } from '../steps/turning.ts'
import { reasonText, type ReasonFor } from './reason-for.ts'

export interface Of {
  /** The number beside the fastener on the drawing; null for an action between passes. */
  readonly fastener: string | null
}
export interface OfProcedure {
  /** The procedure's name. */
  readonly name: string
}
export interface OutsideWindow extends Of {
  readonly read: PhraseText
  readonly limits: AmountText
  /** The unit in which the reading would be right. */
  readonly otherUnit: string | null
}

const scales = { angle: 'an angle in °', length: 'a length', torque: 'a torque' }

const lengthsBeside = {
  itself: 'read before it was pulled',
  others: 'the others of its kind about',
  grip: 'what it clamps is',
}

const the = (fastener: string | null) =>
  fastener === null ? 'The action between two passes' : `Fastener ${fastener}`
const inUnit = (otherUnit: string | null) =>
  otherUnit === null ? '' : ` In ${otherUnit} it would be right: look at the unit on the wrench's scale.`

export interface Stretched extends Of {
  /** By how much it is longer. */
  readonly stretch: AmountText
  readonly limits: AmountText
  readonly torque: PhraseText
  readonly torqueLimits: AmountText
  readonly mostTorque: AmountText
}
export interface StretchedAt extends Stretched {
  /** At or past its largest torque; else long enough below its least torque. */
  readonly tooMuch: boolean
}

const stretchedAt = (facts: StretchedAt) =>
  `${the(facts.fastener)}: ${facts.stretch} longer (allowed ${facts.limits}) at ${facts.torque} (allowed ` +
  `${facts.torqueLimits}): ${facts.tooMuch ? 'do not tighten it further' : 'it gave way too easily'}.`

export interface Turned {
  /** The bearing whose cap was tightened last; null where the procedure does not go cap by cap. */
  readonly cap: string | null
  readonly read: AmountText
  readonly limits: TurningLimits<AmountText>
}
export interface TooStiff extends Turned {
  /** The cap after which it rose most, with the numbers of its fasteners; null where none is known. */
  readonly lookAt: { readonly cap: string; readonly fasteners: readonly string[] } | null
}

const turned = ({ cap, read, limits }: Turned) =>
  `${cap === null ? 'To turn the crank' : `After cap ${cap}, to turn the crank`} it takes ${read}, allowed ${turningLimits(limits)}`

const lookAt = ({ lookAt: found }: TooStiff) =>
  found === null
    ? 'Loosen one cap after the other and turn the crank each time: the one that frees it is to be looked at, its shells, its oil, ' +
      'the number and the direction of the cap. Then tighten it again and turn once more.'
    : `It rose most with cap ${found.cap}: loosen ${found.fasteners.join(' and ')}, look at its shells, its oil, the number and the ` +
      'direction of the cap, tighten it again with its first pass, and turn once more.'

/** Sentences about a run of a tightening procedure. Passes count from 1. */
export const tighteningWords = {
  'procedure-unknown': ({ procedure }: { readonly procedure: string }) =>
    `This engine has no procedure “${procedure}”. Choose one of its steps.`,
  'run-started-already': ({ name }: OfProcedure) =>
    `“${name}” is already under way. Continue where it stands.`,
  'run-not-started': ({ name }: OfProcedure) => `“${name}” has not been started. Start it first.`,
  'run-paused': ({ name }: OfProcedure) => `“${name}” is paused. Continue it before pulling or taking back.`,
  'run-not-paused': ({ name }: OfProcedure) => `“${name}” is not paused.`,
  'run-done': ({ name }: OfProcedure) => `“${name}” is done. There is nothing left to pause.`,
  'pass-unknown': ({
    pass,
    passes,
    name,
  }: OfProcedure & { readonly pass: number; readonly passes: number }) =>
    `“${name}” has ${passes} passes, and no pass ${pass}. Pull what the drawing shows as next.`,
  'fastener-not-in-pass': ({ fastener, pass, name }: OfProcedure & Of & { readonly pass: number }) =>
    `${the(fastener)} is not in pass ${pass} of “${name}”. Pull what the drawing shows as next.`,
  'fastener-not-in-procedure': ({ fastener, name }: OfProcedure & { readonly fastener: string }) =>
    `${the(fastener)} is not part of “${name}”. Note the problem at one that is, or at none.`,
  'pulled-already': ({ fastener, pass }: Of & { readonly pass: number }) =>
    `${the(fastener)} is done in pass ${pass}. If that was a mistake, take it back first.`,
  'earlier-pass-first': (facts: {
    readonly fastener: string
    readonly earlier: number
    readonly pass: number
  }) =>
    `Fastener ${facts.fastener} has not been through pass ${facts.earlier}. Pull it there before pass ${facts.pass}.`,
  'not-its-turn': (facts: Of & { readonly next: string | null; readonly pass: number }) =>
    `${the(facts.fastener)} is not next: pass ${facts.pass}, ${facts.next === null ? 'an action' : `fastener ${facts.next}`}` +
    ' is. To go before its turn, give a reason.',
  'declare-new-first': ({ group }: { readonly group: string }) =>
    `${group} may be used once only. Confirm that they are new before the first of them is pulled.`,
  'declared-already': ({ group }: { readonly group: string }) => `${group} are already confirmed as new.`,
  'group-not-in-procedure': ({ group, name }: OfProcedure & { readonly group: string }) =>
    `“${group}” are not pulled in “${name}”. Confirm as new only what is.`,
  'order-unknown': ({ order, name }: OfProcedure & { readonly order: string }) =>
    `“${name}” has no order “${order}”. Choose one that it has.`,
  'order-number-unknown': (facts: { readonly typed: string; readonly numbers: readonly string[] }) =>
    `No fastener “${facts.typed}” is in this order. Those in it are ${facts.numbers.join(', ')}.`,
  'order-number-twice': ({ fastener }: { readonly fastener: string }) =>
    `Fastener ${fastener} stands in the order twice. Each is pulled once in a pass: take one of the two out.`,
  'order-numbers-missing': ({ numbers }: { readonly numbers: readonly string[] }) =>
    `Not in the order yet: ${numbers.join(', ')}. Each fastener is pulled once in a pass.`,
  'reading-of-other-kind': ({
    wanted,
    unit,
  }: {
    readonly wanted: keyof typeof scales
    readonly unit: string
  }) => `This pass asks for ${scales[wanted]}, and the reading is in ${unit}. Read the other scale.`,
  'reading-not-asked': ({ fastener }: Of) =>
    `${the(fastener)} has nothing to read in this pass. Confirm it without a reading.`,
  'reading-missing': ({ fastener }: Of) =>
    `${fastener === null ? 'This' : `Fastener ${fastener}`} is measured. Note what the gauge shows.`,
  'length-far-off': (
    facts: Of & {
      readonly read: AmountText
      readonly beside: AmountText
      readonly of: keyof typeof lengthsBeside
    },
  ) =>
    `${the(facts.fastener)} reads ${facts.read}, and ${lengthsBeside[facts.of]} ${facts.beside}. ` +
    'Look at the decimal point and at the unit, and measure it again.',
  'length-missing': ({ fastener }: Of) =>
    `${the(fastener)} was not measured before it was pulled, so its stretch is not known. Loosen it and begin it again.`,
  'torque-missing': ({ fastener }: Of) =>
    `${the(fastener)} is tightened until it is so much longer. Note its torque as well.`,
  'running-torque-missing': ({ fastener }: Of) =>
    `What ${the(fastener).toLowerCase()} takes to run down goes on top of its torque. Read it before the fastener touches, and note it.`,
  'running-torque-high': (facts: Of & { readonly read: AmountText; readonly most: AmountText }) =>
    `${the(facts.fastener)} takes ${facts.read} to run down, and at most ${facts.most} is allowed. Nothing is set on top of that: ` +
    'undo it, look at both threads, and read it again before it touches.',
  'wait-not-over': ({ minutes, seconds }: { readonly minutes: number; readonly seconds: number }) =>
    `Wait ${minutes} min before the next pass: ${clock(seconds)} are left. To continue before that, give a reason.`,
  'fastener-not-pulled': ({ fastener }: { readonly fastener: string }) =>
    `Fastener ${fastener} has not been pulled, so there is nothing to loosen.`,
  'loosen-first': ({ fastener }: { readonly fastener: string }) =>
    `Fastener ${fastener} is still tight. Loosen it first, then put the new one in.`,
  'restart-after-angle': ({ pass, name }: OfProcedure & { readonly pass: number }) =>
    `“${name}” cannot begin again at pass ${pass}: fasteners were turned by an angle or tightened to a stretch since, and would be stretched twice. ` +
    'Loosen all of them and begin with pass 1.',
  'nothing-to-restart': ({ pass, name }: OfProcedure & { readonly pass: number }) =>
    `Nothing of “${name}” was pulled in pass ${pass} or after it. Continue where it stands.`,
  'moved-outside-recheck': ({ fastener }: Of) =>
    `${the(fastener)} is not being rechecked, so it is meant to move. Confirm it, or note a problem.`,
  'nothing-to-take-back': (_: Record<never, never>) =>
    'Nothing has been pulled, so there is nothing to take back.',
  'not-the-last-pull': ({ last, pass }: { readonly last: string | null; readonly pass: number }) =>
    `Only the last pull can be taken back: ${last === null ? 'the action' : `fastener ${last}`} in pass ${pass}. ` +
    'Take that back first, or note a problem.',
  'flag-not-open': ({ flag }: { readonly flag: number }) => `Flag ${flag} is not waiting for an answer.`,
  'reason-missing': ({ reasonFor }: { readonly reasonFor: ReasonFor }) =>
    `Say ${reasonText(reasonFor)}, in a word at least.`,
  'reading-under': ({ fastener, read, limits, otherUnit }: OutsideWindow) =>
    `${the(fastener)}: ${read}, allowed ${limits}: too little.${inUnit(otherUnit)} Take it back and pull it again, or say ` +
    'what was done.',
  'turn-short': (
    facts: Of & { read: PhraseText; limits: AmountText; left: AmountText; from: AmountText; to: AmountText },
  ) =>
    `${the(facts.fastener)}: turned ${facts.read}, allowed ${facts.limits}: too little. Leave it where it stands and turn it ` +
    `on by ${facts.left} (${facts.from} to ${facts.to}).`,
  'length-under': ({ fastener, read, limits, otherUnit }: OutsideWindow) =>
    `${fastener === null ? 'What was measured' : `Fastener ${fastener}`}: ${read}, allowed ${limits}: too ` +
    `little.${inUnit(otherUnit)} Read it again, or say what was done about it.`,
  'stretch-short': (facts: Stretched) =>
    `${the(facts.fastener)}: ${facts.stretch} longer at ${facts.torque}, allowed ${facts.limits}: too little. Leave it ` +
    `where it stands, tighten it on to no more than ${facts.mostTorque}, and measure it again.`,
  'stretch-too-long': (facts: Stretched) =>
    `${the(facts.fastener)}: ${facts.stretch} longer at ${facts.torque}, allowed ${facts.limits}: too much. Loosen it, fit ` +
    'a new one, and begin the new one with its first pass.',
  'stretch-torque': (facts: StretchedAt) =>
    `${stretchedAt(facts)} Loosen it all the way, look at thread, head and oil, and begin it again with its first pass.`,
  'stretch-torque-replace': (facts: StretchedAt) =>
    `${stretchedAt(facts)} Loosen it, look at thread, head and oil, fit a new one, and begin the new one with its first pass.`,
  'reading-over-begin-again': ({ fastener, read, limits, otherUnit }: OutsideWindow) =>
    `${the(fastener)}: ${read}, allowed ${limits}: too much.${inUnit(otherUnit)} Loosen it all the way and begin it again ` +
    'with its first pass.',
  'reading-over-replace': ({ fastener, read, limits, otherUnit }: OutsideWindow) =>
    `${the(fastener)}: ${read}, allowed ${limits}: too much.${inUnit(otherUnit)} Loosen it, fit a new one, and begin the new one ` +
    'with its first pass.',
  'must-be-replaced': ({ fastener }: { readonly fastener: string }) =>
    `Fastener ${fastener} went past its upper limit. Loosen it, fit a new one, and begin the new one with its ` +
    'first pass; or read again, if the reading was wrong.',
  'must-begin-again': ({ fastener }: { readonly fastener: string }) =>
    `Fastener ${fastener} went past its upper limit. Loosen it all the way and begin it again with its first pass; or read ` +
    'again, if the reading was wrong.',
  'turn-on-first': ({ fastener }: { readonly fastener: string }) =>
    `Fastener ${fastener} has not been turned far enough. Turn it on from where it stands; or read again, if the reading ` +
    'was wrong.',
  'pull-on-first': ({ fastener }: { readonly fastener: string }) =>
    `Fastener ${fastener} is not long enough yet. Tighten it on from where it stands and measure it again; or read again, ` +
    'if the reading was wrong.',
  'used-once-already': ({ fastener }: { readonly fastener: string }) =>
    `Fastener ${fastener} may be used once only, and has been tightened and loosened. Fit a new one before it is pulled.`,
  'turn-not-taken-back': ({ fastener }: { readonly fastener: string }) =>
    `A turn stays turned: what was done to fastener ${fastener} cannot be taken back here. If it was not turned at all, ` +
    'say so. Else loosen it and begin it again.',
  'not-flagged-reading': ({ pull }: { readonly pull: number }) =>
    `Pull ${pull} has no reading that waits for an answer. Only such a one is read again.`,
  'arm-not-above-zero': ({ typed }: { readonly typed: string }) =>
    `The lever is “${typed}” long. Measure from the middle of the crank to where the spring balance pulls.`,
  'turning-over': (facts: TooStiff) =>
    `${turned(facts)}: too much. The maker’s manual comes first. ${lookAt(facts)}`,
  'turning-under': ({ cap, read, limits }: Turned) =>
    `${turned({ cap, read, limits })}: too little. Look whether crank and instrument turned together and everything is fitted, ` +
    'and read again; or say what was done about it.',
  'reading-over': ({ fastener, read, limits, otherUnit }: OutsideWindow) =>
    `${the(fastener)}: ${read}, allowed ${limits}: too much.${inUnit(otherUnit)} Say what was done about it.`,
  'fastener-moved': ({ fastener }: Of) =>
    `${the(fastener)} moved at the recheck: it had lost load. Say what was done about it.`,
  'problem-noted': ({ fastener, text }: Of & { readonly text: string }) =>
    `${fastener === null ? '' : `Fastener ${fastener}: `}${text}`,
}
