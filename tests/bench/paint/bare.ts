import { Layer } from 'konva/lib/Layer.js'
import type { Shape } from 'konva/lib/Shape.js'
import { Stage } from 'konva/lib/Stage.js'
import { Arc } from 'konva/lib/shapes/Arc.js'
import { Circle } from 'konva/lib/shapes/Circle.js'
import { Line } from 'konva/lib/shapes/Line.js'
import { Text } from 'konva/lib/shapes/Text.js'
import type { Scene } from '../../../core/layout/index.ts'
import { looks, type Theme } from '../../../renderer/canvas/look.ts'
import { marksOf, type Mark } from '../../../renderer/canvas/marks.ts'

/** The same marks as plain Konva nodes, on three layers of a stage of their own that nobody sees. */
export function bareLayers(beside: HTMLDivElement, scene: Scene, theme: Theme): readonly Layer[] {
  const container = document.createElement('div')
  const width = beside.clientWidth
  const height = beside.clientHeight
  const scale = width / scene.frame.width
  const stage = new Stage({ container, width, height, listening: false, scale: { x: scale, y: scale } })
  stage.position({ x: -scene.frame.left * scale, y: -scene.frame.top * scale })
  return (['ground', 'parts', 'overlay'] as const).map((name) => {
    const layer = new Layer({ listening: false })
    stage.add(layer)
    for (const shape of scene.shapes)
      if (shape.layer === name)
        for (const mark of marksOf(shape, looks(theme), 1 / scale)) layer.add(nodeOf(mark))
    return layer
  })
}

function nodeOf(mark: Mark): Shape {
  const plain = { listening: false, perfectDrawEnabled: false }
  switch (mark.kind) {
    case 'path':
      return new Line({
        ...{ ...plain, ...inked(mark) },
        points: [...mark.points],
        closed: mark.closed,
        lineJoin: 'round',
      })
    case 'circle':
      return new Circle({ ...plain, ...inked(mark), x: mark.x, y: mark.y, radius: mark.radius })
    case 'sector':
      return new Arc({
        ...{ ...plain, x: mark.x, y: mark.y, fill: mark.fill },
        innerRadius: mark.inner,
        outerRadius: mark.outer,
        angle: mark.share * 360,
        rotation: -90,
      })
    case 'text': {
      const { halo } = mark
      const text = new Text({
        ...{ ...plain, x: mark.x, text: mark.text, fontSize: mark.size, fill: mark.fill },
        y: mark.baseline - mark.size * 0.8,
        fontFamily: 'Atkinson Hyperlegible Next',
        fontStyle: mark.weight === 700 ? 'bold' : 'normal',
        ...(halo === undefined
          ? {}
          : { stroke: halo.colour, strokeWidth: halo.width, fillAfterStrokeEnabled: true }),
      })
      if (mark.anchor !== 'start') text.offsetX(text.width() / (mark.anchor === 'end' ? 1 : 2))
      return text
    }
    default:
      return mark satisfies never
  }
}

function inked({ fill, stroke, width, dash }: Extract<Mark, { kind: 'path' | 'circle' }>) {
  return {
    ...(fill === undefined ? {} : { fill }),
    ...(stroke === undefined ? {} : { stroke, strokeWidth: width }),
    ...(dash === undefined ? {} : { dash: [...dash] }),
  }
}
