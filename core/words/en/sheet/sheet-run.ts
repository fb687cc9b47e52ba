import { minutesAndSeconds } from '../../formats/index.ts'
import { numberAndKind } from '../tightening/passes.ts'
import type { Reasoned, Stamped } from './stamped.ts'

const flagAbout = { under: 'under', over: 'over', moved: 'moved', problem: 'problem' }

/** The run of a procedure, as it is printed. */
export const sheetRun = {
  states: { done: 'done', started: 'under way', 'not-started': 'not started' },
  ownOrder: (facts: Reasoned & { readonly own: readonly string[]; readonly ofMaker: readonly string[] }) =>
    `! Own order, not the maker’s: ${facts.own.join(', ')}. Why: ${facts.reason} (${facts.stamp}). ` +
    `The maker’s order: ${facts.ofMaker.join(', ')}.`,
  declaredNew: ({ group, stamp }: Stamped & { readonly group: string }) => `${group} declared new: ${stamp}.`,
  pass: 'Pass',
  number: 'No.',
  where: 'Where',
  target: 'Target',
  result: 'Result',
  whenWho: 'When, who',
  passAndKind: numberAndKind,
  window: (facts: { readonly target: string; readonly least: string; readonly most: string }) =>
    `${facts.target} (${facts.least} to ${facts.most})`,
  gap: 'gap of the joint face',
  done: 'done',
  scaleAndFastener: ({ scale, fastener }: { readonly scale: string; readonly fastener: string }) =>
    `${scale} on the scale, ${fastener} at the fastener`,
  clamping: ({ read, clamping }: { readonly read: string; readonly clamping: string }) =>
    `${read}; ${clamping} without running it down`,
  running: ({ torque }: { readonly torque: string }) => `ran down at ${torque}, which goes on top`,
  turnedOn: ({ read, whole }: { readonly read: string; readonly whole: string }) =>
    `${read} on, ${whole} in all`,
  atTorque: ({ torque }: { readonly torque: string }) => `at ${torque}`,
  waited: ({ seconds, shortened }: { readonly seconds: number; readonly shortened: string | null }) =>
    `waited ${minutesAndSeconds(seconds)}` + `${shortened === null ? '' : `, ! shortened: ${shortened}`}`,
  sure: 'this length was asked about: looked at again, and right',
  longer: ({ stretch }: { readonly stretch: string }) => `${stretch} longer`,
  verdicts: {
    unread: 'confirmed, not read',
    within: 'within',
    under: '! under',
    over: '! over',
    moved: '! moved',
  },
  readFirst: ({ first, reason, stamp }: Reasoned & { readonly first: string }) =>
    `read first: ${first}; read again: ${reason} (${stamp})`,
  held: (facts: {
    readonly wrench: string
    readonly adapter: string
    readonly offset: string
    readonly angle: string
  }) => `${facts.wrench} with ${facts.adapter}, ${facts.offset} at ${facts.angle}`,
  /** Why a pull that is printed does not count. */
  setAside: {
    loosened: 'no longer counts: the fastener was loosened',
    'pass-repeated': 'no longer counts: the pass was repeated',
    'run-restarted': 'no longer counts: the run was begun again',
  },
  beforeItsTurn: ({ reason }: { readonly reason: string }) => `before its turn: ${reason}`,
  takenBack: ({ reason, stamp }: Reasoned) => `taken back: ${reason} (${stamp})`,
  flag: (
    facts: Stamped & {
      readonly flag: number
      readonly fastener: string | null
      /** What a person wrote; without it, what the flag is about. */
      readonly text: string | null
      readonly about: keyof typeof flagAbout
    },
  ) =>
    `! Flag ${facts.flag}${facts.fastener === null ? '' : `, fastener ${facts.fastener}`}: ` +
    `${facts.text ?? flagAbout[facts.about]} (${facts.stamp}).`,
  answer: ({ text, stamp }: Stamped & { readonly text: string }) => `Answer: ${text} (${stamp}).`,
  notAnswered: 'NOT ANSWERED.',
  paused: (facts: { readonly from: string; readonly reason: string; readonly to: string }) =>
    `Paused ${facts.from}${facts.reason === '' ? '' : `: ${facts.reason}`}; resumed ${facts.to}.`,
}
