import type { Scene } from '../../core/layout/index.ts'
import { drawingFont, looks, type Theme } from './look.ts'
import { drawingColours } from '../look/colours.ts'
import { marksOf, type Mark } from './marks.ts'

/**
 * The scene as an SVG document of the sheet's own proportions: the same marks in the same order as on the canvas. Only
 * presentation attributes, no style: it may stand in a page whose policy forbids inline style. `widthPx` is the width
 * the scene was laid out for; `title` is what a screen reader says of it.
 */
export function svgOf(
  scene: Scene,
  { theme, widthPx, title }: { readonly theme: Theme; readonly widthPx: number; readonly title: string },
): string {
  const { frame, shapes } = scene
  const px = frame.width / widthPx
  const table = looks(theme)
  const layers = ['ground', 'parts', 'overlay'] as const
  const drawn = layers.map((layer) => {
    const inside = shapes
      .filter((shape) => shape.layer === layer)
      .map(
        (shape) => `<g data-id="${escaped(shape.id)}">${marksOf(shape, table, px).map(element).join('')}</g>`,
      )
    return `<g>${inside.join('')}</g>`
  })
  const box = [frame.left, frame.top, frame.width, frame.height].map(short).join(' ')
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}" role="img" font-family="${escaped(drawingFont)}" ` +
    `stroke-linejoin="round"><title>${escaped(title)}</title>` +
    `<rect x="${short(frame.left)}" y="${short(frame.top)}" width="${short(frame.width)}" ` +
    `height="${short(frame.height)}" fill="${drawingColours[theme].paper}"/>${drawn.join('')}</svg>`
  )
}

function element(mark: Mark): string {
  switch (mark.kind) {
    case 'path':
      return `<path d="${pathData(mark.points, mark.closed)}"${ink(mark)}/>`
    case 'circle':
      return `<circle cx="${short(mark.x)}" cy="${short(mark.y)}" r="${short(mark.radius)}"${ink(mark)}/>`
    case 'sector':
      return sector(mark)
    case 'text': {
      const halo =
        mark.halo === undefined
          ? ''
          : ` stroke="${mark.halo.colour}" stroke-width="${short(mark.halo.width)}" paint-order="stroke"`
      return (
        `<text x="${short(mark.x)}" y="${short(mark.baseline)}" font-size="${short(mark.size)}" ` +
        `font-weight="${mark.weight}" text-anchor="${mark.anchor}" fill="${mark.fill}"${halo}>${escaped(mark.text)}</text>`
      )
    }
    default:
      return mark satisfies never
  }
}

function ink({ fill = 'none', stroke, width, dash }: Extract<Mark, { kind: 'path' | 'circle' }>): string {
  if (stroke === undefined) return ` fill="${fill}"`
  const dashes = dash === undefined ? '' : ` stroke-dasharray="${dash.map(short).join(' ')}"`
  // A dash of no length is a dot only with round ends.
  const ends = dash?.[0] === 0 ? ' stroke-linecap="round"' : ''
  return ` fill="${fill}" stroke="${stroke}" stroke-width="${short(width)}"${dashes}${ends}`
}

/** Along the middle of the ring, as wide as the ring; a full one is two halves, because an arc cannot end where it began. */
function sector({ x, y, inner, outer, share, fill }: Extract<Mark, { kind: 'sector' }>): string {
  if (share <= 0) return ''
  const radius = (inner + outer) / 2
  const at = (turn: number): string =>
    `${short(x + radius * Math.sin(turn * 2 * Math.PI))} ${short(y - radius * Math.cos(turn * 2 * Math.PI))}`
  const arcTo = (turn: number, large: 0 | 1): string =>
    `A${short(radius)} ${short(radius)} 0 ${large} 1 ${at(turn)}`
  const arcs = share >= 1 ? `${arcTo(0.5, 0)}${arcTo(1, 0)}` : arcTo(share, share > 0.5 ? 1 : 0)
  return `<path d="M${at(0)}${arcs}" fill="none" stroke="${fill}" stroke-width="${short(outer - inner)}"/>`
}

function pathData(points: readonly number[], closed: boolean): string {
  const pairs: string[] = []
  for (let index = 0; index + 1 < points.length; index += 2)
    pairs.push(`${short(points[index] ?? 0)} ${short(points[index + 1] ?? 0)}`)
  return `M${pairs.join('L')}${closed ? 'Z' : ''}`
}

/** To a thousandth of a millimetre: finer than any printer. */
function short(value: number): string {
  return String(Math.round(value * 1000) / 1000)
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')
}
