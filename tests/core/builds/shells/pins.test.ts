import { describe, expect, it } from 'vitest'
import { clearanceAt, proposalsFor } from '../../../../core/builds/index.ts'
import { choosing as step, mains, marked, skerry } from '../main-shells.ts'
import type { Workshop } from '../workshop.ts'

/** Eight T in a compartment, and two of them measured: 1.4905 and 1.4925 mm. */
function withSingles(): Workshop {
  const shop = marked()
  const single = (label: string, typed: string, count: string) => ({
    ...{ label, grade: 'T', undersize: null, half: 'either' as const, count },
    wall: { typed, unit: 'mm' as const },
  })
  const lines = [single('T', '', '8'), single('Shell 1', '1.4905', '1'), single('Shell 2', '1.4925', '1')]
  shop.does({ type: 'note-tray', step, halves: 'alike', lines })
  return shop
}

const pin = (position: string, upper: string | null, lower: string | null) => ({
  type: 'pin-shells' as const,
  ...{ step, position, reason: 'came out of here' },
  upper: upper === null ? null : { label: upper },
  lower: lower === null ? null : { label: lower },
})
const at = (shop: Workshop, position: string) =>
  proposalsFor(skerry, shop.state, 'mains').find((each) => each.position === position)!

describe('one very shell of the tray, pinned to a half', () => {
  it('goes there with its measured wall, and nowhere else', () => {
    const shop = withSingles()
    shop.does(pin('M3', 'Shell 2', 'Shell 1'))
    expect(at(shop, 'M3')).toMatchObject({
      upper: { grade: 'T', by: 'person', reason: 'came out of here', label: 'Shell 2' },
      lower: { label: 'Shell 1' },
    })
    for (const other of ['M1', 'M2', 'M4'])
      for (const half of ['upper', 'lower'] as const) expect(at(shop, other)[half]!.label).toBe('T')
    shop.does({ type: 'choose-shells', step, others: [] })
    // M3 is 3 with F: 55.012 to 55.018 less 51.994 to 52.000, less 2.983: 29 to 41 µm.
    expect(clearanceAt(shop.state, mains, 'M3')!.clearance).toMatchObject({ least: 29_000, most: 41_000 })
  })

  it('cannot be pinned twice, neither to both halves nor at two bearings', () => {
    const shop = withSingles()
    expect(shop.refusal(pin('M1', 'Shell 1', 'Shell 1'))).toMatchObject({
      code: 'tray-line-taken',
      facts: { position: 'M1', label: 'Shell 1', count: 1, at: [] },
    })
    shop.does(pin('M1', 'Shell 1', null))
    expect(shop.refusal(pin('M2', null, 'Shell 1'))).toMatchObject({
      code: 'tray-line-taken',
      facts: { position: 'M2', label: 'Shell 1', count: 1, at: ['M1'] },
    })
    shop.does(pin('M1', null, 'Shell 1'))
    shop.does({ type: 'release-shells', step, position: 'M1' })
    shop.does(pin('M2', null, 'Shell 1'))
    expect(at(shop, 'M2').lower!.label).toBe('Shell 1')
  })

  it('is named when the tray that it lay in does not count any more', () => {
    const shop = withSingles()
    shop.does(pin('M1', 'Shell 1', null))
    shop.does({ type: 'note-tray', step, halves: 'alike', lines: [] })
    expect(at(shop, 'M1').upper).toBeNull()
    expect(at(shop, 'M1').problem!).toMatchObject({
      code: 'tray-line-unknown',
      facts: { position: 'M1', label: 'Shell 1' },
    })
    expect(at(shop, 'M2').upper!.grade).toBe('T')
  })
})
