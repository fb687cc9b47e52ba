import { describe, expect, it } from 'vitest'
import { buildSheet, clearanceAt, proposalsFor, shellsWanted } from '../../../../core/builds/index.ts'
import { choosing as step, mains, marked, skerry } from '../main-shells.ts'
import { millimetres } from '../../../../core/quantity/index.ts'
import { Workshop } from '../workshop.ts'

// The marks of `marked` want T at all four mains.
function line(grade: string, count: string, wall = '') {
  const measured = { typed: wall, unit: 'mm' as const }
  const label = wall === '' ? grade : `${grade} ${wall}`
  return { label, grade, undersize: null, half: 'either' as const, count, wall: measured }
}

function tray(...lines: readonly ReturnType<typeof line>[]) {
  return { type: 'note-tray' as const, step, halves: 'alike' as const, lines: [...lines] }
}

const grades = (shop: Workshop) =>
  proposalsFor(skerry, shop.state, 'mains').map(
    ({ upper, lower }) => `${upper?.grade ?? '-'}${lower?.grade ?? '-'}`,
  )
const wanted = (shop: Workshop) =>
  shellsWanted(skerry, shop.state, mains).lines.map(({ grade, count }) => `${count} ${grade}`)

describe('choosing from the tray', () => {
  it('fills every bearing where enough is there, and orders nothing', () => {
    const shop = marked()
    shop.does(tray(line('T', '8')))
    expect(grades(shop)).toEqual(['TT', 'TT', 'TT', 'TT'])
    expect(wanted(shop)).toEqual([])
    shop.does({ type: 'choose-shells', step, others: [] })
    expect(shop.state.shells['mains']![0]).toMatchObject({ grade: 'T', by: 'tray', label: 'T', reason: null })
  })

  it('takes no shell that is worn: its wall is below the one that the spec lets go back', () => {
    const spec = { ...skerry, fits: skerry.fits.map((fit) => ({ ...fit, wornWall: millimetres(1.48) })) }
    const shop = new Workshop(spec)
    shop.does({ type: 'note-marks', step: 'case-marks', typed: '1 2 3 2' })
    shop.does({ type: 'note-marks', step: 'crank-marks', typed: 'H G F G' })
    const trayOf = (wall: string, count = '1') => tray(line('T', count, wall))
    expect(shop.refusal(trayOf('1.479'))).toMatchObject({
      code: 'shell-worn',
      facts: {
        label: 'T 1.479',
        wall: { amount: 1.479, decimals: 3, isShort: false, unit: 'mm' },
        least: { amount: 1.48, decimals: 3, isShort: false, unit: 'mm' },
      },
    })
    // One that is no longer there may stay on the list.
    shop.does(trayOf('1.479', '0'))
    shop.does(trayOf('1.480'))
  })

  it('mixes neighbours, the thicker one below, before it orders', () => {
    const shop = marked()
    shop.does(tray(line('T', '7'), line('U', '1')))
    expect(grades(shop).filter((pair) => pair === 'TU')).toHaveLength(1)
    expect(wanted(shop)).toEqual([])
  })

  it('orders the fewest that it can, and says for where', () => {
    const shop = marked()
    shop.does(tray(line('T', '6')))
    expect(grades(shop)).toEqual(['TT', 'TT', 'TT', 'TT'])
    expect(wanted(shop)).toEqual(['2 T'])
    expect(shellsWanted(skerry, shop.state, mains)).toMatchObject({ from: 'tray-lacks', open: [] })
  })

  it('orders all of them from a tray in which nothing is left', () => {
    const shop = marked()
    shop.does(tray(...['R', 'S', 'T', 'U', 'V'].map((grade) => line(grade, '0'))))
    expect(wanted(shop)).toEqual(['8 T'])
  })

  it('keeps what is pinned and fills the rest around it', () => {
    const shop = marked()
    shop.does(tray(line('S', '2'), line('T', '8')))
    const pin = { type: 'pin-shells', step, position: 'M3' } as const
    shop.does({ ...pin, upper: { grade: 'S' }, lower: { grade: 'S' }, reason: 'was in before' })
    expect(grades(shop)).toEqual(['TT', 'TT', 'SS', 'TT'])
    expect(shop.refuses({ ...pin, upper: { label: 'box 9' }, lower: null, reason: 'x' })).toContain('box 9')
    shop.does({ type: 'release-shells', step, position: 'M3' })
    expect(grades(shop)).toEqual(['TT', 'TT', 'TT', 'TT'])
  })

  it('takes single shells by their measured walls, and computes with these', () => {
    const shop = marked()
    shop.does(tray(line('T', '6'), line('T', '1', '1.4905'), line('T', '1', '1.4925')))
    expect(wanted(shop)).toEqual([])
    shop.does({ type: 'choose-shells', step, others: [] })
    const exact = shop.state.shells['mains']!.filter(({ label }) => label?.startsWith('T 1.49'))
    expect(exact).toHaveLength(2)
    const clearance = clearanceAt(shop.state, mains, exact[0]!.position)!.clearance
    // With bands on both walls the worst case is 18 µm wide: 6 each of bore and journal, 3 each of the walls.
    expect(clearance.most - clearance.least).toBeLessThan(18_000)
  })

  it('solves again when a reading changes, and the old choice falls away', () => {
    const shop = marked()
    shop.does(tray(line('T', '8'), line('R', '2')))
    shop.does({ type: 'choose-shells', step, others: [] })
    const cells = [0, 1].map(() => [0, 1, 2].map(() => ({ typed: '51.997', unit: 'mm' as const })))
    const readings = { type: 'note-readings', step, position: 'M1', part: 'journal', cells } as const
    shop.does({ ...readings, partTemperature: '', gaugeTemperature: '', uncertainty: '' })
    expect(shop.state.shells['mains']).toBeUndefined()
    shop.does({ type: 'decide-basis', step, position: 'M1', by: 'readings', reason: 'measured twice' })
    expect(grades(shop)).toEqual(['RR', 'TT', 'TT', 'TT'])
  })

  it('refuses half a shell, a negative wall, an unknown grade, a line without a label and two alike', () => {
    const shop = marked()
    expect(shop.refuses(tray(line('T', '1.5')))).toContain('1.5')
    expect(shop.refuses(tray(line('T', '-2')))).toContain('-2')
    expect(shop.refuses(tray(line('T', '1', '-1.49')))).toContain('-1.49')
    expect(shop.refusal(tray(line('Z', '1')))).toMatchObject({
      code: 'grade-unknown',
      facts: { place: 'Z', grade: 'Z', known: ['R', 'S', 'T', 'U', 'V'] },
    })
    expect(shop.refuses(tray({ ...line('T', '1'), label: ' ' }))).toContain('Line 1')
    expect(shop.refuses(tray(line('T', '1'), line('T', '2')))).toContain('labelled T')
  })

  it('is printed with its counts; a tray without lines is none', () => {
    const shop = marked()
    shop.does(tray(line('T', '8')))
    expect(buildSheet(skerry, shop.entries).fits[0]!.tray!.lines).toMatchObject([{ label: 'T', count: 8 }])
    shop.does(tray())
    expect(buildSheet(skerry, shop.entries).fits[0]!.tray).toBeNull()
    expect(shellsWanted(skerry, shop.state, mains).from).toBe('no-tray')
  })
})

describe('pinning without a tray', () => {
  it('keeps a half and lets the other follow by the spec’s rule', () => {
    const shop = marked()
    const pin = { type: 'pin-shells', step, position: 'M1', reason: 'on the shelf' } as const
    shop.does({ ...pin, upper: null, lower: { grade: 'U' } })
    expect(grades(shop)[0]).toBe('TU')
    shop.does({ type: 'choose-shells', step, others: [] })
    expect(shop.state.shells['mains']!.slice(0, 2)).toMatchObject([
      { half: 'upper', grade: 'T' },
      { half: 'lower', grade: 'U', by: 'person', reason: 'on the shelf' },
    ])
  })
})
