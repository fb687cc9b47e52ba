import { describe, expect, it } from 'vitest'
import {
  againstLimits,
  correctedFloat,
  wornWallOf,
  wornShell,
  allowedTaper,
  thrustPairFor,
  exactly,
  guardedLimits,
  combinedUncertainty,
  oilClearance,
  rangeOf,
  undersized,
  undersizeOf,
  type Range,
} from '../../core/bearing/index.ts'
import { lengthIn, lengthOf, nanometres, parseLength } from '../../core/quantity/index.ts'
import type { Band, Fit } from '../../core/engine/index.ts'
import { called } from '../core/bearing/fits.ts'
import { um, bare } from './bare-fit.ts'

const inches = (least: number, most: number): Range => ({
  least: lengthOf(least, 'in'),
  most: lengthOf(most, 'in'),
})

const mm = (least: number, most: number): Range => ({
  least: lengthOf(least, 'mm'),
  most: lengthOf(most, 'mm'),
})

describe('main bearing clearance, TM 5-6115-545-34, table 1-2', () => {
  const wall = inches(0.10975, 0.11025)
  const clearance = oilClearance(inches(2.97, 2.9705), inches(2.747, 2.7485), wall, wall)

  it('is 0.0010 to 0.0040 in at worst', () => {
    expect([lengthIn(clearance.least, 'in'), lengthIn(clearance.most, 'in')]).toEqual([0.001, 0.004])
  })

  it('is 0.0016 to 0.0034 in by root-sum-square, ± 0.00005 in', () => {
    expect(Math.abs(lengthIn(clearance.likely.least, 'in') - 0.0016)).toBeLessThan(0.00005)
    expect(Math.abs(lengthIn(clearance.likely.most, 'in') - 0.0034)).toBeLessThan(0.00005)
  })

  it('leaves the 0.0010 to 0.0035 in that the table prints beside these very sizes', () => {
    expect(againstLimits(clearance, inches(0.001, 0.0035))).toBe('may-be-loose')
  })
})

describe('a stack of tolerances: 40.00 ± 0.10 − 25.00 ± 0.05 − 2.00 ± 0.03 − 10.00 ± 0.05 mm', () => {
  const stack = oilClearance(mm(39.9, 40.1), mm(24.95, 25.05), mm(1.97, 2.03), mm(9.95, 10.05))

  it('is 3.00 ± 0.23 mm at worst', () => {
    expect([stack.nominal, stack.least, stack.most]).toEqual([um(3000), um(2770), um(3230)])
  })

  it('is ± 0.126 mm by root-sum-square, ± 0.0005 mm', () => {
    expect(Math.abs(lengthIn(stack.likely.most, 'mm') - 3 - 0.126)).toBeLessThan(0.0005)
  })
})

describe('undersize shells, TM 5-4320-300-14, p. 6-83', () => {
  const fit: Fit = {
    ...bare,
    grades: [
      {
        grade: 'S',
        colour: '#000000',
        pattern: 'plain',
        wall: { over: lengthOf(0.1245, 'in'), upTo: lengthOf(0.125, 'in') },
      },
    ],
    undersizes: [0.01, 0.03].map((inch) => ({ name: called(String(inch)), undersize: lengthOf(inch, 'in') })),
  }

  it.each([
    [0.01, 0.1295, 0.13],
    [0.03, 0.1395, 0.14],
  ])('%d in under, a wall of 0.1245 to 0.1250 in becomes %d to %d in', (undersize, over, upTo) => {
    const ground = undersized(fit, String(undersize))
    expect(ground.ok && ground.value.grades[0]?.wall).toEqual({
      over: lengthOf(over, 'in'),
      upTo: lengthOf(upTo, 'in'),
    })
  })
})

describe('undersize shells, TM 5-4320-302-14: bores in steps of 0.50 mm', () => {
  const fit: Fit = {
    ...bare,
    grades: [
      {
        grade: 'S',
        colour: '#000000',
        pattern: 'plain',
        wall: { over: lengthOf(2.973, 'mm'), upTo: lengthOf(2.985, 'mm') },
      },
    ],
    undersizes: ['0.50', '1.00', '1.50'].map((name) => ({
      name: called(name),
      undersize: lengthOf(Number(name), 'mm'),
    })),
  }

  it.each([
    ['0.50', 3.223],
    ['1.00', 3.473],
    ['1.50', 3.723],
  ])('%s mm under, a wall from 2.973 mm on is one from %d mm on', (name, over) => {
    const ground = undersized(fit, name)
    expect(ground.ok && ground.value.grades[0]?.wall?.over).toBe(lengthOf(over, 'mm'))
  })
})

