import type { Amount } from '../../amount.ts'
import { passes } from '../tightening/passes.ts'
import type { PassKind } from '../tightening/run.ts'
import { spokenAmount, spokenName } from './numbers.ts'

export interface SpokenPull {
  /** As it stands beside it on the drawing; null for an action between passes. */
  readonly number: string | null
  readonly kind: PassKind
  /** What it is pulled or turned to; null where nothing is read. */
  readonly target: Amount | null
  /** What is done in an action, as the spec has it. */
  readonly instruction: string | null
  /** Which pass begins with it, counted from 1; null within one. */
  readonly begins: { readonly pass: number; readonly passes: number } | null
}

const doing: Readonly<Record<PassKind, string>> = {
  seat: 'seat it',
  torque: 'tighten it',
  angle: 'turn it on',
  loosen: 'loosen it',
  recheck: 'check it',
  length: 'measure its length',
  stretch: 'measure its length again',
  'tighten-to-stretch': 'tighten it until it is long enough',
  action: 'do what is shown',
}

function pull({ number, kind, target, instruction, begins }: SpokenPull): string {
  const passBegins =
    begins === null
      ? ''
      : `Pass ${spokenName(String(begins.pass))} of ${spokenName(String(begins.passes))}, ${passes.kinds[kind]}. `
  const who = number === null ? '' : `${spokenName(number)}, `
  const amount = target === null ? null : spokenAmount(target)
  if (kind === 'action') return `${passBegins}${instruction ?? doing.action}`
  if (amount === null) return `${passBegins}${who}${doing[kind]}`
  if (kind === 'angle') return `${passBegins}${who}turn ${amount}`
  return kind === 'recheck' ? `${passBegins}${who}check ${amount}` : `${passBegins}${who}${amount}`
}

/** What is said aloud while hands are full, where a person switched it on. */
export const spoken = {
  amount: spokenAmount,
  pull,
  start: ({ procedure }: { readonly procedure: string }) => `${procedure}: ready to start.`,
  areNew: ({ group }: { readonly group: string }) => `Fit new ones: ${group}.`,
  paused: 'Paused.',
  done: 'Every pass is done.',
  replace: ({ number, isLoose }: { readonly number: string; readonly isLoose: boolean }) =>
    `${spokenName(number)}: ${isLoose ? 'fit a new one' : 'loosen it all the way'}.`,
  flag: ({
    number,
    about,
  }: {
    readonly number: string | null
    readonly about: 'under' | 'over' | 'moved' | 'problem'
  }) =>
    `${number === null ? 'A problem' : `Stop. ${spokenName(number)}`} ${
      { under: 'is under its limit', over: 'is over its limit', moved: 'moved', problem: 'is flagged' }[about]
    }.`,
  step: ({ name, instruction }: { readonly name: string; readonly instruction: string | null }) =>
    `Next step: ${name}.${instruction === null ? '' : ` ${instruction}`}`,
  allSteps: 'Every step is done.',
  unplugged: ({ name }: { readonly name: string }) => `${name} was unplugged.`,
  pluggedIn: ({ name }: { readonly name: string }) => `${name} is connected.`,

  // The panel of a build, while it speaks
  again: 'Say again',
  slower: 'Slower',
  says: 'Said aloud',
  // The page
  title: 'Spoken prompts',
  about:
    'The next pull, its value, the next step and what is flagged can be said aloud as well as shown. Everything that is said is on the screen too.',
  say: 'Say prompts aloud',
  rate: 'Speed',
  rates: { slow: 'slow', usual: 'usual', fast: 'fast' },
  voice: 'Voice',
  ownChoice: 'chosen by the program',
  notLocal: ({ voice }: { readonly voice: string }) => `${voice} (sends what it says over the network)`,
  try: 'Say an example',
  uses: ({ voice }: { readonly voice: string }) => `✓ It speaks with the voice ${voice}.`,
  noVoice:
    'This computer has no English voice that works without a network, so nothing is spoken. Install one in the settings of the system, then start the program again.',
  cannotSpeak: 'This browser cannot speak. Prompts are shown on the screen alone.',
}
