import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkProperty } from '../../property.ts'
import { sceneOf, type Scene, type Sheet } from '../../../core/layout/index.ts'
import { boxOf, collisions, discsOf, outside, unreal } from './checks.ts'
import { demo, factsAt, sheets, stages, views } from './demos.ts'
import { anyEngine } from './any-engine.ts'
import { en } from '../../../core/words/index.ts'

const anySheet: fc.Arbitrary<Sheet> = fc.record({
  widthPx: fc.integer({ min: 480, max: 2600 }),
  heightPx: fc.integer({ min: 340, max: 1600 }),
  capitalPx: fc.integer({ min: 9, max: 48 }),
})

describe('the drawing of any engine', () => {
  it('has nothing over anything else, nothing outside the sheet, and every fastener once', () => {
    checkProperty(
      fc.property(
        anyEngine,
        anySheet,
        fc.constantFrom(...views),
        fc.constantFrom(...stages),
        (spec, sheet, view, stage) => {
          const scene = sceneOf(en, spec, factsAt(spec, 'joint', stage), view, sheet)
          expect(unreal(scene)).toEqual([])
          expect(outside(scene)).toEqual([])
          expect(collisions(scene)).toEqual([])
          expect(discsOf(scene)).toHaveLength(spec.fasteners.length)
        },
      ),
      { numRuns: 150 },
    )
  })

  it('keeps the callout free where a small sheet has large letters and numbers in lanes', () => {
    const small = fc.record({
      widthPx: fc.integer({ min: 480, max: 520 }),
      heightPx: fc.integer({ min: 340, max: 360 }),
      capitalPx: fc.integer({ min: 40, max: 48 }),
    })
    const inAV = anyEngine.filter(
      ({ case: { bankAngle, cylinders }, fasteners }) =>
        bankAngle > 0 && cylinders <= 8 && fasteners.length >= 30,
    )
    let callouts = 0
    checkProperty(
      fc.property(inAV, small, fc.constantFrom(0, 2), (spec, sheet, turn) => {
        const facts = factsAt(spec, 'joint', 'under way')
        const scene = sceneOf(en, spec, facts, { from: 'above', turn }, sheet)
        if (scene.shapes.some(({ id }) => id === 'callout')) callouts += 1
        expect(collisions(scene)).toEqual([])
        expect(outside(scene)).toEqual([])
      }),
      { numRuns: 60 },
    )
    expect(callouts).toBeGreaterThan(30)
  })

  it('keeps the pitch of the saddles to the nanometre, and is its own mirror from below', () => {
    checkProperty(
      fc.property(anyEngine, anySheet, (spec, sheet) => {
        const [above, below] = (['above', 'below'] as const).map((from) =>
          sceneOf(en, spec, factsAt(spec, 'joint', 'bare'), { from, turn: 0 }, sheet),
        )
        const middles = spec.case.saddles.map(({ id }) => {
          const { left, width } = boxOf(
            above!.shapes.find((shape) => shape.id === `half/${id}/upper/unknown`)!,
          )
          return Math.round((left + width / 2) * 1e6)
        })
        expect(middles).toEqual(spec.case.saddles.map(({ at }) => Number(at)))
        // A title of very long names may take a line more from below: then the same is drawn smaller.
        const isAsLarge = above!.frame.width === below!.frame.width
        const places = (scene: Scene, side: 1 | -1) =>
          discsOf(scene).map(({ id, x, y, radius }) =>
            [id, ...[x, side * y, isAsLarge ? radius : 0].map((mm) => Math.round(mm * 1e6) + 0)].join(' '),
          )
        expect(places(above!, 1)).toEqual(places(below!, -1))
      }),
      { numRuns: 40 },
    )
  })

  it('is the same for the same input', () => {
    checkProperty(
      fc.property(anyEngine, fc.constantFrom(...views), (spec, view) => {
        const facts = factsAt(spec, 'joint', 'under way')
        expect(sceneOf(en, spec, facts, view, sheets[0]!)).toEqual(sceneOf(en, spec, facts, view, sheets[0]!))
      }),
      { numRuns: 20 },
    )
  })
})

