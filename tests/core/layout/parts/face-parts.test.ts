import { describe, expect, it } from 'vitest'
import { placedPicture, sceneOf } from '../../../../core/layout/index.ts'
import type { Fit } from '../../../../core/engine/index.ts'
import { demo, factsAt, sheets } from '../demos.ts'
import { en } from '../../../../core/words/index.ts'

const holm = demo('holm-2')

/** The ends of the joint lines of the seal at the drive end, of that case split so. */
function jointsOf(split: Fit['split']) {
  const spec = { ...holm, fits: holm.fits.map((fit) => ({ ...fit, split })) }
  const facts = { ...factsAt(spec, 'drive', 'bare'), subject: 'check' } as const
  const { shapes } = sceneOf(en, spec, facts, { from: 'above', turn: 0 }, sheets[0]!)
  return shapes.flatMap((shape) =>
    shape.kind === 'line' && shape.id.startsWith('face-part/rear-seal/joint/') ? [shape.points] : [],
  )
}

describe('a seal in two halves', () => {
  it('has its joint level in a case that is split level, from the shaft of 70 mm to 92 mm on both sides', () => {
    const joints = jointsOf('upper-lower')
    expect(joints.map(([x, y, toX, toY]) => [Math.abs(x!), y, Math.abs(toX!), toY])).toEqual([
      [35, 0, 46, 0],
      [35, 0, 46, 0],
    ])
  })

  it('has its joint upright in a case that is split upright', () => {
    const joints = jointsOf('left-right')
    expect(joints.map(([x, y, toX, toY]) => [x, Math.abs(y!), toX, Math.abs(toY!)])).toEqual([
      [0, 35, 0, 46],
      [0, 35, 0, 46],
    ])
  })

  it('has its sealant at the ends of that joint on its small picture', () => {
    const drops = (split: Fit['split']) =>
      placedPicture('two-piece-seal', { depth: null, way: null, split })
        .lines.filter(({ role }) => role === 'gauge')
        .map(({ points }) => [0, 1].map((from) => points.filter((_, at) => at % 2 === from)))
        .map((sides) => sides.map((values) => (Math.min(...values) + Math.max(...values)) / 2))
    const [level, upright] = [drops('upper-lower'), drops('left-right')]
    expect(level[0]![1]).toBeCloseTo(level[1]![1]!, 6)
    expect(level[1]![0]! - level[0]![0]!).toBeCloseTo(58, 6)
    expect(upright[0]![0]).toBeCloseTo(upright[1]![0]!, 6)
    expect(Math.abs(upright[1]![1]! - upright[0]![1]!)).toBeCloseTo(58, 6)
  })
})
