import { describe, expect, it } from 'vitest'
import { sceneOf, textBox, type Role, type Scene } from '../../../core/layout/index.ts'
import { boxOf, overlap, textsOf } from './checks.ts'
import { demo, factsAt, sheets, type Stage } from './demos.ts'
import { en } from '../../../core/words/index.ts'

const spec = demo('skerry-3')
const sheet = sheets[0]!
const drawn = (stage: Stage, face = 'joint', more = {}): Scene =>
  sceneOf(en, spec, { ...factsAt(spec, face, stage), ...more }, { from: 'below', turn: 0 }, sheet)
const has = ({ shapes }: Scene, role: Role): boolean => shapes.some((shape) => shape.role === role)
const texts = ({ shapes }: Scene): readonly string[] =>
  shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))

describe('a drawing shows what its step is about', () => {
  it('while bolts are tightened: every number and the saddles to find one’s way by, no clearance and no grade', () => {
    const scene = drawn('mid run')
    const numbers = scene.shapes.filter(({ id }) => /^fastener\/.*\/number$/.test(id))
    expect(numbers).toHaveLength(22)
    expect(texts(scene)).toEqual(expect.arrayContaining(['M1', 'M2', 'M3', 'M4']))
    expect(has(scene, 'landmark')).toBe(true)
    for (const role of ['grade', 'shell', 'bore', 'dowel', 'oil-passage', 'bead-laid'] as const)
      expect(has(scene, role), role).toBe(false)
    expect(texts(scene).filter((text) => text.includes('µm'))).toEqual([])
  })

  it('while shells are chosen and fitted: grades and clearances, fasteners as quiet rings without numbers', () => {
    const scene = drawn('fitting')
    expect(texts(scene)).toEqual(expect.arrayContaining(['36 µm', '37 µm', 'upper', 'lower']))
    expect(scene.shapes.filter(({ role }) => role === 'distant')).toHaveLength(22)
    expect(scene.shapes.some(({ id }) => /^fastener\/.*\/number$/.test(id))).toBe(false)
  })

  it('says thrust under the name of its bearing, and under its clearance once that is known', () => {
    const above = (bearings: object) => {
      const scene = drawn('fitting', 'joint', { bearings })
      const thrust = textsOf(scene).find(({ text }) => text === 'thrust')!
      const own = textsOf(scene).filter(({ about, y }) => about === thrust.about && y < thrust.y)
      return own.toSorted((one, other) => other.y - one.y).map(({ text }) => text)[0]
    }
    expect(above({})).toBe('M3')
    expect(above(factsAt(spec, 'joint', 'fitting').bearings)).toBe('38 µm')
  })

  it('while a bead is laid: its path and its keep-outs with their names', () => {
    const scene = drawn('bead')
    expect(has(scene, 'bead-to-lay')).toBe(true)
    expect(texts(scene)).toEqual(expect.arrayContaining(['oil way to the gallery', 'no sealant']))
    expect(texts(scene)).not.toContain('M1')
  })

  it('while something is checked: that part in a heavy frame with the crosshair through it', () => {
    const scene = drawn('check')
    expect(scene.shapes.find(({ role }) => role === 'checked')).toMatchObject({ about: 'thrust/M3' })
    expect(scene.shapes.some(({ role }) => role === 'crosshair')).toBe(true)
  })

  it('says in its rows only what it shows', () => {
    const kinds = (stage: Stage) =>
      [...new Set(drawn(stage).rows.map(({ about }) => about.split('/')[0]))].sort()
    expect(kinds('mid run')).toEqual(['drive', 'face', 'fastener', 'half', 'nose', 'opening'])
    expect(kinds('under way')).toEqual(
      [...kinds('mid run'), 'bead', 'bore', 'dowel', 'keep-out', 'oil-passage', 'thrust'].sort(),
    )
  })
})

