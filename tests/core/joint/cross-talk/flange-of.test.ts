import { describe, expect, it } from 'vitest'
import {
  clampMap,
  flangeOf,
  type BetweenFaces,
  type Flange,
  type Point,
} from '../../../../core/joint/index.ts'
import { inMillimetres, newtons } from '../../../../core/quantity/index.ts'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { pullsOf } from '../../../../core/tightening/index.ts'
import { demoDraft, demoIds, demoSpec, named, specOf } from '../../engine/demo.ts'
import { valueOf } from '../workshop.ts'
import { en } from '../../../../core/words/index.ts'

/** The edge as the spec gives it, or else a rectangle 15 mm outside the fasteners. */
function outlineOf(spec: EngineSpec, faceId: string): readonly Point[] {
  const { outline } = named(spec.case.faces, faceId)
  if (outline !== undefined) return outline.map(([x, y]) => ({ x: inMillimetres(x), y: inMillimetres(y) }))
  const here = spec.fasteners.filter(({ face }) => face === faceId)
  const xs = here.map(({ at }) => inMillimetres(at[0]))
  const ys = here.map(({ at }) => inMillimetres(at[1]))
  const [left, right] = [Math.min(...xs) - 15, Math.max(...xs) + 15]
  const [low, high] = [Math.min(...ys) - 15, Math.max(...ys) + 15]
  return [
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: high },
    { x: left, y: high },
  ]
}

function modelOf(spec: EngineSpec, face: string, between: BetweenFaces = 'metal'): Flange {
  return valueOf(flangeOf(spec, face, outlineOf(spec, face), between))
}

/** What each fastener holds after the procedure, by id. */
function heldAfter(spec: EngineSpec, procedureId: string, between: BetweenFaces = 'metal') {
  const procedure = named(spec.procedures, procedureId)
  const flange = modelOf(spec, procedure.face, between)
  const { afterPulls } = clampMap(flange, valueOf(pullsOf(spec, procedure)))
  return new Map(flange.bolts.map(({ id }, place) => [id, afterPulls.at(-1)!.loads[place]!]))
}

