import { engineParts } from '../engine-parts.ts'
import type { HalfName, OfPair } from '../../formats/index.ts'
import { pairText } from '../halves.ts'

export interface OfStep {
  /** The step's name. */
  readonly step: string
}
export interface OfBegun extends OfStep {
  /** Whether its work is readings or answers, which are not taken back. */
  readonly isRead: boolean
}
export interface OfBench {
  /** The name of the build. */
  readonly name: string
  readonly bench: string
}
/** Of two lines of a build, from an entry on. */
export interface OfLine extends OfBench {
  readonly entry: number
  /** The bench whose line is in this record; null for this one. */
  readonly own: string | null
}
export interface PartIn extends OfStep {
  readonly part: string
}
export interface OfHalf {
  readonly position: string
  readonly half: HalfName
}

const undo: Readonly<Record<string, string>> = {
  'fit-shells': 'Take its shells out first',
  'fit-part': 'Take it out first',
  'lay-bead': 'Wipe it off first',
  'run-procedure': 'Take its pulls back first, the last one first, and loosen what was turned',
  check: 'Answer it as not good first',
  lubricate: 'Undo its places first',
  orient: 'Undo its places first',
  align: 'Undo its places first',
  'fit-places': 'Undo its places first',
  'fit-rings': 'Take its rings off first',
  turn: 'Say first that its reading does not count',
}

