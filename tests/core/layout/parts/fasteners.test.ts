import { describe, expect, it } from 'vitest'
import { sceneOf, type DrawingFacts, type FastenerState, type Scene } from '../../../../core/layout/index.ts'
import { discsOf } from '../checks.ts'
import { demo, factsAt, sheets } from '../demos.ts'
import { en } from '../../../../core/words/index.ts'

const spec = demo('skerry-3')
const sheet = sheets[0]!
const view = { from: 'below', turn: 0 } as const

function drawn(state: FastenerState, share = 0, more: Partial<DrawingFacts> = {}): Scene {
  const facts = factsAt(spec, 'joint', 'first pull')
  const fasteners = { 'case-1': { number: '1', state, share } }
  return sceneOf(en, spec, { ...facts, callout: null, fasteners, ...more }, view, sheet)
}

function pieces(scene: Scene): readonly string[] {
  return scene.shapes
    .filter(({ about, id }) => about === 'fastener/case-1' && id.startsWith('fastener/'))
    .map(({ id, role }) => `${id.split('/').at(-1)} ${role}`)
}

const row = (scene: Scene): { text: string; state: string } =>
  scene.rows.find(({ about }) => about === 'fastener/case-1')!

describe('a fastener', () => {
  it('that waits is a thin ring with its number', () => {
    expect(pieces(drawn('waiting'))).toEqual(['disc waiting', 'number waiting'])
    expect(row(drawn('waiting')).text).toBe('Fastener 1, saddle 2, pump side: waiting')
  })

  it('that is next is a larger disc on the overlay, in a halo, with its number and its value in the callout', () => {
    const scene = drawn('next', 0, { callout: '24 N·m' })
    expect(pieces(scene)).toEqual(['ring next-halo', 'disc next', 'number next'])
    const callout = scene.shapes.filter(({ id }) => id.startsWith('callout'))
    expect(callout.map(({ id, role, about }) => [id, role, about])).toEqual([
      ['callout', 'callout', 'fastener/case-1'],
      ['callout/cell', 'next', 'fastener/case-1'],
      ['callout/name', 'next', 'fastener/case-1'],
      ['callout/value', 'next-value', 'fastener/case-1'],
    ])
    expect(row(scene)).toEqual({
      about: 'fastener/case-1',
      text: 'Fastener 1, saddle 2, pump side: next, 24 N·m',
      state: 'next',
    })
  })

  it('that comes after the next has a faint ring in it', () => {
    expect(pieces(drawn('after-next'))).toEqual(['disc waiting', 'ring after-next', 'number waiting'])
  })

  it('that is partly done has its ring filled by the share of its passes', () => {
    const scene = drawn('partly-done', 0.5)
    expect(pieces(scene)).toEqual(['disc waiting', 'share partly-done', 'number waiting'])
    expect(scene.shapes.find(({ kind }) => kind === 'ring')).toMatchObject({ share: 0.5 })
    expect(row(scene).text).toBe('Fastener 1, saddle 2, pump side: partly done, 50 % of its passes')
  })

  it('that is done is solid, with a tick', () => {
    expect(pieces(drawn('done', 1))).toEqual(['disc done', 'number done', 'tick tick-done'])
  })

  it('that is flagged is a diamond, with an exclamation mark', () => {
    const scene = drawn('flagged', 0.5)
    expect(pieces(scene)).toEqual(['disc flagged', 'number waiting', 'exclamation warning-label'])
    const diamond = scene.shapes.find(({ id }) => id === 'fastener/case-1/disc')
    expect(diamond).toMatchObject({ kind: 'line', closed: true })
    expect(diamond?.kind === 'line' && diamond.points).toHaveLength(8)
  })

  it('is its bare hole, of its own size, while a bead is to be laid: so the bead is seen to pass beside it', () => {
    const scene = sceneOf(en, spec, factsAt(spec, 'joint', 'bead'), view, sheet)
    expect(pieces(scene)).toEqual(['hole hole'])
    // M10: the hole is drawn 10 mm wide.
    expect(scene.shapes.find(({ id }) => id === 'fastener/case-1/hole')).toMatchObject({ radius: 5 })
  })

  it('bears the number that the build gives it', () => {
    const scene = drawn('waiting', 0, {
      fasteners: { 'case-1': { number: '12', state: 'waiting', share: 0 } },
    })
    expect(scene.shapes.find(({ id }) => id === 'fastener/case-1/number')).toMatchObject({ text: '12' })
  })
})

