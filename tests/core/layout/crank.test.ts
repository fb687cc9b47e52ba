import fc from 'fast-check'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readSpec, type EngineSpec } from '../../../core/engine/index.ts'
import { bareFacts, sceneOf, type Scene, type Sheet, type View } from '../../../core/layout/index.ts'
import { en } from '../../../core/words/index.ts'
import { checkProperty } from '../../property.ts'
import { demoDraft, specOf } from '../engine/demo.ts'
import { anyEngine } from './any-engine.ts'
import { boxOf, collisions, discsOf, outside, textsOf, unreal } from './checks.ts'
import { demo, demos, sheets, views } from './demos.ts'

const sheet: Sheet = { widthPx: 940, heightPx: 700, capitalPx: 12 }
const above: View = { from: 'above', turn: 0 }

function laid(spec: EngineSpec, view: View = above, on: Sheet = sheet, face = 'joint'): Scene {
  return sceneOf(en, spec, { ...bareFacts(face), subject: 'check', crank: true }, view, on)
}

const shapeIn = (scene: Scene, id: string) => {
  const shape = scene.shapes.find((each) => each.id === id)
  if (shape === undefined) throw new Error(`there is no ${id}`)
  return boxOf(shape)
}

/** How many times larger it is drawn across: through bolts 1 and 2 are 92 mm apart. */
function stretchOf(scene: Scene): number {
  const [one, other] = ['through-1', 'through-2'].map((id) => discsOf(scene).find((disc) => disc.id === id))
  return Math.abs(one!.y - other!.y) / 92
}

/** The numbers of the file itself, so that nothing of the program's own reckoning is used. */
const written = JSON.parse(readFileSync('specs/moor-flat-4.json', 'utf8')) as {
  readonly case: {
    readonly saddles: readonly { id: string; at: string; width: string; diameter: string }[]
    readonly rods: readonly { id: string; at: string; width: string }[]
  }
  readonly crank: {
    readonly throwRadius: string
    readonly throws: readonly { id: string; rods: readonly string[]; angle: string }[]
  }
}
const number = (text: string) => Number.parseFloat(text)