/** Sentences about a build and its steps. */
export const buildWords = {
  'build-finished': ({ name }: { readonly name: string }) =>
    `“${name}” is finished. Its work cannot be changed; amend it, or start a new build.`,
  'build-voided': ({ name }: { readonly name: string }) =>
    `“${name}” is void. Nothing can be added to it; start a new build.`,
  'build-elsewhere': ({ name, bench, is }: OfBench & { readonly is: 'open' | 'finished' | 'voided' }) =>
    is === 'voided'
      ? `“${name}” was at ${bench} last and is void. Nothing can be added to it.`
      : is === 'finished'
        ? `“${name}” is finished at ${bench}. Amend it there, or take it over here with a reason and amend it then.`
        : `“${name}” is at ${bench}. Go on with it there, have it handed over, or take it over here with a reason.`,
  'build-is-here': ({ bench }: { readonly bench: string }) =>
    `The build is at ${bench} already, which is this bench. Go on with it.`,
  'handed-to-itself': ({ bench }: { readonly bench: string }) =>
    `${bench} is this bench. Choose the bench that is to go on.`,
  'bench-name-missing': (_: Record<never, never>) =>
    'The bench has no name. Write what people call it, for example “Bench 2”.',
  'shop-not-joined': (_: Record<never, never>) =>
    'This bench belongs to no shop. Join one on the page “Shop”.',
  'bench-unknown': (_: Record<never, never>) =>
    'The shop knows no such bench. Choose one of those in the list.',
  'bench-unnamed': (_: Record<never, never>) =>
    'This bench belongs to no shop, so that there is no other one to go on. Join the shop first.',
  'build-apart': ({ name, bench, entry, own }: OfLine) =>
    `“${name}” was continued ${own === null ? 'here' : `at ${own}`} and at ${bench} apart, from entry ${entry} on. Find out which of the two was done on the engine, look at both lines, and say at either bench which one counts.`,
  'build-line-left': ({ name, bench, entry, own }: OfLine) =>
    `The line of ${bench} counts for “${name}”, from entry ${entry} on. What was recorded ${own === null ? 'here' : `at ${own}`} is kept and can be read here, but this record cannot go on with the build. Go on at ${bench}; or start the program here on an empty data folder, join the shop with it, and take the build over there.`,
  'bench-line-left': ({ name, bench }: OfBench) =>
    `${bench} went on with “${name}” apart, and its line was left. Its record keeps that line, so it can read the build and not go on with it. Hand it to another bench, or keep it here.`,
  'build-not-apart': ({ name }: { readonly name: string }) =>
    `“${name}” has one line of entries; there is nothing to settle.`,
  'build-not-finished': (_: Record<never, never>) =>
    'The build is not finished, so it cannot be amended yet. Take back what is wrong where it was done.',
  'step-not-awaiting': ({ step }: OfStep) =>
    `“${step}” does not wait for a second person. Continue with the build.`,
  'step-unconfirmed': ({ step }: OfStep) =>
    `“${step}” waits for a second person to look at it. Call one over; then continue.`,
  'redo-not-done': ({ step, isRead }: OfBegun) =>
    `“${step}” is not done yet, so it cannot be done again. ` +
    (isRead ? 'Read or answer again in it what is wrong.' : 'Take back in it what is wrong.'),
  'redo-opens-others': ({ step, others }: OfStep & { readonly others: readonly string[] }) =>
    others.length === 0
      ? `Nothing stands on “${step}” any more. Look at it once more, then confirm.`
      : `To do “${step}” again opens ${others.map((other) => `“${other}”`).join(', ')} again too. Look at the list once more, then confirm.`,
  'redo-not-taken-apart': ({ step, first }: OfStep & { readonly first: string }) =>
    `Before “${step}” is done again, undo at the bench what the list says, “${first}” first, and say that it is undone.`,
  'step-skipped': ({ step }: OfStep) =>
    `“${step}” is skipped. Take that back first; then it can be worked on.`,
  'skip-not-allowed': ({ step }: OfStep) =>
    `The spec of this engine does not let “${step}” be skipped. Do it.`,
  'step-begun': ({ step, isRead }: OfBegun) =>
    isRead
      ? `“${step}” is begun already, and what was found in it stays. It cannot be skipped any more: finish it.`
      : `“${step}” is begun already. Take back what was done in it; then it can be skipped.`,
  'step-not-skipped': ({ step }: OfStep) => `“${step}” is not skipped, so there is nothing to take back.`,
  'skip-stood-on': ({ step, top }: OfStep & { readonly top: string }) =>
    `“${top}” was done since “${step}” was skipped. To do it after all, do it again: that opens what stands on it.`,
  'step-unknown': ({ step }: OfStep) => `This engine has no such step “${step}”. Choose one of its steps.`,
  'step-before': ({ step, first }: OfStep & { readonly first: string }) =>
    `“${step}” comes later. Do “${first}” first.`,
  'step-on-top': ({ step, top, kind }: OfStep & { readonly top: string; readonly kind: string }) =>
    `“${top}” was done on top of “${step}”. ${undo[kind] ?? 'Undo it first'}; then this can be changed.`,
  'sealant-over-time': (facts: { readonly beads: readonly string[]; readonly minutes: number }) =>
    `${facts.beads.join(', ')}: the open time of the sealant, ${facts.minutes} min, is over. Take the joint apart, clean it and ` +
    'lay a new bead; or say why it is closed anyway.',
  'restart-opens-joint': ({ steps }: { readonly steps: readonly string[] }) =>
    `To begin again with the first pass opens the joint, and its sealant does not seal twice: ${steps.join(', ')} have to be done ` +
    'again. Accept that, or begin with a later pass.',
  'step-done-already': ({ step }: OfStep) =>
    `“${step}” is done already. If that was a mistake, take it back.`,
  'step-not-done': ({ step }: OfStep) => `“${step}” is not done, so there is nothing to take back.`,
  'measure-unknown': ({ step, place }: OfStep & { readonly place: string }) =>
    `“${step}” measures nothing at “${place}”. Choose one of its places.`,
  'place-unknown': ({ step, place }: OfStep & { readonly place: string }) =>
    `“${step}” has no place “${place}”. Choose one of its places.`,
  'place-done-already': ({ step, place }: OfStep & { readonly place: string }) =>
    `${place} is done already in “${step}”. If that was a mistake, undo it.`,
  'place-not-done': ({ step, place }: OfStep & { readonly place: string }) =>
    `${place} is not done in “${step}”, so there is nothing to undo.`,
  'marks-first': ({ place, first }: { readonly place: string; readonly first: string }) =>
    `${place} is looked at again once all marks were set. Set ${first} first.`,
  'turning-missing': ({ step }: OfStep) =>
    `“${step}” has limits. Read what it takes to turn the crank, and type that.`,
  'turning-by-hand': ({ step }: OfStep) =>
    `“${step}” has no limits in the spec. Turn the crank by hand and say whether it turns freely.`,
  'turning-not-outside': ({ step }: OfStep) =>
    `“${step}”: nothing is outside its limits there. Turn the crank first.`,
  'ring-gap-zero': ({ place }: { readonly place: string }) =>
    `${place}: a ring gap of 0 is no reading, because the ends of a ring must never touch. Measure with the thinnest feeler; where ` +
    'not even that goes in, file the ring or fit another one, and measure again.',
  'nothing-outside': ({ name, place }: { readonly name: string; readonly place: string }) =>
    `${name}, ${place}: nothing is outside its limits there. Measure it first.`,
  'part-unknown': ({ part }: { readonly part: string }) =>
    `The parts list has no “${part}”. Choose a part of the list.`,
  'part-not-in-step': ({ part, step }: PartIn) =>
    `“${part}” is not used in “${step}”. Tick it in a step that uses it.`,
  'parts-ticked-already': ({ part, step }: PartIn) =>
    `“${part}” is ticked already in “${step}”. If that was a mistake, take the tick back.`,
  'parts-not-ticked': ({ part, step }: PartIn) => `Nothing of “${part}” is ticked in “${step}”.`,
  'parts-too-many': ({
    part,
    step,
    count,
    left,
  }: PartIn & { readonly count: number; readonly left: number }) =>
    `“${step}” takes ${left} more of “${part}”, not ${count}. Count them again.`,
  'part-unaccounted': ({ part, step, left }: PartIn & { readonly left: number }) =>
    `${left} of “${part}” for “${step}” ${left === 1 ? 'is' : 'are'} not ticked. Tick what is in, or say where it is.`,
  'steps-left': ({ first }: { readonly first: string }) =>
    `The build cannot be finished yet: “${first}” is not done. Do it first.`,
  'marks-missing': ({ fit }: { readonly fit: string }) =>
    `${fit}: marks are missing. Note the marks of both parts first.`,
  'shell-in-place': ({ position, half }: OfHalf) =>
    `${position}: the ${engineParts.halves[half]} half is in place. Take out all shells of this fit before changing marks or shells.`,
  'shell-undecided': ({ position, half }: OfHalf) =>
    `${position}: no shell can be proposed for the ${engineParts.halves[half]} half. Choose a grade and say why.`,
  'pair-not-allowed': (facts: OfPair & { readonly position: string }) =>
    `${facts.position}: this engine does not allow ${pairText(facts, ' with ')}. Choose another pair.`,
  'basis-undecided': ({ position }: { readonly position: string }) =>
    `${position}: its mark and its readings do not agree. Measure again, or decide which of them counts and say why.`,
  'nothing-measured': ({ position }: { readonly position: string }) =>
    `${position}: nothing was measured there. Note readings first.`,
  'nothing-pinned': ({ position }: { readonly position: string }) =>
    `${position}: no shell is chosen by hand there, so there is nothing to undo.`,
  'tray-line-unknown': ({ position, label }: { readonly position: string; readonly label: string }) =>
    `${position}: no line of the tray is labelled ${label}. Choose one that is, or go back to the proposed shells.`,
  'tray-line-taken': (facts: {
    readonly position: string
    readonly label: string
    readonly count: number
    readonly at: readonly string[]
  }) =>
    `${facts.position}: there ${facts.count === 1 ? 'is one shell' : `are ${facts.count} shells`} of ${facts.label} in ` +
    `the tray, ${facts.at.length === 0 ? 'too few for both halves' : `already chosen by hand at ${facts.at.join(', ')}`}. ` +
    'Go back to the proposed shells there, or choose another.',
  'tray-label-missing': ({ line }: { readonly line: number }) =>
    `Line ${line} of the tray has no label. Write on it what stands on the box or the shell.`,
  'shell-to-be-ordered': ({ position, half, grade }: OfHalf & { readonly grade: string }) =>
    `${position}: the ${engineParts.halves[half]} half’s shell, grade ${grade}, is still to be ordered. Say that it has come before it is fitted.`,
  'shell-not-chosen': ({ position, half }: OfHalf) =>
    `${position}: no shell is chosen for the ${engineParts.halves[half]} half. Choose the shells first.`,
  'position-not-in-fit': ({ position, fit }: { readonly position: string; readonly fit: string }) =>
    `“${position}” is not a bearing of ${fit}. Choose one that is.`,
  'half-in-place': ({ position, half }: OfHalf) =>
    `${position}: the ${engineParts.halves[half]} half is in place already. If that was a mistake, take it out.`,
  'half-not-in-place': ({ position, half }: OfHalf) =>
    `${position}: the ${engineParts.halves[half]} half is not in place.`,
  'check-without-reading': ({ step }: OfStep) => `“${step}” asks for no reading. Answer good or not good.`,
  'check-good-why': ({ step }: OfStep) => `“${step}” was not good. Say what was done since.`,
  'check-reading-missing': ({ step }: OfStep) => `“${step}” asks for a reading. Type what the gauge shows.`,
}
