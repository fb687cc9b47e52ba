import { describe, expect, it } from 'vitest'
import { keepUnchanged, sceneOf } from '../../../../core/layout/index.ts'
import { demo, factsAt, sheets } from '../demos.ts'
import { en } from '../../../../core/words/index.ts'

const spec = demo('strath-6')
const view = { from: 'below', turn: 0 } as const
const sheet = sheets[0]!

function afterPulls(count: number) {
  const facts = factsAt(spec, 'joint', 'first pull')
  const [first] = Object.keys(facts.fasteners)
  const fasteners = { ...facts.fasteners, [first!]: { number: '1', state: 'done' as const, share: 1 } }
  return sceneOf(en, spec, count === 0 ? facts : { ...facts, fasteners }, view, sheet)
}

describe('keeping what is unchanged', () => {
  it('gives every equal shape as the very same object', () => {
    const before = afterPulls(0)
    const kept = keepUnchanged(before, afterPulls(0))
    expect(kept.shapes.every((shape, index) => shape === before.shapes[index])).toBe(true)
    expect(kept.rows).toBe(before.rows)
  })

  it('leaves the rows of fasteners that nothing was done to', () => {
    const before = afterPulls(0)
    const kept = keepUnchanged(before, afterPulls(1))
    const fresh = kept.rows.filter((row) => !before.rows.includes(row))
    expect(fresh.map(({ state }) => state)).toEqual(['done'])
    expect(kept.rows).toHaveLength(before.rows.length)
  })

  it('changes nothing in what the scene says', () => {
    const next = afterPulls(1)
    expect(keepUnchanged(afterPulls(0), next)).toEqual(next)
    expect(keepUnchanged(null, next)).toBe(next)
  })

  it('leaves the ground as it was while fasteners change: it need not be drawn again', () => {
    const before = afterPulls(0)
    const old = new Set(before.shapes)
    const fresh = keepUnchanged(before, afterPulls(1)).shapes.filter((shape) => !old.has(shape))
    expect(fresh.map(({ layer }) => layer)).not.toContain('ground')
    expect(fresh.length).toBeGreaterThan(0)
    expect(fresh.every(({ about }) => about?.startsWith('fastener/'))).toBe(true)
  })
})
