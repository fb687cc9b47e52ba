import { describe, expect, it } from 'vitest'
import { decide, evolve, evolveUnknown, readEvent, replay } from '../../../../core/builds/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')

describe('a build read back from its record', () => {
  it('is the build that was worked on', () => {
    const shop = new Workshop(skerry)
    while (!shop.state.finished) shop.goesOn()
    expect(replay(JSON.parse(JSON.stringify(shop.entries)))).toEqual(shop.state)
  })

  it('is empty before its first entry', () => {
    expect(replay([])).toMatchObject({ seq: 0, started: null, finished: false })
  })

  it('cannot be worked on without its first entry: that is a bug, not a refusal', () => {
    expect(() => decide(skerry, replay([]), { type: 'finish-build' }, null)).toThrow('not started')
  })
})

describe('an event off the record', () => {
  const laid = { type: 'bead-laid', version: 1, step: 'bead-plus', bead: 'plus' }

  it('is known when it has a known shape', () => {
    expect(readEvent(laid)).toEqual({ kind: 'known', event: laid })
  })

  it.each([
    ['a newer version', { ...laid, version: 2 }],
    ['an unknown type', { type: 'crank-balanced', version: 1 }],
    ['a part that this version does not know', { ...laid, temperature: 4 }],
    ['no event at all', null],
  ])('is kept as it is with %s', (_, raw) => {
    expect(readEvent(raw)).toEqual({ kind: 'unknown', raw })
  })
})

describe('a build with an entry of a newer version', () => {
  const shop = new Workshop(skerry)
  shop.does({ type: 'note-marks', step: 'case-marks', typed: '1231' })
  const newer = evolveUnknown(shop.state, 3)

  it('stays as it was before that entry, whatever follows', () => {
    const event = { type: 'bead-laid', version: 1, step: 'bead-plus', bead: 'plus' } as const
    expect(evolve(newer, { seq: 4, at: '2026-03-09T08:00:00.000Z', event })).toEqual({
      ...shop.state,
      seq: 4,
      newerFrom: 3,
    })
    expect(evolveUnknown(newer, 4).newerFrom).toBe(3)
  })

  it('takes nothing more', () => {
    expect(
      decide(skerry, newer, { type: 'note-marks', step: 'crank-marks', typed: 'FGHF' }, null),
    ).toMatchObject({
      ok: false,
      problem: { code: 'build-newer', facts: { entry: 3 } },
    })
  })
})