describe('the flange of an engine', () => {
  const faces = demoIds.flatMap((id) => {
    const spec = demoSpec(id)
    return spec.case.faces
      .filter(({ id: face }) => spec.fasteners.some((fastener) => fastener.face === face))
      .map(({ id: face }) => [id, face, spec] as const)
  })

  it.each(faces)('of %s, face %s, is one that can be calculated', (_, face, spec) => {
    const flange = modelOf(spec, face)
    const here = spec.fasteners.filter((fastener) => fastener.face === face)
    expect(flange.bolts.map(({ id }) => id).toSorted()).toEqual(here.map(({ id }) => id).toSorted())
    expect(flange.nodes.length).toBeLessThan(2000)
    for (const { from, to } of flange.beams) {
      const [one, other] = [flange.nodes[from]!, flange.nodes[to]!]
      expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(1e-3)
    }
    expect(flange.assumptions.length).toBeGreaterThan(3)
    for (const each of flange.assumptions) expect(en.flangeAssumptions[each]).toMatch(/^[A-Z].*\.$/)
    expect(
      clampMap(flange, [{ pass: 0, bolt: here[0]!.id, kind: 'set', to: newtons(5000) }]).afterPulls,
    ).toHaveLength(1)
  })

  it('has its fasteners where they are, or at the nearest place of the edge', () => {
    // Skerry 3: case bolt 1 stands in the wall of saddle 2 at (148, 46); flange bolt 9 at (196, 86), 14 mm
    // from the edge at 100.
    const { bolts, nodes } = modelOf(demoSpec('skerry-3'), 'joint')
    expect(nodes[named(bolts, 'case-1').node]).toEqual({ x: 148, y: 46 })
    expect(nodes[named(bolts, 'flange-9').node]!.x).toBeCloseTo(196, 9)
    expect(nodes[named(bolts, 'flange-9').node]!.y).toBeCloseTo(100, 9)
  })

  it('says in words what it takes for granted, and that it is for teaching', () => {
    const { assumptions } = modelOf(demoSpec('skerry-3'), 'sump', 'gasket')
    expect(assumptions).toContain('gasket')
    expect(assumptions.at(-1)).toBe('teaching')
    expect(modelOf(demoSpec('skerry-3'), 'joint').assumptions[0]).toBe('walls')
    expect(modelOf(demoSpec('tarn-4'), 'block').assumptions[0]).toBe('caps')
  })

  it('is stiffer across a saddle than along the rail, and lies on nothing within the bore', () => {
    const { beams, nodes } = modelOf(demoSpec('skerry-3'), 'joint')
    const within = beams.filter(({ from, to }) => [from, to].every((node) => Math.abs(nodes[node]!.y) < 27.6))
    expect(within.length).toBeGreaterThan(0)
    const bores = within.filter(({ from }) => [52, 148, 244, 340].includes(nodes[from]!.x))
    expect(bores.every(({ bedMpa }) => bedMpa === 0)).toBe(true)
    const along = beams.find(({ from, to }) => nodes[from]!.y === 100 && nodes[to]!.y === 100)!
    expect(bores[0]!.bendingNmm2).toBeGreaterThan(5 * along.bendingNmm2)
  })

  it('refuses a face that nothing holds, by its name', () => {
    const spec = demoSpec('skerry-3')
    const bare = { ...spec, fasteners: [] }
    expect(flangeOf(bare, 'sump', outlineOf(spec, 'sump'), 'metal')).toMatchObject({
      problem: { code: 'face-without-fasteners', facts: { face: 'Sump face' } },
    })
  })

  it('refuses a class that is none', () => {
    const spec = demoSpec('skerry-3')
    const groups = spec.fastenerGroups.map((group) => ({ ...group, propertyClass: '11.9' }))
    const refused = flangeOf({ ...spec, fastenerGroups: groups }, 'sump', outlineOf(spec, 'sump'), 'metal')
    expect(refused).toMatchObject({ ok: false, problem: { code: 'property-class-unknown' } })
  })

  it('of a face that is not there is a mistake of the program', () => {
    expect(() => flangeOf(demoSpec('skerry-3'), 'lid', [], 'metal')).toThrow(RangeError)
  })
})

describe('a procedure on the flange of an engine', () => {
  it('leaves caps alone that are not pulled', () => {
    const spec = demoSpec('tarn-4')
    const flange = modelOf(spec, 'block')
    const middle = clampMap(flange, [{ pass: 0, bolt: 'cap-1', kind: 'set', to: newtons(20_000) }])
    const loads = flange.bolts.map(({ id }, place) => ({ id, load: middle.afterPulls[0]!.loads[place]! }))
    const ofOtherCaps = loads.filter(({ id }) => !['cap-1', 'cap-2'].includes(id))
    expect(ofOtherCaps).toHaveLength(8)
    for (const { id, load } of ofOtherCaps) expect(load, id).toBeLessThan(1e-6)
  })

  it('costs bolts more of their load over a gasket than metal on metal', () => {
    const spec = demoSpec('skerry-3')
    const spread = (between: BetweenFaces) => {
      const loads = [...heldAfter(spec, 'sump', between).values()]
      return Math.max(...loads) / Math.min(...loads)
    }
    expect(spread('gasket')).toBeGreaterThan(spread('metal'))
  })

  it('gives the mirrored map for the mirrored engine', () => {
    const draft = demoDraft('skerry-3')
    const mirrored = (at: readonly string[]): [string, string] => {
      const across = at[1]!
      return [at[0]!, across.startsWith('-') ? across.slice(1) : `-${across}`]
    }
    for (const fastener of draft.fasteners) fastener.at = mirrored(fastener.at)
    for (const face of draft.case.faces) if (face.outline) face.outline = face.outline.map(mirrored)
    for (const procedure of ['case', 'flange', 'sump']) {
      const here = heldAfter(demoSpec('skerry-3'), procedure)
      const there = heldAfter(specOf(draft), procedure)
      expect(here.size, procedure).toBeGreaterThan(5)
      for (const [id, load] of here) expect(Math.abs(there.get(id)! - load)).toBeLessThan(1e-9 * 50_000)
    }
  })
})
