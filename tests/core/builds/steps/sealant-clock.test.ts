import { describe, expect, it } from 'vitest'
import { buildSheet, checkRules, sealantClock } from '../../../../core/builds/index.ts'
import { nextCommand } from '../next-command.ts'
import { demoEngine, newBuild, Workshop } from '../workshop.ts'

const clockOf = (shop: Workshop) => sealantClock(shop.spec, shop.state)
/** The shop's clock: each entry a minute after the one before. */
const atOf = (shop: Workshop, seq: number) => shop.entries.find((entry) => entry.seq === seq)!.at

describe('the clock of the sealant', () => {
  it('does not run before a bead is laid', () => {
    const shop = new Workshop(demoEngine('skerry-3'))
    shop.worksUpTo('bead-plus')
    expect(clockOf(shop)).toBeNull()
  })

  it('runs from the first bead to the last bolt of both procedures that close the joint', () => {
    const shop = new Workshop(demoEngine('skerry-3'))
    shop.worksThrough('bead-plus')
    const first = clockOf(shop)!
    expect(first).toMatchObject({ bead: { id: 'plus' }, laidAt: atOf(shop, shop.state.seq) })
    // Ten minutes are allowed in this engine.
    expect(new Date(first.endsAt_ms).getTime() - Date.parse(first.laidAt)).toBe(10 * 60_000)
    const seen = new Set<string>()
    while (shop.state.runs['flange'] === undefined) {
      shop.goesOn()
      seen.add(clockOf(shop)?.laidAt ?? 'none')
    }
    expect(seen, 'the second bead and the whole case run').toEqual(new Set([first.laidAt]))
    const before = shop.entries.length
    shop.worksThrough('flange-run')
    expect(shop.entries.length).toBeGreaterThan(before)
    expect(clockOf(shop)).toBeNull()
  })

  it('runs again for the second joint only from its own bead', () => {
    const shop = new Workshop(demoEngine('rill-5'))
    shop.worksUpTo('sump-bead')
    expect(clockOf(shop)).toBeNull()
    shop.worksThrough('sump-bead')
    expect(clockOf(shop)).toMatchObject({ bead: { id: 'sump' } })
  })

  it('follows the next bead once the first is wiped off', () => {
    const shop = new Workshop(demoEngine('skerry-3'))
    shop.worksUpTo('close-case')
    expect(clockOf(shop)?.bead.id).toBe('plus')
    shop.does({ type: 'wipe-off-bead', step: 'bead-plus', reason: 'Went into an oil hole.' })
    expect(clockOf(shop)?.bead.id).toBe('minus')
  })

  it('stands still in a build that is void', () => {
    const shop = new Workshop(demoEngine('skerry-3'))
    shop.worksThrough('bead-plus')
    shop.does({ type: 'void-build', reason: 'Wrong engine.' })
    expect(clockOf(shop)).toBeNull()
  })
})