describe('one standard half and one 0.001 in undersize half, TM 9-2815-237-34, para 2-41a', () => {
  it('take 0.0005 in off the clearance', () => {
    const walls = { over: lengthOf(0.11, 'in'), upTo: lengthOf(0.11, 'in') }
    const standard: Fit = {
      ...bare,
      grades: [{ grade: 'S', colour: '#000000', pattern: 'plain', wall: walls }],
      undersizes: [{ name: called('0.001'), undersize: lengthOf(0.001, 'in') }],
    }
    const ground = undersized(standard, '0.001')
    const thicker = ground.ok ? ground.value.grades[0]?.wall : undefined
    const between = (lower: Band) =>
      oilClearance(
        exactly(lengthOf(2.97, 'in')),
        exactly(lengthOf(2.747, 'in')),
        rangeOf(walls),
        rangeOf(lower),
      ).nominal
    expect(lengthIn(nanometres(between(walls) - between(thicker!)), 'in')).toBe(0.0005)
  })
})

describe('reground journals, TM 10-3930-653-14&P, p. 4-38: sizes printed in mm and in', () => {
  // The standard size is not printed with them; it is the printed 0.25 mm undersize, 62.692 to 62.705 mm, and 0.25 mm, so that
  // this row would be its own check. The 0.50 mm row is misprinted (62.422 to 62.455 mm, 2.4576 to 2.45 in).
  const standard = { over: lengthOf(62.942, 'mm'), upTo: lengthOf(62.955, 'mm') }
  const fit: Fit = {
    ...bare,
    journal: { name: 'the crank', marks: [{ mark: '1', band: standard }] },
    undersizes: ['0.25', '0.50', '0.75', '1.00'].map((name) => ({
      name: called(name),
      undersize: lengthOf(Number(name), 'mm'),
    })),
  }

  it.each([
    ['0.75', 62.192, 62.205, 2.4485, 2.449],
    ['1.00', 61.942, 61.955, 2.4387, 2.4392],
  ])('%s mm under is %d to %d mm, %d to %d in', (name, leastMm, mostMm, leastIn, mostIn) => {
    for (const size of [leastMm, mostMm])
      expect(undersizeOf(fit, 'M1', lengthOf(size, 'mm'))).toEqual({ ok: true, value: name })
    // The middle of the inches that are printed beside it is of the same undersize.
    expect(undersizeOf(fit, 'M1', lengthOf((leastIn + mostIn) / 2, 'in'))).toEqual({ ok: true, value: name })
  })

  it.each([
    [62.692, 2.4682],
    [62.705, 2.4687],
    [62.192, 2.4485],
    [62.205, 2.449],
    [61.942, 2.4387],
    [61.955, 2.4392],
  ])('%d mm is printed as %d in', (millimetres, inch) => {
    expect(Math.abs(lengthIn(lengthOf(millimetres, 'mm'), 'in') - inch)).toBeLessThan(0.00006)
  })

  it('a journal above one row and below the next is neither', () => {
    expect(undersizeOf(fit, 'M1', lengthOf(62.3, 'mm')).ok).toBe(false)
  })
})

describe('oil clearances printed in both units', () => {
  it.each([
    ['TM 9-2815-260-24, p. 5-65', '0.0016 in', 0.041],
    ['TM 9-2815-260-24, p. 5-65', '0.0043 in', 0.109],
    ['TM 5-3805-281-24-2', '0.0012 in', 0.03],
    ['TM 5-3805-281-24-2', '0.0042 in', 0.107],
  ])('%s: %s is %d mm', (_, inch, millimetres) => {
    const length = parseLength(inch)
    expect(length.ok && Math.abs(lengthIn(length.value, 'mm') - millimetres)).toBeLessThan(0.0005001)
  })
})

describe('uncertainty', () => {
  it('of 0.33, 0.29 and 0.25 µm together is 0.51 µm: a published budget of a micrometer by ISO/IEC Guide 98-3', () => {
    const together = combinedUncertainty(um(0.33), um(0.29), um(0.25))
    expect(Math.abs(lengthIn(together, 'µm') - 0.51)).toBeLessThan(0.005)
  })

  // ISO/IEC Guide 98-3, H.1, remembered: 25, 9.7, 2.9 and 16.6 nm are 32 nm, the root of 1002 nm². A length here is whole
  // nanometres, so all of them are taken ten times.
  it('of 25, 9.7, 2.9 and 16.6 nm together is 32 nm', () => {
    const together = combinedUncertainty(um(0.25), um(0.097), um(0.029), um(0.166))
    expect(Math.abs(together / 10 - 32)).toBeLessThan(0.5)
  })
})

