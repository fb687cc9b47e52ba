import { describe, expect, it } from 'vitest'
import { buildSheet } from '../../../../core/builds/index.ts'
import { nextCommand } from '../next-command.ts'
import { shippedEngine, Workshop } from '../workshop.ts'

/**
 * Worked through to its end, with two things that a sheet must not hide: a note that was skipped, and a circlip for one use that went in
 * again.
 */
describe('the sheet of a finished build of Skerry 3', () => {
  const spec = shippedEngine('skerry-3')
  const shop = new Workshop(spec)
  while (!shop.state.finished) {
    const command = nextCommand(spec, shop.state)
    const isNumber = command.type === 'do-place' && command.step === 'case-number'
    const isCirclip = command.type === 'tick-parts' && command.part === 'circlips'
    if (isNumber) shop.does({ type: 'skip-step', step: 'case-number', reason: 'Worn away on both halves' })
    else if (isCirclip && shop.state.parts.ticks['circlips'] === undefined) {
      const again = { condition: 'used-again', before: 1, reason: 'The new one was bent' } as const
      shop.does({ ...command, count: 1, ...again })
    } else shop.does(command)
  }
  const sheet = buildSheet(spec, shop.entries)

  it('has every part, what is new and what went in again, and none that nobody accounted for', () => {
    expect(sheet.parts).toHaveLength(spec.parts.length)
    expect(sheet.parts.filter(({ open }) => open > 0)).toEqual([])
    for (const { name, count, ticks, leftOver } of sheet.parts)
      expect(
        [...ticks, ...leftOver].reduce((sum, each) => sum + each.count, 0),
        name,
      ).toBe(count)
  })

  it('has the part for one use that went in again, with its reason', () => {
    const against = sheet.parts.flatMap(({ name, reuse, ticks }) =>
      ticks.flatMap(({ condition, count, reason }) =>
        reuse === 'new-each-time' && condition === 'used-again' ? [{ name, count, reason }] : [],
      ),
    )
    expect(against).toEqual([{ name: 'Circlip', count: 1, reason: 'The new one was bent' }])
  })

  it('has the gap of each ring in each bore, and the side play of each rod', () => {
    const counting = sheet.limits.filter(({ counts }) => counts)
    const read = (what: string) => counting.filter(({ measure }) => measure.what === what)
    // Three bores, each with a top ring, a second ring and two rails.
    expect(read('ring-gap')).toHaveLength(3 * 4)
    expect(read('rod-side').map(({ place }) => place)).toEqual(['Rod 1', 'Rod 2', 'Rod 3'])
    expect(read('run-out').map(({ place }) => place)).toEqual(['Journal 2', 'Journal 3'])
    expect(sheet.rings.map(({ piston }) => piston.name.text)).toEqual(['Piston 1', 'Piston 2', 'Piston 3'])
  })

  it('has what the crank took to turn, the photo that was left out, and what was skipped, each with why', () => {
    expect(sheet.turnings.map(({ step, verdict, counts }) => [step, verdict, counts])).toEqual([
      ['Turn crank', 'within', true],
    ])
    expect(sheet.photosSkipped.map(({ step, reason }) => [step.name, reason])).toEqual([
      ['Chain photo', 'No camera here'],
    ])
    expect(sheet.skipped.map(({ step, reason }) => [step.name, reason])).toEqual([
      ['Case number', 'Worn away on both halves'],
    ])
  })

  it('has the marks of the balance shaft twice, before and after two turns', () => {
    const marks = sheet.placed.filter(({ step }) => step === 'Shaft marks')
    expect(marks.map(({ round }) => round).toSorted()).toEqual([1, 1, 2, 2])
  })

  it('says of each row when the entry that it comes from was made', () => {
    const timeOf = new Map(shop.entries.map(({ seq, at }) => [seq, at]))
    let stamps = 0
    const look = (value: unknown) => {
      if (typeof value !== 'object' || value === null) return
      if ('seq' in value && 'person' in value && typeof value.seq === 'number') {
        stamps += 1
        expect(value, JSON.stringify(value)).toHaveProperty('at', timeOf.get(value.seq))
      }
      for (const each of Object.values(value)) look(each)
    }
    look(sheet)
    expect(stamps).toBeGreaterThan(sheet.placed.length + sheet.limits.length)
  })

  it('has every step as done, but the one that was skipped', () => {
    expect(
      sheet.steps.filter(({ done }) => done === null).map(({ name, skipped }) => [name, skipped]),
    ).toEqual([['Case number', 'Worn away on both halves']])
  })
})

describe('the sheet of a finished build of Fen 1', () => {
  it('has the run-out of the pressed crank and the side clearance of its rod, and no shells of a big end', () => {
    const spec = shippedEngine('fen-1')
    const shop = new Workshop(spec)
    while (!shop.state.finished) shop.goesOn()
    const sheet = buildSheet(spec, shop.entries)
    const places = (what: string) =>
      sheet.limits.filter(({ measure }) => measure.what === what).map(({ place }) => place)
    expect(places('run-out')).toEqual(['Nose journal', 'Drive journal'])
    expect(places('rod-side')).toEqual(['Rod 1'])
    expect(sheet.fits.map(({ name }) => name)).toEqual(['Main bearings'])
    expect(sheet.parts.find(({ name }) => name === 'Crank pin')?.ticks).toMatchObject([
      { condition: 'new', count: 1, step: 'Press crank' },
    ])
  })
})
