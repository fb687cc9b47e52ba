import type { EngineCase, Face } from '../../engine/index.ts'
import type { Words } from '../../words/index.ts'
import type { Sheet, View } from '../facts.ts'
import { cutOff, lineWidth, stackSize, stacked, type Line } from './label.ts'
import type { Box, TextShape } from '../scene/scene.ts'
import { leastCapital, type Sizes } from '../sizes.ts'
import { viewInWords } from '../view.ts'

/** Room for the mark of a demo in the other corner, in px. */
const corner = 104
/** From the sheet's edge, in px. */
export const titleInset = { left: 12, top: 10 } as const

/** What is seen from where, in the sheet's upper left corner: in one line, or in as many as its width asks for. */
export function titleLines(
  words: Words,
  { engineCase, face, view }: { readonly engineCase: EngineCase; readonly face: Face; readonly view: View },
  stretch: number,
  sheet: Sheet,
  sizes: Sizes,
): readonly Line[] {
  const room = sheet.widthPx - titleInset.left - corner
  const seen = viewInWords(words, engineCase, face, view)
  const title = stretch > 1 ? words.drawing.notToScaleAcross({ view: seen }) : seen
  const parts = title.split(/(?<=[,.] )/)
  const line = (text: string, capital: number): Line => ({ text, capital, weight: 'regular', role: 'label' })
  const inLines = (capital: number): readonly Line[] =>
    wrapped(parts, (text) => lineWidth(line(text, capital)) <= room).map((text) =>
      cutOff(line(text, capital), room),
    )
  // A line more is taken from the case: letters are smaller first.
  for (const capital of [sizes.name, sizes.quiet]) {
    const lines = inLines(capital)
    if (lines.length === 1) return lines
  }
  return inLines(leastCapital)
}

function wrapped(parts: readonly string[], fits: (line: string) => boolean): readonly string[] {
  const lines: string[] = []
  for (const part of parts) {
    const last = lines.at(-1)
    if (last !== undefined && fits(`${last}${part}`.trim())) lines[lines.length - 1] = `${last}${part}`
    else lines.push(part)
  }
  return lines.map((line) => line.trim())
}

export function titleShapes(
  face: Face,
  lines: readonly Line[],
  frame: Box,
  px: number,
): readonly TextShape[] {
  const { width, height } = stackSize(lines)
  const left = frame.left + titleInset.left * px
  const top = frame.top + titleInset.top * px
  const box = { left, top, width: width * px, height: height * px }
  return stacked({ id: 'title', about: `face/${face.id}`, layer: 'parts' }, lines, box, 'start', px)
}
