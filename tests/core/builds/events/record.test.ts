import { describe, expect, it } from 'vitest'
import { decide, readEvent, replay } from '../../../../core/builds/index.ts'
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
