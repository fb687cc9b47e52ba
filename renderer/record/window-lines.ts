import type { DoctorLine } from '../../core/contract/index.ts'
import type { Reader } from '../../core/layout/index.ts'
import type { Words } from '../../core/words/index.ts'

/** One line of what only the window knows, beside those of its host. */
export interface WindowLine {
  readonly subject: 'fonts' | 'screen' | 'voices'
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
    { subject: 'voices', state: 'good', sentence: words.doctor.voices },
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
