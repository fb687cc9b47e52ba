import { describe, expect, it } from 'vitest'
import { buildSheet, sealantClock } from '../../../../core/builds/index.ts'
import { openFlags } from '../../../../core/tightening/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

/** The sump of this engine is sealed, and one procedure closes it. */
function sumpTightened(): Workshop {
  const shop = new Workshop(demoEngine('rill-5'))
  shop.worksUpTo('sump-run')
  shop.does({ type: 'start-run', procedure: 'sump' })
  return shop
}
const sumpOn = ({ spec, entries }: Workshop) => buildSheet(spec, entries).beads.at(-1)!

describe('the bead of a sealed joint on the sheet', () => {
  it('is laid and its joint not closed while one bolt is left', () => {
    expect(sumpOn(sumpTightened())).toMatchObject({ laid: { person: 'Ada' }, closed: null, took_s: null })
  })

  it('took until the last bolt was pulled, where its clock stops, and not until a flag was answered', () => {
    const shop = sumpTightened()
    shop.does({ type: 'note-problem', procedure: 'sump', fastener: null, text: 'One bolt squeaks.' })
    while (sealantClock(shop.spec, shop.state) !== null) shop.goesOn()
    const lastPull = shop.entries.at(-1)!
    expect(lastPull.event.type).toBe('fastener-pulled')
    const run = shop.state.runs['sump']!
    expect(openFlags(run)).toHaveLength(1)

    shop.does({ type: 'answer-flag', procedure: 'sump', flag: 1, answer: 'Oiled.' })
    const { laid, closed, took_s } = sumpOn(shop)
    expect(closed).toMatchObject({ seq: lastPull.seq, at: lastPull.at })
    // The shop's clock: each entry a minute after the one before.
    expect(took_s).toBe((lastPull.seq - laid!.seq) * 60)
  })

  it('is open again when its last pull is taken back', () => {
    const shop = sumpTightened()
    shop.worksThrough('sump-run')
    expect(sumpOn(shop).closed).not.toBeNull()
    const pull = shop.state.runs['sump']!.pulls.length
    shop.does({ type: 'take-back', procedure: 'sump', pull, reason: 'Not sure it clicked.' })
    expect(sumpOn(shop)).toMatchObject({ closed: null, took_s: null, over: false })
  })
})
