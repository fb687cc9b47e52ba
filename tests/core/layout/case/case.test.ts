import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkProperty } from '../../../property.ts'
import { sceneOf, type Scene, type Shape } from '../../../../core/layout/index.ts'
import { inMillimetres } from '../../../../core/quantity/index.ts'
import { anyEngine } from '../any-engine.ts'
import { boxOf } from '../checks.ts'
import { demo, demos, factsAt, sheets } from '../demos.ts'
import { en } from '../../../../core/words/index.ts'

const view = { from: 'below', turn: 0 } as const
/** On a low sheet, on which nothing is stretched. */
const drawn = (spec: (typeof demos)[number], face: string): Scene =>
  sceneOf(en, spec, factsAt(spec, face, 'bare'), view, { ...sheets[0]!, heightPx: 300 })
const count = ({ shapes }: Scene, role: Shape['role'], kind?: Shape['kind']): number =>
  shapes.filter((shape) => shape.role === role && (kind === undefined || shape.kind === kind)).length

describe('the edge of a face', () => {
  it('has the corners of the spec, a little rounded as a casting is', () => {
    // Laying a bead, where no symbol is larger than what it stands for.
    const spec = demo('skerry-3')
    const scene = sceneOf(en, spec, factsAt(spec, 'joint', 'bead'), view, { ...sheets[0]!, heightPx: 300 })
    const edge = boxOf(scene.shapes.find(({ id }) => id === 'face/joint')!)
    expect(edge).toEqual({ left: 0, top: -100, width: 392, height: 200 })
  })

  it('is grown round what lies on the face where the spec gives none, and holds all of it', () => {
    checkProperty(
      fc.property(anyEngine, (spec) => {
        const edge = boxOf(drawn(spec, 'joint').shapes.find(({ id }) => id === 'face/joint')!)
        for (const { at } of spec.fasteners) {
          const [x, y] = at.map(inMillimetres) as [number, number]
          // Half a 14 mm hexagon across its corners.
          expect(x - 8.1).toBeGreaterThan(edge.left)
          expect(x + 8.1).toBeLessThan(edge.left + edge.width)
          expect(Math.abs(y) + 8.1).toBeLessThan(edge.height / 2)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('of the big ends is that of the case in which the rods lie', () => {
    const spec = demo('tarn-4')
    const edges = ['block', 'rods'].map((face) => {
      const { shapes } = sceneOf(en, spec, factsAt(spec, face, 'bead'), view, {
        ...sheets[0]!,
        heightPx: 300,
      })
      return boxOf(shapes.find(({ role }) => role === 'outline')!)
    })
    expect(edges[0]).toEqual(edges[1])
  })
})

describe('the openings of a face', () => {
  it('are the bays of the crank: one between each two saddles', () => {
    const joints = demos.flatMap((spec) => {
      const joint = spec.case.faces.find(({ shows, plane }) => shows === 'saddles' && plane === 'plan')
      return joint === undefined ? [] : [{ spec, joint }]
    })
    expect(joints).toHaveLength(demos.length)
    for (const { spec, joint } of joints)
      expect(count(drawn(spec, joint.id), 'opening'), spec.id).toBe(spec.case.saddles.length - 1)
  })

  it('is the one mouth of a sump', () => {
    expect(count(drawn(demo('skerry-3'), 'sump'), 'opening')).toBe(1)
  })

  it('stay clear of every fastener, dowel and oil passage', () => {
    for (const spec of demos)
      for (const face of spec.case.faces.filter(({ shows }) => shows === 'saddles' || shows === 'flange')) {
        const { shapes } = sceneOf(en, spec, factsAt(spec, face.id, 'bead'), view, sheets[0]!)
        const openings = shapes.filter(({ role }) => role === 'opening').map(boxOf)
        const solid = shapes.filter(
          ({ role, kind }) => kind !== 'text' && ['hole', 'dowel', 'oil-passage'].includes(role),
        )
        for (const shape of solid) {
          const box = boxOf(shape)
          const inAny = openings.some(
            ({ left, top, width, height }) =>
              box.left < left + width &&
              left < box.left + box.width &&
              box.top < top + height &&
              top < box.top + box.height,
          )
          expect(inAny, `${spec.id} ${shape.id}`).toBe(false)
        }
      }
  })
})

describe('the family of an engine', () => {
  it('with separate caps has one drawn over each saddle', () => {
    expect(count(drawn(demo('tarn-4'), 'block'), 'cap')).toBe(5)
    expect(count(drawn(demo('skerry-3'), 'joint'), 'cap')).toBe(0)
  })

  it('in line has round bores on the crank axis', () => {
    const bores = drawn(demo('skerry-3'), 'joint').shapes.filter(({ role }) => role === 'bore')
    expect(bores.map((bore) => (bore.kind === 'circle' ? [bore.x, bore.y, bore.radius] : null))).toEqual([
      [100, 0, 42],
      [196, 0, 42],
      [292, 0, 42],
    ])
  })

  it('in a V has bores at a slant, the first bank on the plus side, each as long as its bore is wide', () => {
    const bores = drawn(demo('firth-v8'), 'block').shapes.filter(({ role }) => role === 'bore')
    const bore = inMillimetres(demo('firth-v8').case.bore)
    expect(bores.map(({ id }) => id)).toEqual([1, 2, 3, 4, 5, 6, 7, 8].map((number) => `bore/${number}`))
    bores.forEach((shape, index) => {
      const { top, width, height } = boxOf(shape)
      expect(width).toBeCloseTo(bore, 6)
      // Half of 90° off the vertical: foreshortened by cos 45°.
      expect(height).toBeCloseTo(bore * Math.SQRT1_2, 1)
      expect(Math.sign(top + height / 2), shape.id).toBe(index < 4 ? 1 : -1)
    })
  })

  it('lying on its side, flat and split along the crank, has round bores again', () => {
    const bores = drawn(demo('moor-flat-4'), 'joint').shapes.filter(({ role }) => role === 'bore')
    expect(bores.map(({ kind }) => kind)).toEqual(['circle', 'circle', 'circle', 'circle'])
  })

  it('is described on a side of the case by the centre lines of its saddles', () => {
    const { shapes } = drawn(demo('firth-v8'), 'port')
    expect(shapes.filter(({ id }) => /^saddle\/M\d\/mark$/.test(id))).toHaveLength(5)
  })
})
