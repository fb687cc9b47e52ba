import { describe, expect, it } from 'vitest'
import { buildSheet, checkRules, isStepDone, type BuildCommand } from '../../../../core/builds/index.ts'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { openFlags } from '../../../../core/tightening/index.ts'
import { demoEngine, newBuild, Workshop } from '../workshop.ts'

const firth = demoEngine('firth-v8')
const turned = (
  step: string,
  typed: string | null,
  more: { free?: boolean; note?: string } = {},
): BuildCommand => ({
  ...{ type: 'turn-crank', step, typed },
  ...{ free: more.free ?? true, note: more.note ?? '' },
})
function shopAt(step: string, spec: EngineSpec = firth): Workshop {
  const shop = new Workshop(spec)
  shop.worksUpTo(step)
  return shop
}
/** What the rules find wrong with the entries; null where nothing is. */
function wholeOf({ spec, entries }: Workshop) {
  const rules = checkRules(spec, newBuild.specSha256, entries)
  for (let each = rules.next(); ; each = rules.next()) if (each.done === true) return each.value
}
const isDone = (shop: Workshop, step: string) => isStepDone(shop.spec, shop.state, shop.step(step))

describe('turning the crank, at most 3.5 N·m', () => {
  it.each([
    ['3.5', 'within'],
    ['3.6', 'over'],
    ['31 lbf·in', 'over'],
    ['30 lbf·in', 'within'],
    ['14 N × 250 mm', 'within'],
    ['15 N × 250 mm', 'over'],
    ['1.4 kgf × 25 furlongs', null],
    ['1.4 kgf × 250 mm', 'within'],
  ])('%s is %s', (typed, verdict) => {
    const shop = shopAt('turn-alone')
    if (verdict === null) {
      expect(shop.refuses(turned('turn-alone', typed))).toContain('furlongs')
      return
    }
    const [event] = shop.does(turned('turn-alone', typed))
    expect(event).toMatchObject({ type: 'crank-turned', verdict, rise_Nm: null })
  })

  it('keeps the step open while it is too much, until it is turned again or accepted with a reason', () => {
    const shop = shopAt('turn-alone')
    const accept = { type: 'accept-turning', step: 'turn-alone', reason: 'new seals' } as const
    expect(shop.refusal(accept)).toMatchObject({
      code: 'turning-not-outside',
      facts: { step: 'Crank alone' },
    })
    expect(shop.refusal(turned('turn-alone', null))).toMatchObject({
      code: 'turning-missing',
      facts: { step: 'Crank alone' },
    })
    shop.does(turned('turn-alone', '5'))
    expect(isDone(shop, 'turn-alone')).toBe(false)
    expect(shop.refusal({ ...accept, reason: '' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'turning-accepted' } },
    })
    shop.does(turned('turn-alone', '3.1'))
    expect(isDone(shop, 'turn-alone')).toBe(true)
    shop.does({ type: 'void-turning', step: 'turn-alone', reason: 'the gauge was off' })
    expect(isDone(shop, 'turn-alone')).toBe(false)
    shop.does(turned('turn-alone', '4.5'))
    shop.does(accept)
    expect(isDone(shop, 'turn-alone')).toBe(true)
    const { turnings } = buildSheet(firth, shop.entries)
    expect(
      turnings.map(({ reading, counts, voided, accepted }) => [reading?.typed, counts, voided, accepted]),
    ).toEqual([
      ['5', false, null, null],
      ['3.1', false, 'the gauge was off', null],
      ['4.5', true, null, 'new seals'],
    ])
    expect(wholeOf(shop)).toBeNull()
  })

  it('is compared with what it took alone after the first rod, and with that rod after the second', () => {
    const shop = shopAt('turn-alone')
    shop.does(turned('turn-alone', '2'))
    shop.worksUpTo('rods-run')
    const rods = () => shop.state.runs['rods']
    while (!rods()?.pulls.some(({ turning }) => turning !== null)) shop.goesOn()
    // The workshop reads 1.6 N·m each time.
    expect(rods()!.pulls.at(-1)).toMatchObject({ cap: 'B1', verdict: 'within' })
    expect(rods()!.pulls.at(-1)!.turning!.rise).toBeCloseTo(-0.4, 9)
    expect(openFlags(rods())).toEqual([])
  })

  it('stands on what was done before it: rods that are loosened ask for that reading to be void first', () => {
    const shop = shopAt('timing')
    const loosen = {
      type: 'loosen-fastener',
      procedure: 'rods',
      fastener: 'rod-1',
      reason: 'a look at it',
    } as const
    expect(shop.refusal(loosen)).toMatchObject({
      code: 'step-on-top',
      facts: { step: 'Rod bolts', top: 'Turn crank', kind: 'turn' },
    })
    shop.does({ type: 'void-turning', step: 'turn-crank', reason: 'rod 1 comes off' })
  })
})

describe('turning the crank by hand, where the manual gives no number', () => {
  const byHand: EngineSpec = {
    ...firth,
    steps: firth.steps.map((step) => {
      if (step.id !== 'turn-alone' || step.kind !== 'turn') return step
      const { turning: _, ...rest } = step
      return rest
    }),
  }

  it('is free or binds; where it bound, what was done is said before it is free', () => {
    const shop = shopAt('turn-alone', byHand)
    expect(shop.refusal(turned('turn-alone', '2'))).toMatchObject({
      code: 'turning-by-hand',
      facts: { step: 'Crank alone' },
    })
    expect(shop.refusal(turned('turn-alone', null, { free: false }))).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'crank-binds' } },
    })
    shop.does(turned('turn-alone', null, { free: false, note: 'at the third main, once a turn' }))
    expect(isDone(shop, 'turn-alone')).toBe(false)
    expect(shop.refusal(turned('turn-alone', null))).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'turns-again' } },
    })
    shop.does(turned('turn-alone', null, { note: 'cap 3 was the wrong way round' }))
    expect(isDone(shop, 'turn-alone')).toBe(true)
  })
})
