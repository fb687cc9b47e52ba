import type { Box, Layer, Role, TextShape } from '../scene/scene.ts'
import { textWidth } from './text-width.ts'

/** One line of a label. Capitals in px of the sheet. */
export interface Line {
  /** Empty where nothing is said yet and the room is kept. */
  readonly text: string
  readonly capital: number
  readonly weight: TextShape['weight']
  readonly role: Role
  /** The longest text that may come to stand here, so that the label need not move for it. */
  readonly longest?: string
}

/** Between two lines, as a share of the capitals' height. */
const leading = 0.62
/** Between two texts in one line, in capitals. */
const apart = 0.7

export function lineWidth({ text, longest = '', capital, weight }: Line): number {
  return Math.max(textWidth(text, capital, weight), textWidth(longest, capital, weight))
}

/** The line, cut off where it would be wider than the room, in px. */
export function cutOff(line: Line, room: number): Line {
  if (lineWidth(line) <= room) return line
  const { longest: _, ...kept } = line
  const characters = [...line.text]
  const cut = (): string => `${characters.join('').trimEnd()}…`
  while (characters.length > 1 && lineWidth({ ...kept, text: cut() }) > room) characters.pop()
  return { ...kept, text: cut() }
}

/** The words of a line in as many lines as the room asks for, in px; a word that is wider than it is cut off. */
export function inRoom(line: Line, room: number): readonly Line[] {
  if (lineWidth(line) <= room) return [line]
  const texts: string[] = []
  for (const word of line.text.split(' ')) {
    const longer = `${texts.at(-1) ?? ''} ${word}`.trim()
    if (texts.length > 0 && lineWidth({ ...line, text: longer, longest: '' }) <= room)
      texts[texts.length - 1] = longer
    else texts.push(word)
  }
  return texts.map((text) => cutOff({ ...line, text, longest: '' }, room))
}

/** Of lines one under the other, in px. */
export function stackSize(lines: readonly Line[]): { readonly width: number; readonly height: number } {
  const height = lines.reduce((sum, { capital }, index) => sum + capital * (index === 0 ? 1 : 1 + leading), 0)
  return { width: Math.max(0, ...lines.map(lineWidth)), height }
}

/** Of lines in a row, in px. */
export function rowSize(lines: readonly Line[]): { readonly width: number; readonly height: number } {
  const width = lines.reduce((sum, line) => sum + lineWidth(line), 0)
  const gaps = lines.slice(1).reduce((sum, { capital }) => sum + capital * apart, 0)
  return { width: width + gaps, height: Math.max(0, ...lines.map(({ capital }) => capital)) }
}

interface WrittenLabel {
  readonly id: string
  readonly about?: string
  readonly layer: Layer
}

/** The lines one under the other in a box of the sheet, from its top; `px` is one pixel in mm. */
export function stacked(
  { id, about, layer }: WrittenLabel,
  lines: readonly Line[],
  box: Box,
  anchor: TextShape['anchor'],
  px: number,
): readonly TextShape[] {
  const x = anchor === 'start' ? box.left : anchor === 'end' ? box.left + box.width : box.left + box.width / 2
  let top = box.top
  return lines.flatMap((line, index): readonly TextShape[] => {
    const capital = line.capital * px
    if (index > 0) top += capital * leading
    const y = top + capital / 2
    top += capital
    return line.text === ''
      ? []
      : [text({ id, layer, ...(about !== undefined && { about }) }, line, index, { x, y, anchor, px })]
  })
}

/** The lines one after the other, from the left of a box of the sheet, in its middle. */
export function inARow(
  written: WrittenLabel,
  lines: readonly Line[],
  box: Box,
  px: number,
): readonly TextShape[] {
  let left = box.left
  const y = box.top + box.height / 2
  return lines.flatMap((line, index): readonly TextShape[] => {
    if (index > 0) left += line.capital * apart * px
    const x = left
    left += lineWidth(line) * px
    return line.text === '' ? [] : [text(written, line, index, { x, y, anchor: 'start', px })]
  })
}

function text(
  { id, about, layer }: WrittenLabel,
  { text, capital, weight, role }: Line,
  index: number,
  {
    x,
    y,
    anchor,
    px,
  }: { readonly x: number; readonly y: number; readonly anchor: TextShape['anchor']; readonly px: number },
): TextShape {
  return {
    ...{ kind: 'text', id: index === 0 ? id : `${id}/${index + 1}`, layer, role },
    ...(about !== undefined && { about }),
    ...{ x, y, text, capital: capital * px, anchor, weight },
  }
}
