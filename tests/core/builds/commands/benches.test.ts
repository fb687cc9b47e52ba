import { describe, expect, it } from 'vitest'
import { buildSheet, builtElsewhere, checkRules, emptyBuild, replay } from '../../../../core/builds/index.ts'
import { sentenceIn } from '../../../../core/problem/index.ts'
import { en } from '../../../../core/words/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')
const first = { id: '0123456789ab', name: 'Bench 1' }
const second = { id: 'ba9876543210', name: 'Bench 2' }
const handOver = { type: 'hand-over', to: second, note: 'Shells are laid out' } as const

/** A build begun at the first bench. */
function atFirst(): Workshop {
  const shop = new Workshop(skerry)
  shop.bench = first
  shop.goesOn()
  return shop
}

describe('handing a build over', () => {
  it('takes it from the bench that had it, and says where it is', () => {
    const shop = atFirst()
    shop.does(handOver)
    expect(shop.state.bench).toEqual(second)
    const said = shop.refuses({ type: 'void-build', reason: 'Wrong engine' })
    expect(said).toContain('Bench 2')
    shop.bench = second
    shop.goesOn()
  })

  it('is back with the first bench once the second has handed it back', () => {
    const shop = atFirst()
    shop.does(handOver)
    shop.bench = second
    shop.does({ type: 'hand-over', to: first, note: '' })
    shop.bench = first
    shop.goesOn()
    expect(shop.state.bench).toEqual(first)
  })

  it('is refused to the bench that does not have it, to itself, and without benches', () => {
    const shop = atFirst()
    expect(shop.refuses({ ...handOver, to: first })).toContain('is this bench')
    shop.does(handOver)
    expect(shop.refusal(handOver)).toMatchObject({
      code: 'build-elsewhere',
      facts: { name: 'Pump at the lower lock', bench: 'Bench 2', is: 'open' },
    })
    shop.bench = null
    expect(shop.refusal(handOver)).toMatchObject({ code: 'bench-unnamed' })
  })

  it('says of a finished build not to go on with it, and of a void one that nothing can be added', () => {
    const at = { ...emptyBuild, bench: second }
    const said = (state: Parameters<typeof builtElsewhere>[0]) =>
      sentenceIn(en, builtElsewhere(state, first)!)
    expect(said(at)).toContain('Go on with it there')
    expect(said({ ...at, finished: true })).toContain('is finished at Bench 2. Amend it there')
    expect(said({ ...at, finished: true, voided: true })).toContain('Nothing can be added')
  })

  it('leaves what a second person confirmed, and the step on the table, as they were', () => {
    const shop = atFirst()
    const { workedOn, confirmed } = shop.state
    shop.does(handOver)
    expect(shop.state).toMatchObject({ workedOn, confirmed })
  })
})

describe('taking a build over', () => {
  const takeOver = { type: 'take-over', reason: 'Bench 1 has no power' } as const

  it('needs a reason, and names the bench that had the build where that is known', () => {
    const shop = atFirst()
    shop.does(handOver)
    shop.bench = first
    expect(shop.refusal({ ...takeOver, reason: ' ' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'taken-over' } },
    })
    const [event] = shop.does(takeOver)
    expect(event).toEqual({
      type: 'build-taken-over',
      version: 1,
      from: second,
      to: first,
      reason: 'Bench 1 has no power',
    })
    shop.goesOn()
  })

  it('is refused to the bench that has it', () => {
    const shop = atFirst()
    shop.does(handOver)
    shop.bench = second
    expect(shop.refuses(takeOver)).toContain('Bench 2 already')
  })
})

describe('the entries of a build that went from bench to bench', () => {
  const moved = (): Workshop => {
    const shop = atFirst()
    shop.does(handOver)
    shop.bench = second
    shop.goesOn()
    shop.bench = first
    shop.does({ type: 'take-over', reason: 'Bench 2 is dark' })
    shop.does({ type: 'settle-fork', entry: 4, over: 'f'.repeat(64), reason: 'The engine is here' })
    return shop
  }

  it('stand on the sheet, in order', () => {
    expect(buildSheet(skerry, moved().entries).benches).toMatchObject([
      { kind: 'handed-over', from: first, to: second, note: 'Shells are laid out', person: 'Ada' },
      { kind: 'taken-over', from: second, to: first, reason: 'Bench 2 is dark' },
      { kind: 'settled', bench: first, entry: 4, reason: 'The engine is here' },
    ])
  })

  it('keep the rules, and one that hands over what it did not have does not', () => {
    const { entries } = moved()
    const against = (some: typeof entries) => {
      const checking = checkRules(skerry, 'a'.repeat(64), some)
      for (;;) {
        const step = checking.next()
        if (step.done === true) return step.value
      }
    }
    expect(against(entries)).toBeNull()
    // Which bench began a build, its record alone knows: the entries say so no sooner than in this.
    const shop = atFirst()
    shop.bench = second
    shop.does({ type: 'take-over', reason: 'Bench 1 is dark' })
    const taken = shop.entries.map((entry) =>
      entry.event.type === 'build-taken-over' ? { ...entry, event: { ...entry.event, from: first } } : entry,
    )
    expect(against(taken)).toBeNull()
    const forged = entries.map((entry) =>
      entry.event.type === 'build-handed-over'
        ? { ...entry, event: { ...entry.event, from: second, to: second } }
        : entry,
    )
    expect(against(forged)?.why.code).toBe('handed-to-itself')
  })

  it('leave a build without them to the bench that began it', () => {
    expect(replay(atFirst().entries).bench).toBeNull()
    expect(emptyBuild.bench).toBeNull()
  })
})