describe('what is next', () => {
  const middle = (scene: Scene) => {
    const disc = scene.shapes.find(({ role, kind }) => role === 'next' && kind === 'circle')
    return disc?.kind === 'circle' ? disc : null
  }

  it('has a crosshair through its middle from frame to frame, under everything but the bare case', () => {
    const scene = drawn('mid run')
    const { left, top, width, height } = scene.frame
    const { x, y } = middle(scene)!
    const lines = scene.shapes.flatMap((shape) =>
      shape.kind === 'line' && shape.role === 'crosshair' ? [shape.points] : [],
    )
    const across = lines.filter(([, from, , to]) => from === y && to === y)
    const down = lines.filter(([from, , to]) => from === x && to === x)
    expect(across.length + down.length).toBe(lines.length)
    expect([across[0]![0], across.at(-1)![2]]).toEqual([left, left + width])
    expect([down[0]![1], down.at(-1)![3]]).toEqual([top, top + height])
    const parts = scene.shapes.filter(({ layer }) => layer === 'parts')
    expect(parts.findIndex(({ role }) => role === 'crosshair')).toBe(0)
  })

  it('has a crosshair that is broken where a name or the title stands in its way', () => {
    for (const stage of ['mid run', 'fitting', 'check'] as const) {
      const scene = drawn(stage)
      const lines = scene.shapes.filter(({ role }) => role === 'crosshair').map(boxOf)
      const names = textsOf(scene).filter(({ role }) => role.endsWith('label'))
      expect(lines.length, stage).toBeGreaterThan(2)
      for (const name of names)
        expect(
          lines.filter((line) => overlap(line, textBox(name))),
          `${stage}: ${name.text}`,
        ).toEqual([])
    }
  })

  it('is a larger disc in a ring, on top of all others', () => {
    const scene = drawn('mid run')
    const discs = scene.shapes.flatMap((shape) =>
      shape.kind === 'circle' && shape.id.endsWith('/disc') ? [shape] : [],
    )
    const others = discs.filter(({ role }) => role !== 'next')
    expect(others).toHaveLength(21)
    for (const { radius } of others) expect(radius).toBeLessThan(middle(scene)!.radius)
  })

  it('is nothing while somebody has to answer for a flag: the flagged one has the crosshair and the callout', () => {
    const scene = drawn('flag')
    expect(middle(scene)).toBeNull()
    expect(scene.shapes.find(({ id }) => id === 'callout')).toMatchObject({
      role: 'callout-flagged',
      about: 'fastener/case-5',
    })
    expect(texts(scene)).toEqual(expect.arrayContaining(['5 !']))
    expect(scene.rows.filter(({ state }) => state === 'next' || state === 'after-next')).toEqual([])
    expect(scene.shapes.some(({ id }) => id === 'path')).toBe(false)
  })

  it('and its neighbours alone have numbers for somebody who reads from 2 m', () => {
    const facts = factsAt(spec, 'joint', 'mid run')
    const far = sceneOf(
      en,
      spec,
      facts,
      { from: 'below', turn: 0 },
      { ...sheet, capitalPx: 44, onlyNext: true },
    )
    const numbers = far.shapes.filter(({ id }) => /^fastener\/.*\/number$/.test(id)).map(({ about }) => about)
    expect(numbers).toContain('fastener/case-6')
    expect(numbers.length).toBeLessThanOrEqual(6)
    // The others are where they were, small.
    expect(far.shapes.filter(({ id }) => /^fastener\/.*\/disc$/.test(id))).toHaveLength(22)
  })
})

describe('a long thin case', () => {
  it('is stretched across by up to 1.8, says so, and keeps its circles round', () => {
    const strath = demo('strath-6')
    const scene = sceneOf(
      en,
      strath,
      factsAt(strath, 'joint', 'bare'),
      { from: 'below', turn: 0 },
      { widthPx: 842, heightPx: 480, capitalPx: 18 },
    )
    expect(texts(scene).join(' ')).toContain('Not to scale across')
    const passage = strath.case.oilPassages.find(({ face }) => face === 'joint')!
    const drawnPassage = scene.shapes.find(({ id }) => id === `oil-passage/${passage.id}`)!
    const [xs, ys] = [0, 1].map((axis) =>
      drawnPassage.kind === 'line' ? drawnPassage.points.filter((_, index) => index % 2 === axis) : [],
    )
    const stretch = (Math.max(...ys!) - Math.min(...ys!)) / (Number(passage.size[1]) / 1e6)
    expect(Math.max(...xs!) - Math.min(...xs!)).toBeCloseTo(Number(passage.size[0]) / 1e6, 6)
    expect(stretch).toBeGreaterThan(1.08)
    expect(stretch).toBeLessThanOrEqual(1.8 + 1e-9)
    const bore = scene.shapes.find(({ id }) => id === 'bore/1')
    expect(bore).toMatchObject({ kind: 'circle', radius: Number(strath.case.bore) / 2e6 })
  })

  it('is not where it would be no larger for it', () => {
    const low = sceneOf(
      en,
      spec,
      factsAt(spec, 'joint', 'mid run'),
      { from: 'below', turn: 0 },
      { ...sheet, heightPx: 360 },
    )
    expect(texts(low).join(' ')).toContain('Case joint')
    expect(texts(low).join(' ')).not.toContain('Not to scale')
  })
})
