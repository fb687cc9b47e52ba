import { describe, expect, it } from 'vitest'
import {
  sceneOf,
  type DrawingFacts,
  type NoteFact,
  type Scene,
  type Shape,
} from '../../../core/layout/index.ts'
import type { EngineSpec } from '../../../core/engine/index.ts'
import { boxOf, collisions, discsOf, labelsOf, meetsCircle, outside, overlap } from './checks.ts'
import { demo, demos, factsAt, sheets, views } from './demos.ts'

const texts = [
  'Thread feels rough',
  'reads 18 N·m, 22.8 to 25.2',
  'Head rounded off; needs the twelve-point socket from the drawer under the bench',
  'moved',
]

/** In mid run with flags at every fourth fastener, at two bearings and at the face, and what was measured. */
function flagged(spec: EngineSpec, face: string): DrawingFacts {
  const facts = factsAt(spec, face, 'under way')
  const here = spec.fasteners.filter((fastener) => fastener.face === face)
  const notes: NoteFact[] = here
    .filter((_, index) => index % 4 === 1)
    .map(({ id }, index) => ({
      about: `fastener/${id}`,
      kind: 'open',
      texts: [texts[index % texts.length]!, ...(index === 1 ? ['Oil in the hole'] : [])],
    }))
  const thrust = spec.case.saddles.find((saddle) => saddle.thrust)?.id
  const bearings = Object.entries(facts.bearings).map(([id, fact], index) => [
    id,
    index === 2 ? { ...fact, flag: 'mark and readings differ' } : fact,
  ])
  return {
    ...facts,
    bearings: Object.fromEntries(bearings),
    notes: [
      ...notes,
      { about: `face/${face}`, kind: 'open', texts: ['Joint face scratched'] },
      ...(spec.case.faces.find(({ id }) => id === face)?.shows === 'saddles' && thrust !== undefined
        ? ([{ about: `thrust/${thrust}`, kind: 'measured', texts: ['End float: 0.14 mm'] }] as const)
        : []),
    ],
  }
}

const faces = demos.flatMap((spec) =>
  spec.case.faces.map((face) => ({ spec, face, name: `${spec.id}, ${face.name}` })),
)

const isNote = ({ id }: Shape): boolean => id.startsWith('note/')
const framesOf = ({ shapes }: Scene) => shapes.filter((shape) => isNote(shape) && shape.id.endsWith('/frame'))

describe.each(faces)('the notes on $name', ({ spec, face }) => {
  const facts = flagged(spec, face.id)
  const scenes = views.flatMap((view) =>
    sheets.map((sheet) => ({
      scene: sceneOf(spec, facts, view, sheet),
      where: `from ${view.from}, turn ${view.turn}, ${sheet.widthPx} px, capitals ${sheet.capitalPx} px`,
      sheet,
    })),
  )

  it('cover nothing: no label, fastener, shell, dowel, oil passage, value, or other note', () => {
    for (const { scene, where } of scenes) {
      expect(collisions(scene), where).toEqual([])
      const frames = framesOf(scene).map((shape) => ({ id: shape.id, box: boxOf(shape) }))
      const taken = scene.shapes.filter(
        (shape) =>
          ['dowel', 'oil-passage', 'keep-out', 'thrust', 'nose', 'path-head'].includes(shape.role) ||
          shape.kind === 'swatch' ||
          (shape.role === 'leader' && shape.id.endsWith('/frame')),
      )
      const labels = labelsOf(scene).filter((label) => !isNote(label))
      const covered = frames.flatMap(({ id, box }, index) => [
        ...[...taken, ...labels].flatMap((other) =>
          overlap(box, boxOf(other)) ? [`${id} × ${other.id}`] : [],
        ),
        ...discsOf(scene).flatMap((disc) => (meetsCircle(box, disc) ? [`${id} × ${disc.id}`] : [])),
        ...frames
          .slice(index + 1)
          .flatMap((other) => (overlap(box, other.box) ? [`${id} × ${other.id}`] : [])),
      ])
      expect(covered, where).toEqual([])
    }
  })

  it('lie inside the sheet, their words inside their frames', () => {
    for (const { scene, where } of scenes) {
      expect(outside(scene), where).toEqual([])
      for (const frame of framesOf(scene)) {
        const { left, top, width, height } = boxOf(frame)
        for (const word of scene.shapes.filter((each) => isNote(each) && each.about === frame.about))
          if (word.kind === 'text') {
            const box = boxOf(word)
            const inside =
              box.left > left &&
              box.top > top &&
              box.left + box.width < left + width &&
              box.top + box.height < top + height
            expect(inside, `${where}: ${word.text}`).toBe(true)
          }
      }
    }
  })

  it('have leader lines that run from their own thing to their own frame and cross no other', () => {
    for (const { scene, sheet, where } of scenes) {
      const px = scene.frame.width / sheet.widthPx
      const leaders = scene.shapes.filter((shape) => isNote(shape) && shape.id.endsWith('/leader'))
      for (const leader of leaders) {
        const [x = 0, y = 0, toX = 0, toY = 0] = leader.kind === 'line' ? leader.points : []
        const warning = leader.about!.replace(/^half(.*)\/upper$/, 'bearing$1/out-of-limits')
        const own = scene.shapes.filter(
          (shape) => (shape.about === leader.about && !isNote(shape)) || shape.id === warning,
        )
        expect(Math.min(...own.map((shape) => awayFrom(shape, x, y))), `${where}: ${leader.id}`).toBeLessThan(
          3 * px,
        )
        const frame = boxOf(scene.shapes.find(({ id }) => id === leader.id.replace(/leader$/, 'frame'))!)
        expect(awayFromBox(frame, toX, toY), `${where}: ${leader.id}`).toBeLessThan(px)
        const others = leaders.filter((other) => other !== leader && cross(leader, other))
        expect(others, `${where}: ${leader.id}`).toEqual([])
      }
    }
  })

  it('are all said in the rows, whether there was room for them or not', () => {
    for (const { scene, where } of scenes)
      for (const note of facts.notes) {
        const row = scene.rows.find(({ about }) => about === note.about)
        for (const text of note.texts) expect(row?.text, where).toContain(text)
      }
  })
})

