import { describe, expect, it } from 'vitest'
import { sceneOf, type Scene, type View } from '../../../core/layout/index.ts'
import { inMillimetres } from '../../../core/quantity/index.ts'
import { boxOf, discsOf } from './checks.ts'
import { demo, demos, factsAt, sheets } from './demos.ts'
import { en } from '../../../core/words/index.ts'

const below: View = { from: 'below', turn: 0 }
const [small, large] = sheets
const joints = demos.map((spec) => ({
  spec,
  face: spec.case.faces.find(({ shows }) => shows === 'saddles')!,
}))

/** The middles of the upper halves' shells along the axis, in mm on the sheet. */
function saddlePlaces(scene: Scene, ids: readonly string[]): readonly number[] {
  return ids.map((id) => {
    const shell = scene.shapes.find((shape) => shape.id === `half/${id}/upper/shell`)!
    const { left, width } = boxOf(shell)
    return left + width / 2
  })
}

describe('the engine on the sheet', () => {
  it.each(joints)('keeps the distances of $spec.id to the nanometre', ({ spec, face }) => {
    const scene = sceneOf(en, spec, factsAt(spec, face.id, 'under way'), below, small!)
    const drawn = saddlePlaces(
      scene,
      spec.case.saddles.map(({ id }) => id),
    )
    spec.case.saddles.slice(1).forEach(({ at, id }, index) => {
      const pitch_nm = at - spec.case.saddles[index]!.at
      const drawn_nm = (drawn[index + 1]! - drawn[index]!) * 1e6
      expect(Math.round(drawn_nm), id).toBe(pitch_nm)
    })
  })

  it('has its parts at the same places along the crank on every sheet; only symbols and texts change', () => {
    const spec = demo('tarn-4')
    const facts = factsAt(spec, 'block', 'under way')
    const [one, other] = [small!, large!].map((sheet) =>
      sceneOf(en, spec, facts, below, sheet).shapes.flatMap((shape) =>
        shape.kind === 'circle' && /^(dowel|bore)\//.test(shape.id)
          ? [[shape.id, shape.x, shape.radius]]
          : [],
      ),
    )
    expect(one!.length).toBeGreaterThan(4)
    expect(one).toEqual(other)
  })

  it('draws nothing of the case outside its edge', () => {
    for (const { spec, face } of joints) {
      const { shapes } = sceneOf(en, spec, factsAt(spec, face.id, 'bare'), below, small!)
      const edge = boxOf(shapes.find(({ id }) => id === `face/${face.id}`)!)
      const inside = shapes.filter(({ role }) =>
        ['opening', 'cap', 'bore', 'dowel', 'oil-passage', 'shell-unknown', 'thrust'].includes(role),
      )
      expect(inside.length, spec.id).toBeGreaterThan(spec.case.saddles.length)
      for (const shape of inside) {
        const box = boxOf(shape)
        expect(box.left, `${spec.id} ${shape.id}`).toBeGreaterThanOrEqual(edge.left)
        expect(box.top, `${spec.id} ${shape.id}`).toBeGreaterThanOrEqual(edge.top)
        expect(box.left + box.width, `${spec.id} ${shape.id}`).toBeLessThanOrEqual(edge.left + edge.width)
        expect(box.top + box.height, `${spec.id} ${shape.id}`).toBeLessThanOrEqual(edge.top + edge.height)
      }
    }
  })
})

describe('the number in a disc', () => {
  const capitalsIn = (scene: Scene, widthPx: number) =>
    scene.shapes.flatMap((shape) =>
      shape.kind === 'text' && shape.id.startsWith('fastener/') && shape.id.endsWith('/number')
        ? [{ id: shape.id, role: shape.role, px: (shape.capital * widthPx) / scene.frame.width }]
        : [],
    )

  it('is as large as asked where there is room: 12 px in the window of a small screen', () => {
    const spec = demo('skerry-3')
    const scene = sceneOf(en, spec, factsAt(spec, 'joint', 'bead'), below, small!)
    // The bead's own step shows holes; the numbers come with the tightening.
    expect(capitalsIn(scene, 940)).toEqual([])
    const pulling = sceneOf(en, spec, factsAt(spec, 'joint', 'first pull'), below, small!)
    for (const { id, px, role } of capitalsIn(pulling, 940))
      expect(px, id).toBeGreaterThanOrEqual(role === 'next' ? 17 : 11)
  })

  it.each(joints)(
    // 16 arc minutes from ½ m, the least that ISO 9241-303 has, are 2.33 mm or 8.8 px.
    'is at least 9 px on the main joint of $spec.id, the next one larger',
    ({ spec, face }) => {
      const scene = sceneOf(en, spec, factsAt(spec, face.id, 'first pull'), below, small!)
      const capitals = capitalsIn(scene, 940)
      for (const { id, px } of capitals) expect(px, id).toBeGreaterThanOrEqual(9)
      const [next] = capitals.filter(({ role }) => role === 'next')
      const others = capitals.filter(({ role }) => role !== 'next').map(({ px }) => px)
      expect(next!.px).toBeGreaterThan(Math.max(...others))
    },
  )

  it('is read where two fasteners are close: their discs stand a little apart, each over its own place', () => {
    const spec = demo('skerry-3')
    const near = spec.fasteners.map((fastener, index) =>
      index === 1
        ? { ...fastener, at: [spec.fasteners[0]!.at[0], inMillimetres(spec.fasteners[0]!.at[1]) * 1e6 - 8e6] }
        : fastener,
    ) as unknown as typeof spec.fasteners
    const scene = sceneOf(en, { ...spec, fasteners: near }, factsAt(spec, 'joint', 'mid run'), below, {
      ...small!,
      heightPx: 340,
    })
    const [one, other] = ['case-1', 'case-2'].map((id) => discsOf(scene).find((disc) => disc.id === id)!)
    const apart = Math.hypot(one!.x - other!.x, one!.y - other!.y)
    expect(apart).toBeGreaterThanOrEqual(one!.radius + other!.radius)
    expect(one!.x).toBeCloseTo(148, 6)
    expect(Math.abs(one!.y - 46)).toBeLessThan(2 * one!.radius)
    // 12 px of type are 8 px of capitals.
    for (const { px } of capitalsIn(scene, 940)) expect(px).toBeGreaterThanOrEqual(8)
  })
})
