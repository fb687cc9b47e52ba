import { textBox, type Box, type Scene, type Shape, type TextShape } from '../../../core/layout/index.ts'

/** What a shape covers on the sheet. */
export function boxOf(shape: Shape): Box {
  switch (shape.kind) {
    case 'circle':
      return around(shape.x, shape.y, shape.radius)
    case 'ring':
      return around(shape.x, shape.y, shape.outer)
    case 'swatch':
      return { left: shape.x, top: shape.y, width: shape.width, height: shape.height }
    case 'text':
      return textBox(shape)
    case 'line': {
      const xs = shape.points.filter((_, index) => index % 2 === 0)
      const ys = shape.points.filter((_, index) => index % 2 === 1)
      const left = Math.min(...xs)
      const top = Math.min(...ys)
      return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top }
    }
    default:
      return shape satisfies never
  }
}

function around(x: number, y: number, radius: number): Box {
  return { left: x - radius, top: y - radius, width: 2 * radius, height: 2 * radius }
}

export function textsOf(scene: Scene): readonly TextShape[] {
  return scene.shapes.filter((shape) => shape.kind === 'text')
}

/** Labels: every text that is not written inside a disc, a sign, the callout or a shell's plate. */
export function labelsOf(scene: Scene): readonly TextShape[] {
  return textsOf(scene).filter(
    (shape) =>
      !/^fastener\/.*\/(number|exclamation)$/.test(shape.id) &&
      !/^note\/|^callout\//.test(shape.id) &&
      !shape.id.endsWith('/grade'),
  )
}

/** A fastener's disc: the circle that all that is drawn of it keeps to. */
export interface Reach {
  readonly id: string
  readonly x: number
  readonly y: number
  readonly radius: number
}

export function discsOf(scene: Scene): readonly Reach[] {
  const found = new Map<string, Reach>()
  for (const shape of scene.shapes) {
    const [kind, id = ''] = shape.about?.split('/') ?? []
    const isDisc = /\/(disc|ring|hole)$/.test(shape.id)
    if (kind !== 'fastener' || !isDisc) continue
    const { left, top, width, height } = boxOf(shape)
    const reach = { id, x: left + width / 2, y: top + height / 2, radius: width / 2 }
    if ((found.get(id)?.radius ?? 0) < reach.radius) found.set(id, reach)
    if (Math.abs(width - height) > 1e-6) throw new Error(`${shape.id} is not round`)
  }
  return [...found.values()]
}

/** The pairs of labels, and of a label and a disc, a number in a lane or a shell, that cover one another; none, if all is well. */
export function collisions(scene: Scene): readonly string[] {
  const labels = labelsOf(scene).map((label) => ({ id: label.id, box: textBox(label) }))
  const discs = discsOf(scene)
  const symbols = scene.shapes.filter(
    ({ kind, role, id }) =>
      kind === 'swatch' || role === 'shell-unknown' || id === 'callout' || id.endsWith('/lane-disc'),
  )
  return [
    ...labels.flatMap((one, index) =>
      labels
        .slice(index + 1)
        .flatMap((other) => (overlap(one.box, other.box) ? [`${one.id} × ${other.id}`] : [])),
    ),
    ...labels.flatMap(({ id, box }) => [
      ...discs.flatMap((disc) => (meetsCircle(box, disc) ? [`${id} × ${disc.id}`] : [])),
      ...symbols.flatMap((symbol) => (overlap(box, boxOf(symbol)) ? [`${id} × ${symbol.id}`] : [])),
    ]),
    ...pairsThatMeet(scene),
  ]
}

/** Two discs, neither of them what is next, and what is next over another's number. */
function pairsThatMeet(scene: Scene): readonly string[] {
  const circles = scene.shapes.flatMap((shape) =>
    shape.kind === 'circle' && /^fastener\/.*\/(disc|hole|lane-disc)$/.test(shape.id) ? [shape] : [],
  )
  const still = circles.filter(({ layer }) => layer === 'parts')
  const next = circles.filter(({ layer }) => layer === 'overlay')
  const numbers = textsOf(scene).filter(({ id }) => /^fastener\/.*\/number$/.test(id))
  const slack = 1e-6
  return [
    ...still.flatMap((one, index) =>
      still
        .slice(index + 1)
        .flatMap((other) =>
          Math.hypot(one.x - other.x, one.y - other.y) < one.radius + other.radius - slack
            ? [`${one.id} × ${other.id}`]
            : [],
        ),
    ),
    ...next.flatMap((disc) =>
      numbers.flatMap((number) =>
        number.about !== disc.about && meetsCircle(textBox(number), { ...disc, radius: disc.radius - slack })
          ? [`${disc.id} × ${number.id}`]
          : [],
      ),
    ),
  ]
}

export function overlap(a: Box, b: Box): boolean {
  return (
    a.left < b.left + b.width &&
    b.left < a.left + a.width &&
    a.top < b.top + b.height &&
    b.top < a.top + a.height
  )
}

export function meetsCircle({ left, top, width, height }: Box, { x, y, radius }: Reach): boolean {
  const nearX = Math.min(Math.max(x, left), left + width)
  const nearY = Math.min(Math.max(y, top), top + height)
  return Math.hypot(nearX - x, nearY - y) < radius
}

/** What reaches beyond the frame; none, if all is well. */
export function outside({ frame, shapes }: Scene): readonly string[] {
  const slack = 1e-6
  return shapes.flatMap((shape) => {
    const { left, top, width, height } = boxOf(shape)
    const fits =
      left >= frame.left - slack &&
      top >= frame.top - slack &&
      left + width <= frame.left + frame.width + slack &&
      top + height <= frame.top + frame.height + slack
    return fits ? [] : [shape.id]
  })
}

/** Numbers that are not: a scene has none. */
export function unreal(scene: Scene): readonly string[] {
  return scene.shapes.flatMap((shape) => {
    const numbers = Object.values(shape)
      .flat()
      .filter((value) => typeof value === 'number')
    return numbers.every(Number.isFinite) ? [] : [shape.id]
  })
}