describe('the way to the next fastener', () => {
  const facts = factsAt(spec, 'joint', 'under way')

  it('runs from rim to rim: it begins and ends within 10 mm of the discs and in neither', () => {
    const scene = sceneOf(en, spec, facts, view, sheet)
    const line = (id: string): readonly number[] => {
      const shape = scene.shapes.find((each) => each.id === id)
      return shape?.kind === 'line' ? shape.points : []
    }
    const gap = (id: string, x: number, y: number): number => {
      const disc = discsOf(scene).find((each) => each.id === id)!
      return Math.hypot(x - disc.x, y - disc.y) - disc.radius
    }
    const [startX, startY] = line('path')
    const [tipX, tipY] = line('path/head')
    for (const away of [gap('case-5', startX!, startY!), gap('case-6', tipX!, tipY!)]) {
      expect(away).toBeGreaterThan(0)
      expect(away).toBeLessThan(10)
    }
  })

  it('is absent before the first pull', () => {
    const { shapes } = sceneOf(en, spec, factsAt(spec, 'joint', 'first pull'), view, sheet)
    expect(shapes.some(({ id }) => id === 'path')).toBe(false)
  })
})

describe('a bearing', () => {
  it('is described by half, with grade, whether it lies in its place, and the clearance', () => {
    const { rows } = sceneOf(en, spec, factsAt(spec, 'joint', 'under way'), view, sheet)
    const rowAbout = (about: string) => rows.find((each) => each.about === about)
    expect(rowAbout('half/M1/upper')).toEqual({
      about: 'half/M1/upper',
      text: 'Saddle M1 upper: grade R, fitted, 36 µm',
      state: 'fitted',
    })
    expect(rowAbout('half/M2/lower')).toMatchObject({
      text: 'Saddle M2 lower: grade T, fitted, 37 µm, outside the limits',
      state: 'out-of-limits',
    })
  })

  it('has the half that is to be fitted next in a halo and a heavy frame, its plate as a next fastener’s disc', () => {
    const { rows, shapes } = sceneOf(en, spec, factsAt(spec, 'joint', 'fitting'), view, sheet)
    const pieces = shapes
      .filter(({ about }) => about === 'half/M2/lower')
      .map(({ id, role }) => `${id.replace('half/M2/lower/', '')} ${role}`)
    expect(pieces).toEqual(
      expect.arrayContaining([
        ...['halo next-halo', 'shell next-half', 'plate next', 'grade next'],
        ...['callout callout', 'callout/cell next', 'callout/name next', 'callout/value next-value'],
      ]),
    )
    expect(rows.filter(({ state }) => state === 'next')).toEqual([
      { about: 'half/M2/lower', text: 'Saddle M2 lower: grade T, next to fit, 37 µm', state: 'next' },
    ])
  })

  it('is hatched while its shell is not chosen', () => {
    const { rows, shapes } = sceneOf(en, spec, factsAt(spec, 'joint', 'bare'), view, sheet)
    expect(shapes.filter(({ role }) => role === 'shell-unknown')).toHaveLength(8)
    expect(rows.find(({ about }) => about === 'half/M1/upper')).toMatchObject({
      text: 'Saddle M1 upper: shell not chosen',
      state: 'unknown',
    })
  })

  it('has its thrust washers where the spec puts them: at saddle 3', () => {
    const { shapes } = sceneOf(en, spec, factsAt(spec, 'joint', 'bare'), view, sheet)
    const washers = shapes.filter(({ role }) => role === 'thrust').map(({ about }) => about)
    expect(washers).toEqual(['thrust/M3', 'thrust/M3'])
  })
})
