import type { LineShape, Scene, TextShape } from '../../../../core/layout/index.ts'
import type { GaugeUnit } from '../../../../core/practice/index.ts'

/*
 * Reads drawn instruments as a person does: from where lines and numbers stand, and from what the trade knows of such scales.
 * Nothing of what a shape is called is read, nor of the value that it was drawn from. Counts of 0.001 mm or 0.0001 in.
 */

const nearly = 1e-7
/** Blades are drawn so many times as thick as they are. */
const enlarged = 20
const linesOf = ({ shapes }: Scene, role: LineShape['role']) =>
  shapes.filter((shape): shape is LineShape => shape.kind === 'line' && shape.role === role)
const textsOf = ({ shapes }: Scene) => shapes.filter((shape): shape is TextShape => shape.kind === 'text')
const boxOf = ({ points }: LineShape) => {
  const [xs, ys] = [points.filter((_, at) => at % 2 === 0), points.filter((_, at) => at % 2 === 1)]
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), foot: Math.max(...ys) }
}
const countsIn = (text: string, unit: GaugeUnit) =>
  Math.round(Number.parseFloat(text) * (unit === 'mm' ? 1000 : 10_000))

/** A screw of 0.5 mm with 50 lines on its thimble, or of 1/40 in with 25; numbers each 5 mm, or each tenth of an inch. */
const screws = {
  mm: { turn: 500, lines: 50, number: 1000 },
  in: { turn: 250, lines: 25, number: 1000 },
} as const

export function readMicrometer(scene: Scene, unit: GaugeUnit): number {
  const screw = screws[unit]
  const edge = boxOf(linesOf(scene, 'gauge-body')[0]!).left
  const lines = linesOf(scene, 'gauge-line').map(boxOf)
  const texts = textsOf(scene)
  const range = texts.find(({ text }) => text.includes(' to '))!
  const numbers = texts.filter((text) => text !== range && /^\d+$/.test(text.text))

  const ticks = lines.filter(({ left, right, foot }) => left === right && foot > 0)
  const onSleeve = numbers.filter(({ x, y }) => x <= edge && y > 0)
  const last = onSleeve.reduce((a, b) => (a.x > b.x ? a : b))
  const past = ticks.filter(({ left }) => left > last.x + nearly).length
  const sleeve = Number(last.text) * screw.number + past * screw.turn

  const onThimble = lines.filter(({ left, right }) => Math.abs(left - edge) < nearly && right > edge)
  const passed = onThimble.filter(({ top }) => top >= -nearly).reduce((a, b) => (a.top < b.top ? a : b))
  const numbered = numbers.filter(({ x }) => x > edge)
  const below = numbered.filter(({ y }) => y >= passed.top - nearly).reduce((a, b) => (a.y < b.y ? a : b))
  const between = onThimble.filter(({ top }) => top > passed.top + nearly && top <= below.y + nearly).length
  const thimble = (Number(below.text) + between) % screw.lines

  const vernier = lines
    .filter(({ left, right, top, foot }) => top === foot && left < edge && Math.abs(right - edge) < nearly)
    .toSorted((a, b) => b.top - a.top)
  const offs = vernier.map(({ top }) => Math.min(...onThimble.map((line) => Math.abs(line.top - top))))
  const least = Math.min(...offs)
  const meets = vernier[offs.findIndex((off) => off < least + nearly)]!
  const digit = numbers
    .filter(({ x, y }) => x < edge && y < 0)
    .reduce((a, b) => (Math.abs(a.y - meets.top) < Math.abs(b.y - meets.top) ? a : b))
  return countsIn(range.text, unit) + sleeve + thimble * 10 + Number(digit.text)
}

/** Clockwise is a smaller bore. */
export function readBoreGauge(scene: Scene, unit: GaugeUnit): number {
  const texts = textsOf(scene)
  const ring = countsIn(/[\d.]+/.exec(texts.find(({ text }) => text.startsWith('ring'))!.text)![0], unit)
  const angleOf = (x: number, y: number) => (Math.atan2(x, -y) * 180) / Math.PI
  const [, , tipX, tipY] = linesOf(scene, 'gauge-pointer')[0]!.points
  const pointer = angleOf(tipX!, tipY!)
  const way = Math.sign(pointer)
  const marks = linesOf(scene, 'gauge-line').map(({ points: [x, y] }) => angleOf(x!, y!) * way)
  const reached = marks.reduce((a, b) => (Math.abs(a - pointer * way) < Math.abs(b - pointer * way) ? a : b))
  const numbers = texts
    .filter(({ text }) => /^\d+$/.test(text))
    .map(({ text, x, y }) => ({ number: Number(text), at: angleOf(x, y) * way }))
    .filter(({ at }) => at > -nearly && at <= reached + nearly)
  const last = numbers.reduce((a, b) => (a.at > b.at ? a : b))
  const lines = marks.filter((mark) => mark > last.at + nearly && mark <= reached + nearly).length
  return ring - way * (last.number + lines)
}

/** The band that is as wide as the strip, of all that were moved beside it. Null for none of these. */
export function readStrip(scenes: readonly Scene[], unit: GaugeUnit): number | null {
  for (const scene of scenes) {
    const strip = linesOf(scene, 'gauge-pressed').map(boxOf)[0]
    const band = linesOf(scene, 'gauge-strip')
      .map(boxOf)
      .find(({ top, foot }) => Math.abs(top + foot) < nearly)
    if (!strip || !band || Math.abs(strip.foot - band.foot) > nearly) continue
    const beside = textsOf(scene).filter(({ x }) => x > band.right)
    const named = beside.reduce((a, b) => (Math.abs(a.y) < Math.abs(b.y) ? a : b))
    return countsIn(named.text, unit)
  }
  return null
}

/** By the width of the gap between the two faces, and by the sum of what stands on the blades. */
export function readFeelers(scene: Scene, unit: GaugeUnit) {
  const faces = linesOf(scene, 'gauge-body')
    .map(boxOf)
    .toSorted((a, b) => a.top - b.top)
  const gapMm = faces[1]!.top - faces[0]!.foot
  const onBlades = textsOf(scene).reduce((sum, { text }) => sum + countsIn(text, unit), 0)
  return { gap: Math.round(gapMm / enlarged / (unit === 'mm' ? 0.001 : 0.00254)), onBlades }
}