describe('the open time of the sealant', () => {
  /** Both beads laid at eight o'clock, with ten minutes of open time, and the first bolts of the case pulled. */
  function shopWithFirstBolts(): Workshop {
    const shop = new Workshop(demoEngine('skerry-3'))
    shop.worksUpTo('bead-plus')
    shop.now = '2026-03-09T08:00:00.000Z'
    shop.worksUpTo('case-run')
    while (shop.state.runs['case']?.pulls.length !== 2) shop.goesOn()
    return shop
  }
  const nextPull = (shop: Workshop) => {
    const command = nextCommand(shop.spec, shop.state)
    if (command.type !== 'pull') throw new Error(`${command.type} is next`)
    return command
  }

  it('lets bolts be pulled up to its last second', () => {
    const shop = shopWithFirstBolts()
    shop.now = '2026-03-09T08:10:00.000Z'
    shop.goesOn()
    expect(shop.entries.at(-1)?.event).not.toHaveProperty('overTime')
  })

  it('asks once it is over why the joint is closed anyway, before the next bolt, once for both beads', () => {
    const shop = shopWithFirstBolts()
    shop.now = '2026-03-09T08:10:01.000Z'
    expect(shop.refuses(nextPull(shop))).toMatch(
      /open time of the sealant, 10 min, is over.*lay a new bead; or say why/,
    )
    expect(shop.refusal({ ...nextPull(shop), overTime: ' ' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'over-time' } },
    })
    shop.does({ ...nextPull(shop), overTime: 'Still wet at the edge' })
    expect(shop.entries.at(-1)?.event).toMatchObject({
      type: 'fastener-pulled',
      overTime: { beads: ['plus', 'minus'], reason: 'Still wet at the edge' },
    })
    shop.now = '2026-03-09T08:11:00.000Z'
    shop.goesOn()
    expect(shop.entries.at(-1)?.event).not.toHaveProperty('overTime')
  })

  it('asks again for a bead that was laid again and stayed open too long as well', () => {
    const shop = shopWithFirstBolts()
    shop.now = '2026-03-09T08:10:01.000Z'
    shop.does({ ...nextPull(shop), overTime: 'Still wet at the edge' })
    shop.does({ type: 'restart-run', procedure: 'case', pass: 0, jointOpened: true, reason: 'Dry after all' })
    shop.worksUpTo('case-run')
    shop.now = '2026-03-09T08:20:00.000Z'
    shop.goesOn()
    shop.now = '2026-03-09T08:20:02.000Z'
    expect(shop.refuses(nextPull(shop))).toContain('is over')
  })

  it('is not asked about for work on another joint, nor by a clock that was set back', () => {
    const shop = shopWithFirstBolts()
    shop.now = '2026-03-09T07:00:00.000Z'
    shop.goesOn()
    const rill = new Workshop(demoEngine('rill-5'))
    rill.worksUpTo('sump-bead')
    rill.now = '2026-03-09T08:00:00.000Z'
    rill.goesOn()
    expect(rill.entries.at(-1)?.event.type).toBe('bead-laid')
  })

  it('and the answer to it hold when the entries are checked against the rules, and not without the reason', () => {
    const shop = shopWithFirstBolts()
    shop.now = '2026-03-09T08:10:01.000Z'
    shop.does({ ...nextPull(shop), overTime: 'Still wet at the edge' })
    const check = (entries: Workshop['entries']) => {
      const checking = checkRules(shop.spec, newBuild.specSha256, entries)
      let step = checking.next()
      while (!step.done) step = checking.next()
      return step.value
    }
    expect(check(shop.entries)).toBeNull()
    const early = shop.entries.map((entry, index) =>
      index === shop.entries.length - 1 ? { ...entry, at: '2026-03-09T08:09:00.000Z' } : entry,
    )
    expect(check(early)).toMatchObject({ entry: shop.entries.length, why: { code: 'entry-not-as-decided' } })
  })
})

describe('a run that begins again with its first pass', () => {
  const restart = {
    type: 'restart-run',
    procedure: 'case',
    pass: 0,
    reason: 'Sealant open too long',
  } as const

  function shopInCaseRun(): Workshop {
    const shop = new Workshop(demoEngine('skerry-3'))
    shop.worksUpTo('case-run')
    while ((shop.state.runs['case']?.pulls.length ?? 0) < 3) shop.goesOn()
    return shop
  }

  it('opens its joint only where that is accepted, and names what is to be done again', () => {
    const shop = shopInCaseRun()
    const names = ['close-case', 'bead-minus', 'bead-plus'].map((id) => shop.step(id).name).join(', ')
    expect(shop.refuses(restart)).toContain(`${names} have to be done again`)
  })

  it('takes the closing and the beads back with it, the last one first, each with the cause', () => {
    const shop = shopInCaseRun()
    const events = shop.does({ ...restart, jointOpened: true })
    const undone = events.filter(({ type }) => type !== 'run-restarted')
    expect(undone).toEqual([
      { type: 'part-taken-out', version: 1, step: 'close-case', cause: 'joint-opened' },
      { type: 'bead-wiped-off', version: 1, step: 'bead-minus', bead: 'minus', cause: 'joint-opened' },
      { type: 'bead-wiped-off', version: 1, step: 'bead-plus', bead: 'plus', cause: 'joint-opened' },
    ])
    expect(clockOf(shop)).toBeNull()
    const { corrections } = buildSheet(shop.spec, shop.entries)
    expect(corrections.map(({ kind, reason }) => [kind, reason])).toEqual([
      ['run-restarted', restart.reason],
      ['part-taken-out', { cause: 'joint-opened' }],
      ['bead-wiped-off', { cause: 'joint-opened' }],
      ['bead-wiped-off', { cause: 'joint-opened' }],
    ])
    shop.worksThrough('flange-run')
    expect(shop.state.finished).toBe(false)
  })

  it('with a later pass leaves the joint closed', () => {
    const shop = shopInCaseRun()
    while (!shop.state.runs['case']!.pulls.some(({ pass }) => pass === 1)) shop.goesOn()
    const events = shop.does({ ...restart, pass: 1 })
    expect(events.map(({ type }) => type)).toEqual(['run-restarted'])
  })
})
