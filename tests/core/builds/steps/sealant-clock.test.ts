import { describe, expect, it } from 'vitest'
import { sealantClock } from '../../../../core/builds/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const clockOf = (shop: Workshop) => sealantClock(shop.spec, shop.state, shop.entries)
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
