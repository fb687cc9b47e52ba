import type { Mark } from './marks.ts'
import { drawingFont } from './look.ts'

/** Draws the marks on a canvas whose unit is already a millimetre of the sheet. */
export function paint(context: CanvasRenderingContext2D, marks: readonly Mark[]): void {
  context.lineJoin = 'round'
  for (const mark of marks) paintMark(context, mark)
}

function paintMark(context: CanvasRenderingContext2D, mark: Mark): void {
  switch (mark.kind) {
    case 'path': {
      context.beginPath()
      const { points } = mark
      for (let index = 0; index + 1 < points.length; index += 2)
        context.lineTo(points[index] ?? 0, points[index + 1] ?? 0)
      if (mark.closed) context.closePath()
      ink(context, mark)
      return
    }
    case 'circle':
      context.beginPath()
      context.arc(mark.x, mark.y, mark.radius, 0, 2 * Math.PI)
      ink(context, mark)
      return
    case 'sector': {
      if (mark.share <= 0) return
      const top = -Math.PI / 2
      context.beginPath()
      context.arc(mark.x, mark.y, (mark.inner + mark.outer) / 2, top, top + mark.share * 2 * Math.PI)
      ink(context, { stroke: mark.fill, width: mark.outer - mark.inner })
      return
    }
    case 'text':
      context.font = `${mark.weight} ${mark.size}px ${drawingFont}`
      context.textAlign = mark.anchor === 'middle' ? 'center' : mark.anchor
      context.textBaseline = 'alphabetic'
      context.textRendering = 'geometricPrecision'
      if (mark.halo !== undefined) {
        context.setLineDash([])
        context.lineWidth = mark.halo.width
        context.strokeStyle = mark.halo.colour
        context.strokeText(mark.text, mark.x, mark.baseline)
      }
      context.fillStyle = mark.fill
      context.fillText(mark.text, mark.x, mark.baseline)
      return
    default:
      return mark satisfies never
  }
}

function ink(
  context: CanvasRenderingContext2D,
  { fill, stroke, width, dash }: Pick<Extract<Mark, { kind: 'path' }>, 'fill' | 'stroke' | 'width' | 'dash'>,
): void {
  if (fill !== undefined) {
    context.fillStyle = fill
    context.fill()
  }
  if (stroke === undefined) return
  context.strokeStyle = stroke
  context.lineWidth = width
  context.setLineDash([...(dash ?? [])])
  // A dash of no length is a dot only with round ends.
  context.lineCap = dash?.[0] === 0 ? 'round' : 'butt'
  context.stroke()
}
