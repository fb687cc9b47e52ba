import { describe, expect, it } from 'vitest'
import { bearingAt, clearanceAt, proposalsFor, shellsWanted } from '../../../../core/builds/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'
import { en } from '../../../../core/words/index.ts'
import { whyIn } from '../../../../core/bearing/index.ts'

const fen = demoEngine('fen-1')
const mains = fen.fits.find(({ id }) => id === 'mains')!
const step = 'choose-mains'

/** A spec with a chart and no sizes. Its chart has B for 1 with U and H for 2 with W. */
function marked(): Workshop {
  const shop = new Workshop(fen)
  shop.does({ type: 'note-marks', step: 'case-marks', typed: '1 2' })
  shop.does({ type: 'note-marks', step: 'crank-marks', typed: 'U W' })
  return shop
}

const proposals = (shop: Workshop) => proposalsFor(fen, shop.state, 'mains')
const laid = (shop: Workshop) =>
  proposals(shop).map(({ upper, lower }) =>
    [upper, lower].map((half) => half && [half.grade, half.label ?? null]),
  )
const line = (grade: string, count: string, wall = '') => ({
  ...{
    label: wall === '' ? grade : `${grade} ${wall}`,
    grade,
    undersize: null,
    half: 'either' as const,
    count,
  },
  wall: { typed: wall, unit: 'mm' as const },
})
const tray = (...lines: readonly ReturnType<typeof line>[]) => ({
  ...{ type: 'note-tray' as const, step, halves: 'alike' as const, lines: [...lines] },
})
/** 47 mm about the shells, 42.966 mm in them: room for two walls of 2.000 mm and 34 µm of oil. */
function measuresM1(shop: Workshop) {
  for (const [part, typed] of [
    ['housing', '47.000'],
    ['journal', '42.966'],
  ] as const) {
    const cells = [0, 1].map(() => [0, 1].map(() => ({ typed, unit: 'mm' as const })))
    const warmth = { partTemperature: '', gaugeTemperature: '', uncertainty: '' }
    shop.does({ type: 'note-readings', step, position: 'M1', part, cells, ...warmth })
  }
}

describe('a chart without sizes', () => {
  it('gives the grades, and no clearance', () => {
    const shop = marked()
    expect(laid(shop)).toEqual([
      [
        ['B', null],
        ['B', null],
      ],
      [
        ['H', null],
        ['H', null],
      ],
    ])
    expect(proposals(shop)[0]).toMatchObject({ clearance: null, within: null, problem: null })
    shop.does({ type: 'choose-shells', step, others: [] })
    expect(clearanceAt(shop.state, mains, 'M1')).toBeNull()
  })

  it('gives grades that are then looked for in the tray, and the rest is ordered', () => {
    const shop = marked()
    shop.does(tray(line('B', '1'), line('F', '8'), line('H', '2')))
    expect(laid(shop)).toEqual([
      [
        ['B', 'B'],
        ['B', null],
      ],
      [
        ['H', 'H'],
        ['H', 'H'],
      ],
    ])
    expect(shellsWanted(fen, shop.state, mains).lines).toEqual([
      { grade: 'B', undersize: null, half: 'either', count: 1, waiting: [{ position: 'M1', half: 'lower' }] },
    ])
    shop.does({ type: 'choose-shells', step, others: [] })
    expect(shop.state.shells['mains']![0]).toMatchObject({ grade: 'B', by: 'chart', label: 'B' })
  })

  it('is still measured, and with measured walls the clearance is known', () => {
    const shop = marked()
    measuresM1(shop)
    shop.does({ type: 'decide-basis', step, position: 'M1', by: 'readings', reason: 'dots painted over' })
    expect(proposals(shop)[0]!.problem!).toMatchObject({ code: 'no-walls-known', facts: { place: 'M1' } })
    shop.does(tray(line('B', '1', '2.001'), line('B', '1', '1.999'), line('H', '2')))
    expect(proposals(shop)[0]!.clearance).toMatchObject({ least: 34_000, most: 34_000 })
    expect(laid(shop)[1]).toEqual([
      ['H', 'H'],
      ['H', 'H'],
    ])
    expect(shellsWanted(fen, shop.state, mains).lines).toEqual([])
  })

  it('takes one very shell that a person pins, from where it lies', () => {
    const shop = marked()
    shop.does(tray(line('B', '2'), line('B', '1', '2.001')))
    const pin = { type: 'pin-shells', step, position: 'M1', reason: 'was in here' } as const
    shop.does({ ...pin, upper: { label: 'B 2.001' }, lower: null })
    expect(laid(shop)[0]).toEqual([
      ['B', 'B 2.001'],
      ['B', 'B'],
    ])
  })

  it('lets a person pin one half; the other stays as the chart has it where it may', () => {
    const shop = marked()
    const pin = { type: 'pin-shells', step, position: 'M1', reason: 'on the shelf' } as const
    shop.does({ ...pin, upper: { grade: 'F' }, lower: null })
    expect(proposals(shop)[0]).toMatchObject({ upper: { grade: 'F' }, lower: { grade: 'B' } })
    shop.does({ ...pin, upper: { grade: 'H' }, lower: null })
    expect(proposals(shop)[0]).toMatchObject({ upper: { grade: 'H' }, lower: { grade: 'H' } })
    expect(whyIn(en, proposals(shop)[0]!.lower!.reason)).toContain('the clearance is not known')
  })

  it('expects readings of about the nominal bore, so that inches are asked about', () => {
    const cells = [0, 1].map(() => [0, 1].map(() => ({ typed: '1.85', unit: 'mm' as const })))
    const warmth = { partTemperature: '', gaugeTemperature: '', uncertainty: '' }
    const readings = {
      type: 'note-readings',
      step,
      position: 'M1',
      part: 'housing',
      cells,
      ...warmth,
    } as const
    expect(marked().refuses(readings)).toContain('inches')
    expect(bearingAt(marked().state, mains, 'M1').sizes.ok).toBe(false)
  })
})