describe('guard band, ISO 14253-1 and ASME B89.7.3.1', () => {
  it('limits of 24 to 48 µm and an uncertainty of 3 µm accept 27 to 45 µm', () => {
    const limits = { least: um(24), most: um(48) }
    expect(guardedLimits(limits, um(3))).toEqual({ ok: true, value: { least: um(27), most: um(45) } })
  })
})

describe('thrust washers, TM 5-4210-233-14&P-2, p. 6-152', () => {
  it('a float of 0.024 in with washers of 0.235 in where 0.244 in are supposed is 0.015 in', () => {
    const corrected = correctedFloat(lengthOf(0.024, 'in'), lengthOf(0.244, 'in'), lengthOf(0.235, 'in'))
    expect(lengthIn(corrected, 'in')).toBe(0.015)
  })

  // Table c: less than 0.016 in asks for the standard ones, 0.119-0.122 in; 0.017 to 0.026 for 0.124-0.127; 0.027 to 0.036 for
  // 0.129-0.132. By thickness the same follows, with the floats that each row ends with: 0.007 to 0.016 in.
  it.each([
    [0.008, 'standard'],
    [0.016, 'standard'],
    [0.017, '0.005 oversize'],
    [0.026, '0.005 oversize'],
    [0.027, '0.010 oversize'],
    [0.036, '0.010 oversize'],
    [0.037, 'none'],
  ])('a float of %d in with the standard ones asks for %s', (float, name) => {
    const inches = (length: number) => lengthOf(length, 'in')
    const washers = [
      { name: called('standard'), thickness: inches(0.1205) },
      { name: called('0.005 oversize'), thickness: inches(0.1255) },
      { name: called('0.010 oversize'), thickness: inches(0.1305) },
    ]
    const [standard] = washers
    const limits = { saddle: 'M3', least: inches(0.007), most: inches(0.016), washers }
    const pair = thrustPairFor(limits, inches(float), [standard!, standard!])
    expect(pair.ok ? pair.value.first.name.text : 'none').toBe(name)
  })
})

// TM 5-3805-281-24-2: taper per 25.4 mm (1.0 in.) length 0.0025 mm (0.0001 in.). Between planes half an inch apart that is half of it.
describe('a taper for a length, TM 5-3805-281-24-2', () => {
  it.each([
    [25.4, 2.5],
    [12.7, 1.25],
    [50.8, 5],
  ])('over %d mm is %d µm', (apart, allowed) => {
    const measuring = {
      planes: 2,
      directions: 2,
      taper: um(2.5),
      taperPer: lengthOf(25.4, 'mm'),
      planesApart: lengthOf(apart, 'mm'),
    }
    expect(allowedTaper({ ...bare, measuring }, 1)).toBe(allowed * 1000)
  })
})

// Walls 90° from the parting line in inches, new and the least of a used one.
describe('shells of undersizes with their printed walls', () => {
  const sets = [
    // TM 5-3810-300-24&P-3, p. 74, main bearings.
    [0.1548, 0.153, 0.002, 0.1558, 0.154],
    [0.1548, 0.153, 0.01, 0.1598, 0.158],
    [0.1548, 0.153, 0.02, 0.1648, 0.163],
    [0.1548, 0.153, 0.03, 0.1698, 0.168],
    // TM 9-2815-205-24, p. 0095-9, connecting rods.
    [0.1247, 0.123, 0.002, 0.1257, 0.124],
    [0.1247, 0.123, 0.01, 0.1297, 0.128],
    [0.1247, 0.123, 0.03, 0.1397, 0.138],
  ] as const
  const inch = (length: number) => lengthOf(length, 'in')

  it.each(sets)('%d new, %d worn; %d under: %d new, %d worn', (standard, worn, under, wall, wornUnder) => {
    const walls: Band = { over: inch(standard), upTo: inch(standard + 0.0005) }
    const fit: Fit = {
      ...bare,
      grades: [{ grade: 'A', colour: '#0072B2', pattern: 'plain', wall: walls }],
      wornWall: inch(worn),
      undersizes: [{ name: called('under'), undersize: inch(under) }],
    }
    const ground = undersized(fit, 'under')
    expect(ground.ok && ground.value.grades[0]?.wall?.over).toBe(inch(wall))
    expect(wornWallOf(fit, 'under')).toBe(inch(wornUnder))
  })

  it('a standard shell of 0.1530 in may go back, one of 0.1529 in may not (TM 5-3810-300-24&P-3, p. 74)', () => {
    const fit = { ...bare, wornWall: inch(0.153) }
    expect(wornShell(fit, null, 'lower', inch(0.153))).toBeNull()
    expect(wornShell(fit, null, 'lower', inch(0.1529))?.code).toBe('shell-worn')
  })
})
