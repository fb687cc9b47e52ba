import { describe, expect, it } from 'vitest'
import { cornersOf, distanceTo, gapBetween, type Point } from '../../../core/plane/index.ts'
import { sceneOf, textBox, type Box, type Scene, type Sheet } from '../../../core/layout/index.ts'
import { inside, nearestOn } from '../../../core/layout/polygon.ts'
import { boxOf, collisions, discsOf, labelsOf, outside, textsOf } from './checks.ts'
import { demos, factsAt, views } from './demos.ts'

/** Capitals for ½ m on a small screen, for ½ and 1 m, for 1 m and for 2 m. */
const capitals = [12, 16, 22, 44]
const windows = [
  { widthPx: 940, heightPx: 560 },
  { widthPx: 1400, heightPx: 860 },
]
const smallWindow = { widthPx: 640, heightPx: 420 }
const sheets: readonly Sheet[] = [...windows, smallWindow].flatMap((window) =>
  capitals.map((capitalPx) => ({ ...window, capitalPx })),
)

const faces = demos.flatMap((spec) =>
  spec.case.faces.map((face) => ({ spec, face, name: `${spec.id}, ${face.name}` })),
)

describe.each(faces)('from every distance, the drawing of $name', ({ spec, face }) => {
  const facts = factsAt(spec, face.id, 'under way')
  const scenes = sheets.flatMap((sheet) =>
    views.map((view) => {
      const scene = sceneOf(spec, facts, view, sheet)
      return {
        ...{ sheet, scene, px: scene.frame.width / sheet.widthPx },
        where: `from ${view.from}, turn ${view.turn}, ${sheet.widthPx} px, capitals ${sheet.capitalPx} px`,
      }
    }),
  )

  it('has nothing over anything else and nothing cut off', () => {
    expect(
      scenes.flatMap(({ scene, where }) => collisions(scene).map((pair) => `${where}: ${pair}`)),
    ).toEqual([])
    expect(scenes.flatMap(({ scene, where }) => outside(scene).map((id) => `${where}: ${id}`))).toEqual([])
  })

  it('fills the sheet with the engine', () => {
    for (const { scene, sheet, where } of scenes) {
      const { width, height } = boxOf(scene.shapes.find(({ id }) => id === `face/${face.id}`)!)
      const share = Math.max(width / scene.frame.width, height / scene.frame.height)
      expect(share, where).toBeGreaterThan(sheet.widthPx === smallWindow.widthPx ? 0.5 : 0.6)
    }
  })

  it('says the next number and its value in the size that is asked for', () => {
    for (const { scene, px, sheet, where } of scenes) {
      if (facts.callout === null) continue
      const largest = (role: string): number =>
        Math.max(...textsOf(scene).flatMap((text) => (text.role === role ? [text.capital / px] : [])))
      // A small window has not always room for 44 px; half of them it has.
      const least = sheet.widthPx === smallWindow.widthPx ? Math.min(sheet.capitalPx, 22) : sheet.capitalPx
      expect(largest('next-value'), where).toBeGreaterThanOrEqual(least - 1e-9)
      expect(largest('next'), where).toBeGreaterThanOrEqual(least - 1e-9)
    }
  })

  it('keeps every other text small enough to leave the case its room', () => {
    for (const { scene, px, where } of scenes)
      for (const { id, role, capital } of textsOf(scene)) {
        if (role === 'next' || role === 'next-value' || id.endsWith('/exclamation')) continue
        expect(capital / px, `${where} ${id}`).toBeLessThanOrEqual(role === 'quiet-label' ? 14 : 20)
      }
  })

  it('has every disc inside the edge of the face', () => {
    for (const { scene, px, where } of scenes) {
      const edge = pointsOf(scene, `face/${face.id}`)
      for (const { id, x, y, radius } of discsOf(scene)) {
        // What must still be seen, though the engine is tiny on its sheet, may reach over the edge.
        if (radius < 7 * px) continue
        const nearest = nearestOn(edge, { x, y })!
        expect(inside(edge, { x, y }), `${where} ${id}`).toBe(true)
        expect(Math.hypot(nearest.x - x, nearest.y - y), `${where} ${id}`).toBeGreaterThan(radius)
      }
    }
  })

  it('has the number of a bore in that bore and in no other', () => {
    for (const { scene, where } of scenes) {
      const bores = scene.shapes.filter(({ id }) => /^bore\/\d+$/.test(id))
      for (const label of labelsOf(scene).filter(({ id }) => /^bore\/\d+\/name$/.test(id)))
        for (const { id } of bores) {
          const held = cornersOf(textBox(label)).map((corner) => holdsPoint(scene, id, corner))
          const own = label.id === `${id}/name`
          expect(held, `${where} ${label.text} ${id}`).toEqual([own, own, own, own])
        }
    }
  })

  it('has each bearing’s name nearer to its own bearing than to any other, or a leader line between them', () => {
    for (const { scene, where } of scenes) {
      const ids = new Set(scene.shapes.flatMap(({ about }) => /^half\/(\w+)\//.exec(about ?? '')?.[1] ?? []))
      for (const id of ids) {
        if (scene.shapes.some((shape) => shape.id === `bearing/${id}/name/leader`)) continue
        const label = around(
          labelsOf(scene)
            .filter((text) => text.id.startsWith(`bearing/${id}/name`))
            .map(textBox),
        )
        const away = [...ids].map((other) => ({ other, gap: gapBetween(label, bearingBox(scene, other)) }))
        const [nearest] = away.toSorted((one, another) => one.gap - another.gap)
        expect(nearest?.other, `${where} ${id}`).toBe(id)
      }
    }
  })

  it('has a line along the name of a bearing from that bearing, where another name is above or below it', () => {
    for (const { scene, where } of scenes)
      for (const shape of scene.shapes) {
        const id = /^bearing\/(\w+)\/shelf$/.exec(shape.id)?.[1]
        if (id === undefined || shape.kind !== 'line') continue
        const [x = 0, y = 0] = shape.points
        // There is a little air beside a thrust washer.
        expect(distanceTo(bearingBox(scene, id), { x, y }), `${where} ${id}`).toBeLessThan(1)
      }
  })
})

function pointsOf(scene: Scene, id: string): readonly Point[] {
  const shape = scene.shapes.find((each) => each.id === id)
  if (shape?.kind !== 'line') throw new Error(`${id} is no line`)
  return shape.points.flatMap((x, index) => (index % 2 === 0 ? [{ x, y: shape.points[index + 1]! }] : []))
}

function holdsPoint(scene: Scene, id: string, point: Point): boolean {
  const shape = scene.shapes.find((each) => each.id === id)
  if (shape?.kind === 'circle') return Math.hypot(point.x - shape.x, point.y - shape.y) < shape.radius
  return inside(pointsOf(scene, id), point)
}

/** Both halves of a bearing, with its thrust washers. */
function bearingBox(scene: Scene, id: string): Box {
  const parts = scene.shapes.filter((shape) =>
    [`half/${id}/upper/`, `half/${id}/lower/`, `thrust/${id}/`].some((part) => shape.id.startsWith(part)),
  )
  return around(parts.filter(({ role }) => /^shell|^thrust/.test(role)).map(boxOf))
}

function around(boxes: readonly Box[]): Box {
  const left = Math.min(...boxes.map((box) => box.left))
  const top = Math.min(...boxes.map((box) => box.top))
  const right = Math.max(...boxes.map((box) => box.left + box.width))
  const bottom = Math.max(...boxes.map((box) => box.top + box.height))
  return { left, top, width: right - left, height: bottom - top }
}
