import type { DoctorLine } from '../../core/contract/index.ts'
import type { Reader } from '../../core/layout/index.ts'
import type { Words } from '../../core/words/index.ts'

/** One line of what only the window knows, beside those of its host. */
export interface WindowLine {
  readonly subject: 'fonts' | 'screen' | 'voices' | 'instruments'
  readonly state: DoctorLine['state']
  readonly sentence: string
}

/** What the window sees of itself. */
export interface WindowState {
  /** The weights of the program's own type that are not loaded; null while they are being looked at. */
  readonly missingWeights: readonly string[] | null
  readonly widthPx: number
  readonly heightPx: number
  /** Device pixels to one of the window's. */
  readonly scale: number
  readonly reader: Reader
  /** Whether the screen was measured against a card. */
  readonly measured: boolean
  /** The name of the voice; null where there is none, or the browser cannot speak. */
  readonly voice: string | null
  readonly canSpeak: boolean
  /** Whether a person switched prompts on. */
  readonly speaks: boolean
  readonly hasSerial: boolean
  readonly instruments: readonly { readonly name: string; readonly isOpen: boolean }[]
}

/** How the window stands, in words that can be read out over the phone. */
export function windowLines(words: Words, seen: WindowState): readonly WindowLine[] {
  return [
    fontLine(words, seen),
    {
      subject: 'screen',
      state: seen.measured ? 'good' : 'look',
      sentence: words.doctor.screen({ ...seen, ...seen.reader }),
    },
    voiceLine(words, seen),
    instrumentLine(words, seen),
  ]
}

export const ownFont = 'Atkinson Hyperlegible Next'
export const ownWeights = ['400', '700'] as const

function fontLine(words: Words, { missingWeights }: WindowState): WindowLine {
  const subject = 'fonts'
  if (missingWeights === null) return { subject, state: 'look', sentence: words.doctor.fontsLookedAt }
  if (missingWeights.length === 0)
    return { subject, state: 'good', sentence: words.doctor.fontsLoaded({ font: ownFont }) }
  const sentence = words.doctor.fontsMissing({ font: ownFont, weights: missingWeights })
  return { subject, state: 'bad', sentence }
}

function voiceLine(words: Words, { voice, canSpeak, speaks }: WindowState): WindowLine {
  const subject = 'voices'
  if (voice !== null)
    return { subject, state: 'good', sentence: words.doctor.voiceUsed({ voice, on: speaks }) }
  const sentence = words.doctor.voices[canSpeak ? 'none' : 'cannot-speak']
  return { subject, state: speaks ? 'look' : 'good', sentence }
}

function instrumentLine(words: Words, { instruments, hasSerial }: WindowState): WindowLine {
  const subject = 'instruments'
  const names = instruments.map(({ name }) => name)
  if (names.length === 0) return { subject, state: 'good', sentence: words.doctor.instruments.none }
  if (!hasSerial) return { subject, state: 'look', sentence: words.doctor.instruments['no-serial'] }
  const open = instruments.filter(({ isOpen }) => isOpen).length
  const state = open === names.length ? 'good' : 'look'
  return { subject, state, sentence: words.doctor.instrumentsOpen({ open, names }) }
}