describe('odd engines', () => {
  const spec = demo('fen-1')
  const view = { from: 'above', turn: 0 } as const
  const [pattern] = spec.fasteners.filter(({ face }) => face === 'joint')
  const at = (x: number, y: number) => [x * 1e6, y * 1e6] as unknown as (typeof pattern & object)['at']

  it('a bolt far outside its flange is still on the sheet, so that the slip is seen', () => {
    const far = {
      ...spec,
      fasteners: [...spec.fasteners, { ...pattern!, id: 'far', number: '99', at: at(2000, 0) }],
    }
    const scene = sceneOf(en, far, factsAt(far, 'joint', 'first pull'), view, sheets[0]!)
    expect(outside(scene)).toEqual([])
    expect(collisions(scene)).toEqual([])
    expect(discsOf(scene).map(({ id }) => id)).toContain('far')
  })

  it('a thousand fasteners on a single are a thousand discs, none over another', () => {
    const fasteners = Array.from({ length: 1000 }, (_, index) => ({
      ...{ ...pattern!, id: `f${index}`, number: String(index % 1000) },
      at: at(2 + (index % 40) * 5, -110 + Math.floor(index / 40) * 9),
    }))
    const scene = sceneOf(
      en,
      { ...spec, fasteners },
      factsAt({ ...spec, fasteners }, 'joint', 'bare'),
      view,
      sheets[1]!,
    )
    expect(discsOf(scene)).toHaveLength(1000)
    expect(collisions(scene)).toEqual([])
  })

  it('two fasteners at one place are drawn, both', () => {
    const twice = { ...spec, fasteners: [pattern!, { ...pattern!, id: 'again', number: '50' }] }
    const scene = sceneOf(en, twice, factsAt(twice, 'joint', 'bare'), view, sheets[0]!)
    expect(unreal(scene)).toEqual([])
    expect(discsOf(scene)).toHaveLength(2)
  })

  it('a face with nothing on it is an empty sheet of paper with its name', () => {
    const bare = {
      ...spec,
      fasteners: [],
      case: {
        ...spec.case,
        dowels: [],
        oilPassages: [],
        faces: [{ ...spec.case.faces[2]!, outline: undefined! }],
      },
      beads: [],
    }
    const scene = sceneOf(en, bare, factsAt(bare, 'cover', 'bare'), view, sheets[0]!)
    expect(unreal(scene)).toEqual([])
    expect(scene.rows.map(({ text }) => text)).toEqual(['Oil pump cover, seen from the nose'])
  })

  it('a long case thinner on the sheet than the names of its ends has them clear of the names along it', () => {
    const length = 39
    const saddles = Array.from({ length: length + 1 }, (_, index) => ({
      ...spec.case.saddles[0]!,
      ...{ id: `M${index + 1}`, at: index * 57e6 },
    }))
    const fasteners = saddles.flatMap(({ at: x }, index) =>
      [27, -27].map((y) => ({ ...pattern!, id: `f${index}/${y}`, number: '1', at: at(x / 1e6, y) })),
    )
    const joint = { ...spec.case.faces.find(({ id }) => id === 'joint')!, outline: undefined! }
    const thin = {
      ...{ ...spec, fasteners, beads: [] },
      case: {
        ...{ ...spec.case, cylinders: 24, bankAngle: 0, bore: 40e6, pitch: 57e6, firstBoreAt: 28.5e6 },
        ...{ saddles, rods: [], dowels: [], oilPassages: [], faces: [joint] },
      },
    } as unknown as typeof spec
    const sheet = { widthPx: 480, heightPx: 340, capitalPx: 18 }
    const scene = sceneOf(en, thin, factsAt(thin, 'joint', 'bare'), view, sheet)
    const [edge, nose] = ['face/joint', 'nose/name'].map((id) =>
      boxOf(scene.shapes.find((shape) => shape.id === id)!),
    )
    expect(nose!.top).toBeLessThan(edge!.top)
    expect(scene.shapes.map(({ id }) => id)).toContain('bore/1/name')
    expect(collisions(scene)).toEqual([])
  })

  it('a sheet of no size does not divide by nothing', () => {
    const scene = sceneOf(en, spec, factsAt(spec, 'joint', 'first pull'), view, {
      widthPx: 1,
      heightPx: 1,
      capitalPx: 12,
    })
    expect(unreal(scene)).toEqual([])
  })

  it('a face that the engine does not have is a bug of the caller', () => {
    expect(() => sceneOf(en, spec, factsAt(spec, 'lid', 'bare'), view, sheets[0]!)).toThrow(RangeError)
  })
})
