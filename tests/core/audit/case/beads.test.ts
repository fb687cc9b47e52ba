import { describe, expect, it } from 'vitest'
import { auditAfter, named, nth, type Draft } from '../../engine/demo.ts'

/** The bead of the gear side runs along y = −72 mm, 3 mm wide, and around the oil way between 206 and 242 mm. */
const straightened = (spec: Draft): void => {
  const bead = named(spec.beads, 'minus')
  bead.path = bead.path.filter(([x]) => !['206 mm', '214 mm', '234 mm', '242 mm'].includes(x))
}

describe('a bead', () => {
  it('that runs into its keep-out zone is a fault', () => {
    // The zone reaches from −54 to −74 mm.
    expect(auditAfter('skerry-3', straightened)).toEqual([
      'fault bead-in-keep-out beads[1].path: bead=Bead, gear side, zone=oil way to the gallery',
    ])
  })

  it('that runs over an oil passage without a zone is a fault', () => {
    const lines = auditAfter('skerry-3', (spec) => {
      straightened(spec)
      named(spec.beads, 'minus').keepOut = []
      named(spec.case.oilPassages, 'gallery').at = ['224 mm', '-66 mm']
    })
    expect(lines).toEqual([
      'fault bead-over-oil-passage beads[1].path: bead=Bead, gear side, passage=oil way to the gallery',
    ])
  })

  it('is measured with half its width to either side', () => {
    // From the edge of the zone at −74 to the path at −79 mm: 5 mm to spare. The flange bolts are the next in the way.
    const wide = (width: string) =>
      auditAfter('skerry-3', (spec) => {
        named(spec.beads, 'minus').width = width
      }).filter((line) => line.includes('keep-out'))
    expect(wide('5.9 mm')).toEqual([])
    expect(wide('10.1 mm')).toHaveLength(1)
  })

  it('over the hole of a bolt or a dowel is a fault', () => {
    const lines = auditAfter('skerry-3', (spec) => {
      named(spec.fasteners, 'flange-13').at = ['100 mm', '73 mm']
      named(spec.case.dowels, 'dowel-1').at = ['70 mm', '75 mm']
    })
    expect(lines).toEqual([
      expect.stringContaining(
        'fault bead-over-hole beads[0].path: bead=Bead, pump side, what=fastenerNumbered, number=13',
      ),
      expect.stringContaining(
        'fault bead-over-hole beads[0].path: bead=Bead, pump side, what=dowelCalled, dowel=1',
      ),
    ])
  })

  it('that leaves the joint face is a fault', () => {
    expect(
      auditAfter('skerry-3', (spec) => (nth(named(spec.beads, 'plus').path, 2)[1] = '172 mm')),
    ).toContainEqual(
      expect.stringContaining(
        'fault bead-outside-outline beads[0].path: bead=Bead, pump side, face=Case joint',
      ),
    )
  })

  it('that is closed is looked at between its last point and its first', () => {
    const acrossTheNose = (closed: boolean) =>
      auditAfter('tarn-4', (spec) => {
        const bead = nth(spec.beads, 0)
        bead.closed = closed
        bead.path.pop()
        bead.keepOut?.push({ name: 'dipstick tube', at: ['26 mm', '0 mm'], size: ['6 mm', '6 mm'] })
      })
    expect(acrossTheNose(true)).toEqual([
      expect.stringContaining('fault bead-in-keep-out beads[0].path: bead=Sump bead, zone=dipstick tube'),
    ])
    expect(acrossTheNose(false)).toEqual([])
  })
})