describe('the crank of the flat four, laid into its case', () => {
  const scene = laid(demo('moor-flat-4'))
  const stretch = stretchOf(scene)

  it('has each main journal in its saddle, thinner than the housing', () => {
    expect(written.case.saddles).toHaveLength(3)
    for (const { id, at, width, diameter } of written.case.saddles) {
      const box = shapeIn(scene, `journal/${id}`)
      expect(box.left + box.width / 2, id).toBeCloseTo(number(at), 6)
      expect(box.width, id).toBeCloseTo(number(width), 6)
      expect(box.top + box.height / 2, id).toBeCloseTo(0, 6)
      expect(box.height, id).toBeLessThan(number(diameter) * stretch)
      // The journals of the demo are 53 mm.
      expect(box.height, id).toBeCloseTo(53 * stretch, 3)
    }
  })

  it('has its pins where their rods are, off the axis by 38 mm: 1 and 4 to the top side, 2 and 3 to the sump side', () => {
    // Seen from above +y, the top side, is up on the sheet.
    const across = { P1: -38, P2: 38, P3: 38, P4: -38 } as const
    for (const { id, rods } of written.crank.throws) {
      const rod = written.case.rods.find((each) => each.id === rods[0])!
      const box = shapeIn(scene, `pin/${id}`)
      expect(box.left + box.width / 2, id).toBeCloseTo(number(rod.at), 6)
      expect(box.width, id).toBeCloseTo(number(rod.width), 6)
      expect((box.top + box.height / 2) / stretch, id).toBeCloseTo(across[id as 'P1'], 6)
    }
  })

  it('names the rods of each pin and where it stands, and says so in words', () => {
    const texts = textsOf(scene).map(({ text }) => text)
    expect(texts).toEqual(expect.arrayContaining(['B1', 'B2', 'B3', 'B4']))
    expect(scene.rows.find(({ about }) => about === 'throw/P1')?.text).toBe('Crankpin of B1: top side')
    expect(scene.rows.find(({ about }) => about === 'throw/P2')?.text).toBe('Crankpin of B2: sump side')
  })

  it('has its thrust washers at saddle 3 alone, both with their grooves on the side of the crank', () => {
    const washers = ['nose', 'drive'].map((side) => shapeIn(scene, `thrust/M3/${side}`))
    // The saddle is 26 mm wide about 258 mm.
    expect(washers[0]!.left + washers[0]!.width).toBeLessThanOrEqual(245)
    expect(washers[1]!.left).toBeGreaterThanOrEqual(271)
    const middle = (box: { left: number; width: number }) => box.left + box.width / 2
    expect(middle(shapeIn(scene, 'thrust/M3/groove/nose/1'))).toBeLessThan(middle(washers[0]!))
    expect(middle(shapeIn(scene, 'thrust/M3/groove/drive/1'))).toBeGreaterThan(middle(washers[1]!))
    expect(scene.shapes.filter(({ id }) => id.startsWith('thrust/M1'))).toEqual([])
  })

  it('is not there where a step does not show it, and not in a spec without one', () => {
    const crankOf = ({ shapes }: Scene) =>
      shapes.filter(({ id }) => /^(journal|pin|web|weight|wheel|shaft)\//.test(id))
    const facts = { ...bareFacts('joint'), subject: 'check' } as const
    expect(crankOf(sceneOf(en, demo('moor-flat-4'), facts, above, sheet))).toEqual([])
    const { crank: _, ...without } = demo('moor-flat-4')
    expect(sceneOf(en, without, { ...facts, crank: true }, above, sheet).shapes).toEqual(
      sceneOf(en, without, facts, above, sheet).shapes,
    )
    expect(crankOf(scene).length).toBeGreaterThan(15)
  })
})

describe('a pin at an angle', () => {
  const turnedTo = (angle: string) => {
    const draft = demoDraft('moor-flat-4')
    draft.crank!.throws[0]!.angle = angle
    return specOf(draft)
  }

  it('stands on the axis and towards the eye at 0 ° from above, away from it from below, and the other way at 180 °', () => {
    const stands = (angle: string, from: View['from']) => {
      const scene = laid(turnedTo(angle), { from, turn: 0 })
      const box = shapeIn(scene, 'pin/P1')
      expect(box.top + box.height / 2).toBeCloseTo(0, 6)
      return [
        scene.rows.find(({ about }) => about === 'throw/P1')?.text,
        scene.shapes.some(({ id }) => id === 'pin/P1/towards'),
      ]
    }
    expect(stands('0 °', 'above')).toEqual(['Crankpin of B1: towards you', true])
    expect(stands('0 °', 'below')).toEqual(['Crankpin of B1: away from you', false])
    expect(stands('180 °', 'above')).toEqual(['Crankpin of B1: away from you', false])
    expect(stands('180 °', 'below')).toEqual(['Crankpin of B1: towards you', true])
  })

  it('is foreshortened by the sine: at 30 ° it is half a throw, 19 mm, off the axis', () => {
    const scene = laid(turnedTo('30 °'))
    const stretch = stretchOf(scene)
    const box = shapeIn(scene, 'pin/P1')
    expect((box.top + box.height / 2) / stretch).toBeCloseTo(-19, 6)
    expect(scene.rows.find(({ about }) => about === 'throw/P1')?.text).toBe('Crankpin of B1: 30°')
  })
})

describe('the crank of a tunnel case, looked at along it', () => {
  const draft = demoDraft('quay-3')
  draft.crank = {
    throwRadius: '46 mm',
    throws: [
      { id: 'P1', rods: ['B1'], angle: '0 °' },
      { id: 'P2', rods: ['B2'], angle: '120 °' },
      { id: 'P3', rods: ['B3'], angle: '240 °' },
    ],
    counterweights: [{ throw: 'P1', side: 'nose', radius: '60 mm' }],
  }
  const spec = specOf(draft)

  it('has its pins around the axis by their angles, from the drive end with the plus side at the right', () => {
    const scene = laid(spec, above, sheet, 'drive')
    const places = { P1: [0, 46], P2: [39.837, -23], P3: [-39.837, -23] } as const
    for (const [id, [x, y]] of Object.entries(places)) {
      const box = shapeIn(scene, `pin/${id}`)
      expect(box.left + box.width / 2, id).toBeCloseTo(x, 2)
      // Up on the sheet is less.
      expect(box.top + box.height / 2, id).toBeCloseTo(-y, 2)
    }
    expect(collisions(scene)).toEqual([])
  })

  it('is mirrored from the nose, where the plus side is at the left', () => {
    const box = shapeIn(laid(spec, above, sheet, 'nose'), 'pin/P2')
    expect(box.left + box.width / 2).toBeCloseTo(-39.837, 2)
  })

  it('has what is nearest to the eye over the rest', () => {
    const order = (face: string) =>
      laid(spec, above, sheet, face)
        .shapes.filter(({ id }) => /^pin\/P\d$/.test(id))
        .map(({ id }) => id)
    expect(order('nose')).toEqual(['pin/P3', 'pin/P2', 'pin/P1'])
    expect(order('drive')).toEqual(['pin/P1', 'pin/P2', 'pin/P3'])
  })
})

describe.each(demos.map((spec) => [spec.id, spec] as const))('the crank of %s', (_, spec) => {
  const [step] = spec.steps.filter((each) => 'shows' in each && each.shows === 'crank')
  const face = spec.case.faces.find(({ id }) => step !== undefined && 'face' in step && id === step.face)!

  it('is shown in a step, lies within its sheet, and has every rod in words, no label over another', () => {
    for (const on of sheets) {
      const scene = laid(spec, { from: face.workedFrom, turn: 0 }, on, face.id)
      expect(outside(scene)).toEqual([])
      expect(collisions(scene)).toEqual([])
      const rows = scene.rows.filter(({ about }) => about?.startsWith('throw/')).map(({ text }) => text)
      for (const { id } of spec.case.rods) expect(rows.join(' '), id).toMatch(new RegExp(`\\b${id}\\b`))
    }
  })
})

describe('any crank in any case', () => {
  it('lies within the sheet, its journals in their saddles, no label over another, everything in words', () => {
    let laidIn = 0
    const angles = fc.array(fc.integer({ min: 0, max: 359 }), { minLength: 1, maxLength: 6 })
    checkProperty(
      fc.property(
        fc.tuple(anyEngine, angles, fc.integer({ min: 10, max: 60 })),
        fc.constantFrom(...views),
        fc.constantFrom(...sheets),
        ([engine, turned, radius], view, on) => {
          const spec = withCrank(engine, turned, radius)
          const scene = laid(spec, view, on)
          expect(unreal(scene)).toEqual([])
          expect(outside(scene)).toEqual([])
          expect(collisions(scene)).toEqual([])
          const drawn = new Set(scene.shapes.flatMap(({ about }) => about ?? []))
          expect([...drawn].toSorted()).toEqual(scene.rows.map(({ about }) => about).toSorted())
          const along = view.turn % 2 === 0 ? ('width' as const) : ('height' as const)
          for (const { id, width } of spec.case.saddles) {
            expect(shapeIn(scene, `journal/${id}`)[along]).toBeCloseTo(width / 1e6, 6)
            laidIn += 1
          }
        },
      ),
      { numRuns: 60 },
    )
    expect(laidIn).toBeGreaterThan(60)
  })
})

/** One rod between each two saddles, each on its own pin with a weight on both sides. */
function withCrank(engine: EngineSpec, angles: readonly number[], radius: number): EngineSpec {
  const { saddles } = engine.case
  const count = Math.min(saddles.length - 1, 20)
  const mm = (nanometres: number) => `${nanometres / 1e6} mm`
  const throws = Array.from({ length: count }, (_, index) => ({
    ...{ id: `P${index + 1}`, rods: [`B${index + 1}`] },
    angle: `${angles[index % angles.length]} °`,
  }))
  const text = JSON.stringify({
    ...JSON.parse(readFileSync('specs/moor-flat-4.json', 'utf8')),
    crank: {
      throwRadius: `${radius} mm`,
      throws,
      counterweights: throws.flatMap(({ id }) =>
        ['nose', 'drive'].map((side) => ({ throw: id, side, radius: `${radius + 20} mm` })),
      ),
      wheels: [{ id: 'w', kind: 'chain', at: mm(saddles[0]!.at - 40e6), width: '12 mm', diameter: '90 mm' }],
    },
    case: {
      ...{ family: engine.case.family, cylinders: count, bankAngle: '0 °', bore: '60 mm', pitch: '80 mm' },
      ...{ firstBoreAt: '40 mm', sides: engine.case.sides },
      saddles: saddles.map(({ id, at, width, diameter, thrust }) => ({
        ...{ id, at: mm(at), width: mm(width), diameter: mm(diameter), thrust },
      })),
      rods: throws.map(({ rods: [id] }, index) => ({
        ...{ id, cylinder: index + 1, width: '12 mm', diameter: '40 mm' },
        at: mm((saddles[index]!.at + saddles[index + 1]!.at) / 2),
      })),
      faces: engine.case.faces.map(({ id, name, shows, plane, workedFrom }) => ({
        id,
        name,
        shows,
        plane,
        workedFrom,
      })),
    },
    ...{ fits: [], fasteners: [], procedures: [], beads: [], parts: [], ringSets: [], cautions: [] },
    endFloat: undefined,
    steps: [{ id: 'look', name: 'Look', kind: 'check', instruction: 'Look.' }],
  })
  const read = readSpec(text)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return { ...read.spec, fasteners: engine.fasteners, fastenerGroups: engine.fastenerGroups }
}
