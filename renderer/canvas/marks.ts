import {
  capitalShare,
  type LineShape,
  type Role,
  type Shape,
  type SwatchShape,
} from '../../core/layout/index.ts'
import { clearerColour } from './contrast.ts'
import type { Look } from './look.ts'
import { patternMarks, slanting } from './pattern.ts'

/**
 * A shape with its look, taken apart into what any renderer can draw: canvas and SVG each know these four marks and
 * nothing else, so that they cannot differ in content. Everything in mm on the sheet.
 */
export type Mark = PathMark | CircleMark | SectorMark | TextMark

interface InkedMark {
  readonly fill?: string
  readonly stroke?: string
  readonly width: number
  readonly dash?: readonly number[]
}

export interface PathMark extends InkedMark {
  readonly kind: 'path'
  readonly points: readonly number[]
  readonly closed: boolean
}

export interface CircleMark extends InkedMark {
  readonly kind: 'circle'
  readonly x: number
  readonly y: number
  readonly radius: number
}

/** Part of a ring, clockwise from the top by a share of the full turn. */
export interface SectorMark {
  readonly kind: 'sector'
  readonly x: number
  readonly y: number
  readonly inner: number
  readonly outer: number
  readonly share: number
  readonly fill: string
}

export interface TextMark {
  readonly kind: 'text'
  readonly x: number
  /** The line the letters stand on. */
  readonly baseline: number
  readonly text: string
  /** Font size. */
  readonly size: number
  readonly weight: 400 | 700
  readonly anchor: 'start' | 'middle' | 'end'
  readonly fill: string
  readonly halo?: { readonly colour: string; readonly width: number }
}

/** `px` is one pixel at zoom 1 in mm on the sheet. */
export function marksOf(shape: Shape, looks: Readonly<Record<Role, Look>>, px: number): readonly Mark[] {
  const look = looks[shape.role]
  switch (shape.kind) {
    case 'line':
      return lineMarks(shape, look, px)
    case 'circle':
      return [{ kind: 'circle', x: shape.x, y: shape.y, radius: shape.radius, ...inked(look, px) }]
    case 'ring':
      return look.fill === undefined
        ? []
        : [
            {
              kind: 'sector',
              ...{ x: shape.x, y: shape.y, inner: shape.inner, outer: shape.outer, share: shape.share },
              fill: look.fill,
            },
          ]
    case 'swatch':
      return swatchMarks(shape, looks, px)
    case 'text':
      return [
        {
          kind: 'text',
          x: shape.x,
          baseline: shape.y + shape.capital / 2,
          text: shape.text,
          size: shape.capital / capitalShare,
          weight: shape.weight === 'bold' ? 700 : 400,
          anchor: shape.anchor,
          fill: look.text ?? look.stroke ?? look.fill ?? '#000000',
          ...(look.halo === undefined ? {} : { halo: { colour: look.halo, width: 3 * px } }),
        },
      ]
    default:
      return shape satisfies never
  }
}

function inked({ fill, stroke, width = 1, dash }: Look, px: number): InkedMark {
  return {
    ...(fill === undefined ? {} : { fill }),
    ...(stroke === undefined ? {} : { stroke }),
    width: width * px,
    ...(dash === undefined ? {} : { dash: dash.map((each) => each * px) }),
  }
}

function lineMarks({ points, closed, width }: LineShape, look: Look, px: number): readonly Mark[] {
  const path = { kind: 'path', points, closed } as const
  const ink = inked(look, px)
  if (width !== undefined) {
    // A line as wide as the thing itself; its dashes go by that width: round dots one width apart.
    const dash = look.dash === undefined ? {} : { dash: look.dash.map((each) => each * width) }
    const casing =
      look.casing === undefined
        ? []
        : [{ ...path, stroke: look.casing, width: width + 1.8 * px, ...dash } as const]
    return [...casing, { ...path, ...ink, ...dash, width }]
  }
  if (look.hatch === undefined)
    return look.fill === undefined && look.stroke === undefined ? [] : [{ ...path, ...ink }]
  const { stroke, ...area } = ink
  const edge = stroke === undefined ? [] : [{ ...path, stroke, width: ink.width } as const]
  return [{ ...path, ...area }, ...hatching(points, look.hatch, px), ...edge]
}

function hatching(points: readonly number[], stroke: string, px: number): readonly Mark[] {
  const xs = points.filter((_, index) => index % 2 === 0)
  const ys = points.filter((_, index) => index % 2 === 1)
  const left = Math.min(...xs)
  const top = Math.min(...ys)
  const box = { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top }
  return slanting(box, 6 * px).map((line) => ({
    kind: 'path',
    points: line,
    closed: false,
    stroke,
    width: px * 0.9,
  }))
}

/** A shell: its own colour, its pattern in whichever ink is clearer on that colour, its edge. */
function swatchMarks(shape: SwatchShape, looks: Readonly<Record<Role, Look>>, px: number): readonly Mark[] {
  const { x, y, width, height, colour, pattern } = shape
  const points = [x, y, x + width, y, x + width, y + height, x, y + height]
  const path = { kind: 'path', points, closed: true } as const
  const stroke = clearerColour(colour, '#1E242B', '#FFFFFF')
  // A small shell has a finer pattern, so that enough of it shows round the plate.
  const step = Math.max(Math.min(6.5 * px, Math.min(width, height) / 4.5), 3 * px)
  const marks = patternMarks(pattern, { left: x, top: y, width, height }, step)
  const line = { stroke, width: 1.1 * px }
  return [
    { ...path, fill: colour, width: 0 },
    ...marks.lines.map((each) => ({ kind: 'path', points: each, closed: false, ...line }) as const),
    ...marks.dots.map((dot) => ({ kind: 'circle', ...dot, fill: stroke, width: 0 }) as const),
    ...marks.rings.map((ring) => ({ kind: 'circle', ...ring, ...line }) as const),
    { ...path, ...inked(looks[shape.role], px) },
  ]
}
