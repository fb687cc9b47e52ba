import type { Split } from '../../formats/index.ts'
import { pairText } from '../halves.ts'

const flags = { under: 'under', over: 'over', moved: 'moved', problem: 'problem' }
const roles = { mechanic: 'mechanic', apprentice: 'apprentice' }

/** Who is at the bench, and the second person who looks at a step. */
export const people = {
  title: 'People',
  backToBuild: 'Back to the build',
  whatFor:
    'The person at the bench is named on every entry. A name that is not in the list can always be typed. The ' +
    'list is for one tap, for a badge that types, and for a PIN where the shop wants one: a PIN keeps entries ' +
    'honest, it does not keep a thief out.',
  apprentices:
    'An apprentice’s build waits at chosen steps until a mechanic of this list has looked at them. A badge is ' +
    'any reader that types: while a reading can be typed, a number is a reading; a badge with letters before ' +
    'its number is always a badge.',
  whoChanges: 'Who changes the list',
  mechanic: 'Mechanic',
  pin: 'PIN',
  change: ({ name }: { readonly name: string }) => `Change ${name}`,
  remove: ({ name }: { readonly name: string }) => `Remove ${name}`,
  add: 'Add a person',
  removedStayNamed:
    'A person who is removed is still named on the entries they made. Nothing here is part of a build’s record.',
  roles,
  /** What is known of somebody in the list. */
  line: (facts: {
    readonly role: keyof typeof roles
    readonly hasBadge: boolean
    readonly hasPin: boolean
  }) => `${roles[facts.role]}${facts.hasBadge ? ', badge' : ''}${facts.hasPin ? ', PIN' : ''}`,

  form: {
    new: 'New person',
    name: 'Name, as it goes on the sheet',
    role: 'Role',
    badge: 'Badge:',
    hasBadge: 'has one',
    noBadge: 'none',
    badgeGoes: 'will be removed',
    presentBadge: 'Present the badge now …',
    teachBadge: 'Set a badge',
    takeBadge: 'Remove the badge',
    badgeLikeReading:
      '! This badge types what could be a reading. While a reading can be typed it is one: there, tap the name ' +
      'at the bench first, then present the badge.',
    newPin: 'New PIN, empty to keep the present one',
    firstPin: 'PIN, empty for none',
    takePin: 'Remove the PIN',
    keep: 'Save',
  },

  choose: {
    who: 'Who is at the bench?',
    goOn: 'Continue',
    somebodyElse: 'Another person',
    person: (facts: { readonly role: keyof typeof roles; readonly asksForPin: boolean }) =>
      `${roles[facts.role]}${facts.asksForPin ? ', PIN' : ''}`,
    anotherName: 'Another name',
    takeName: 'Use this name',
    people: 'People …',
  },

  second: {
    kicker: 'a second person',
    itIsRight: ({ name }: { readonly name: string }) => `${name}: it is right`,
    sentBack: ({ name, reason }: { readonly name: string; readonly reason: string }) =>
      `${name} sent it back: ${reason}. Do it again, then call once more.`,
    did: ({ names }: { readonly names: readonly string[] }) =>
      `${names.join(', ')} did this. Somebody else looks at it before the build continues.`,
    whatAgain: ({ name }: { readonly name: string }) => `${name}: what has to be done again?`,
    sendItBack: 'Send it back',
    sendBack: '! Send it back',
    firstWho: 'First choose who has looked at it.',
    whoLooks: 'Who looks at it?',
    nobodyElse: ({ names }: { readonly names: readonly string[] }) =>
      `Nobody but ${names.join(', ')} is in the list of people as a mechanic. Add who looks at it there.`,
    people: 'People …',
    /** Who looks in a dry run, where nobody else is needed. */
    played: 'Second person',
    play: 'Look at it as the second person would',
    again: 'Work on it again',
  },

  /** What the second person looks at, and what was recorded of it. */
  lookAt: {
    marks: 'Read the marks off the parts once more. Noted:',
    mark: ({ position, mark }: { readonly position: string; readonly mark: string | null }) =>
      `${position} ${mark ?? 'worn'}`,
    shells: 'Compare with marks, readings and the boxes of the shells. Chosen:',
    pair: (facts: {
      readonly position: string
      readonly split: Split
      readonly upper: string | null
      readonly lower: string | null
    }) =>
      `${facts.position}: ` +
      pairText({ split: facts.split, upper: facts.upper ?? '–', lower: facts.lower ?? '–' }),
    halves: 'Look at every half in its saddle. The drawing shows which shell belongs where.',
    part: ({ name, tick }: { readonly name: string; readonly tick: string }) => `${name}: ${tick}`,
    bead: 'Compare the bead with its path on the drawing.',
    fasteners: 'Look at every fastener on the drawing and at the engine. Each pull is on the sheet.',
    noFlag: 'No flag was raised.',
    flag: (facts: {
      readonly fastener: string | null
      readonly about: keyof typeof flags
      readonly text: string | null
      readonly answer: string | null
    }) =>
      `! ${facts.fastener === null ? '' : `Fastener ${facts.fastener}: `}${facts.text ?? flags[facts.about]}. ` +
      `Answer: ${facts.answer ?? 'none'}`,
    /** After it stand what was read and what was noted. */
    checkedGood: ({ noted }: { readonly noted: readonly string[] }) =>
      `Answered: good${noted.length > 0 ? `, ${noted.join('. ')}` : ''}`,
  },
}