describe('a note', () => {
  const spec = demo('skerry-3')
  const view = { from: 'below', turn: 0 } as const
  const noted = (...notes: readonly NoteFact[]) =>
    sceneOf(spec, { ...factsAt(spec, 'joint', 'first pull'), notes }, view, sheets[1]!)
  const words = (scene: Scene) =>
    scene.shapes.flatMap((shape) => (isNote(shape) && shape.kind === 'text' ? [shape.text] : []))

  it('that is open begins with an exclamation mark: its colour is never alone', () => {
    const scene = noted({ about: 'fastener/case-1', kind: 'open', texts: ['Washer cracked'] })
    expect(words(scene).join(' ')).toBe('! Washer cracked')
    expect(framesOf(scene).map(({ role }) => role)).toEqual(['open-note'])
  })

  it('of a measured value is plain', () => {
    const scene = noted({ about: 'thrust/M3', kind: 'measured', texts: ['End float: 0.14 mm'] })
    expect(words(scene).join(' ')).toBe('End float: 0.14 mm')
    expect(framesOf(scene).map(({ role }) => role)).toEqual(['measured-note'])
  })

  it('says how much more there is to be said, and never has more than three lines', () => {
    const long =
      'The head was rounded off by whoever had it out last, and the socket does not hold on it any more'
    const scene = noted({ about: 'fastener/case-1', kind: 'open', texts: [long, 'Oil in the hole', 'Moved'] })
    expect(words(scene)).toHaveLength(3)
    expect(words(scene)[1]).toMatch(/…$/)
    expect(words(scene)[2]).toBe('+2 more')
  })

  it('stands where it stood while the next fastener is elsewhere', () => {
    const note = { about: 'fastener/flange-20', kind: 'open', texts: ['Oil in the hole'] } as const
    const place = (stage: 'first pull' | 'under way') => {
      const facts = { ...factsAt(spec, 'joint', stage), notes: [note] }
      const frame = framesOf(sceneOf(spec, facts, view, sheets[1]!)).find(({ about }) => about === note.about)
      return frame && boxOf(frame)
    }
    expect(place('first pull')).toEqual(place('under way'))
  })
})

/** From a place to the edge of a shape; of a fastener's diamond, which is no circle, to any of it. */
function awayFrom(shape: Shape, x: number, y: number): number {
  if (shape.role === 'flagged') return awayFromBox(boxOf(shape), x, y)
  if (shape.kind === 'circle') return Math.abs(Math.hypot(x - shape.x, y - shape.y) - shape.radius)
  if (shape.kind !== 'line') return awayFromBox(boxOf(shape), x, y)
  const corners = shape.points.flatMap((at, index) =>
    index % 2 === 0 ? [{ x: at, y: shape.points[index + 1]! }] : [],
  )
  const sides = corners.map((from, index) => [from, corners[(index + 1) % corners.length]!] as const)
  return Math.min(...sides.map(([from, to]) => awayFromSegment(from, to, x, y)))
}

function awayFromSegment(from: { x: number; y: number }, to: { x: number; y: number }, x: number, y: number) {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const share = Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy || 1)))
  return Math.hypot(from.x + share * dx - x, from.y + share * dy - y)
}

function awayFromBox({ left, top, width, height }: ReturnType<typeof boxOf>, x: number, y: number): number {
  return Math.hypot(Math.max(left - x, 0, x - left - width), Math.max(top - y, 0, y - top - height))
}

function cross(one: Shape, other: Shape): boolean {
  if (one.kind !== 'line' || other.kind !== 'line') return false
  const [ax, ay, bx, by] = one.points as [number, number, number, number]
  const [cx, cy, dx, dy] = other.points as [number, number, number, number]
  const side = (px: number, py: number, qx: number, qy: number, x: number, y: number) =>
    Math.sign((qx - px) * (y - py) - (qy - py) * (x - px))
  return (
    side(ax, ay, bx, by, cx, cy) * side(ax, ay, bx, by, dx, dy) < 0 &&
    side(cx, cy, dx, dy, ax, ay) * side(cx, cy, dx, dy, bx, by) < 0
  )
}
