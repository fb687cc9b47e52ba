import type { DoctorLine } from '../../core/contract/index.ts'
import type { Reader } from '../../core/layout/index.ts'

/** One line of what only the window knows, beside those of its host. */
export type WindowLine = Pick<DoctorLine, 'state' | 'sentence'> & {
  readonly subject: 'fonts' | 'screen' | 'voices'
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
export function windowLines(seen: WindowState): readonly WindowLine[] {
  return [fontLine(seen), screenLine(seen), voiceLine]
}

export const ownFont = 'Atkinson Hyperlegible Next'
export const ownWeights = ['400', '700'] as const

function fontLine({ missingWeights }: WindowState): WindowLine {
  if (missingWeights === null) return { subject: 'fonts', state: 'look', sentence: 'Being looked at …' }
  if (missingWeights.length === 0)
    return { subject: 'fonts', state: 'good', sentence: `${ownFont} is loaded, plain and bold.` }
  return {
    subject: 'fonts',
    state: 'bad',
    sentence: `${ownFont} is not loaded (${missingWeights.join(', ')}), so text and numbers may be cut off. Start the program again; if that does not help, install it again.`,
  }
}

function screenLine({ widthPx, heightPx, scale, reader, measured }: WindowState): WindowLine {
  const size = `The window is ${widthPx} by ${heightPx} points at ${Math.round(scale * 100)} % scale.`
  const read = `It is read from ${reader.distance} m, with ${reader.pxPerMm.toFixed(2)} points to a millimetre`
  return measured
    ? { subject: 'screen', state: 'good', sentence: `${size} ${read}, as measured against a card.` }
    : {
        subject: 'screen',
        state: 'look',
        sentence: `${size} ${read}, which is a guess: measure the screen under “Screen and keys”.`,
      }
}

const voiceLine: WindowLine = {
  subject: 'voices',
  state: 'good',
  sentence: 'The program does not speak, so it needs no voice of this machine.',
}
