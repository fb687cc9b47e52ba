import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { measure, shapeFaults } from '../../../../core/bearing/index.ts'
import { celsius, nanometres } from '../../../../core/quantity/index.ts'
import { mm, pumpMains, um } from '../fits.ts'
import { checkProperty } from '../../../property.ts'
import { lineOf } from '../../../problem-line.ts'

const steel = { expansion: 11.5, temperature: celsius(20) }

/** Planes of readings in millimetres. */
function grid(...planes: number[][]) {
  return planes.map((plane) => plane.map(mm))
}

describe('the readings of a journal', () => {
  const journal = measure(grid([51.996, 51.998, 51.997], [51.992, 51.995, 51.993]), steel)

  it('have a least, a mean and a greatest size', () => {
    // The six add up to 311.971; a sixth of that is 51.9951666…
    expect([journal.least, journal.mean, journal.most]).toEqual([mm(51.992), 51_995_167, mm(51.998)])
  })

  it('are out of round by the greatest difference within one plane', () => {
    // 51.998 − 51.996 = 2 µm in the first, 51.995 − 51.992 = 3 µm in the second
    expect(journal.outOfRound).toBe(um(3))
  })

  it('taper by the greatest difference between planes in one direction', () => {
    // 4, 3 and 4 µm
    expect(journal.taper).toBe(um(4))
  })

  it('have no taper in one plane and no out-of-round in one direction', () => {
    expect(measure(grid([51.996, 51.99]), steel).taper).toBe(0)
    expect(measure(grid([51.996], [51.99]), steel).outOfRound).toBe(0)
  })

  it('are brought to 20 °C first', () => {
    const warm = measure(grid([60, 60], [60, 60]), { expansion: 11.5, temperature: celsius(30) })
    expect(warm.mean).toBe(mm(59.993101))
  })

  it('need a reading in every cell', () => {
    expect(() => measure([], steel)).toThrow(RangeError)
    expect(() => measure(grid([52], [52, 52]), steel)).toThrow(RangeError)
  })
})

describe('a reading that does not go with the others', () => {
  it('is pointed out with its place', () => {
    const { suspects } = measure(grid([51.996, 51.998, 51.997], [51.992, 51.895, 51.993]), steel)
    expect(suspects).toEqual([{ plane: 1, direction: 1, size: mm(51.895), middle: mm(51.9945) }])
  })

  it('is held against the middle one of an odd number, in whatever order they come', () => {
    const { suspects } = measure(grid([52.006, 52, 52.06, 52.002, 52.004]), steel)
    expect(suspects).toEqual([{ plane: 0, direction: 2, size: mm(52.06), middle: mm(52.004) }])
  })

  it('is not seen in what a micrometer scatters by, nor in a true taper', () => {
    expect(measure(grid([52, 52, 52], [52, 52, 52.008]), steel).suspects).toEqual([])
    expect(measure(grid([52, 52, 52], [51.97, 51.97, 51.97]), steel).suspects).toEqual([])
  })

  it('is one from 10.4 µm on where the others agree: 3.5 times 2 µm, over 0.6745', () => {
    const suspects = (size: number) => measure(grid([52, 52, 52], [52, 52, size]), steel).suspects.length
    // 3.5 · 2 / 0.6745 = 10.378 µm
    expect([suspects(52.0103), suspects(52.0104)]).toEqual([0, 1])
    expect([suspects(51.9897), suspects(51.9896)]).toEqual([0, 1])
  })

  it('cannot be named among three', () => {
    expect(measure(grid([52, 52, 51.9]), steel).suspects).toEqual([])
  })

  it('still counts until it is taken again', () => {
    expect(measure(grid([52, 52, 52], [52, 52, 51.9]), steel).least).toBe(mm(51.9))
  })
})

describe('what readings come to', () => {
  const readings = fc.array(
    fc.array(fc.integer({ min: 51_900_000, max: 52_000_000 }).map(nanometres), {
      minLength: 3,
      maxLength: 3,
    }),
    {
      minLength: 1,
      maxLength: 4,
    },
  )

  it('does not depend on which plane or direction comes first', () => {
    checkProperty(
      fc.property(readings, (planes) => {
        const { suspects: _, ...sizes } = measure(planes, steel)
        const { suspects: __, ...turned } = measure(
          planes.toReversed().map((plane) => plane.toReversed()),
          steel,
        )
        expect(turned).toEqual(sizes)
        expect(sizes.least).toBeLessThanOrEqual(sizes.mean)
        expect(sizes.mean).toBeLessThanOrEqual(sizes.most)
        expect(Math.max(sizes.outOfRound, sizes.taper)).toBeLessThanOrEqual(sizes.most - sizes.least)
      }),
    )
  })
})

describe('out-of-round and taper against limits of 6 µm', () => {
  const faults = (...planes: number[][]) =>
    shapeFaults(pumpMains, 'M2', 'journal', measure(grid(...planes), steel)).map(lineOf)

  it('are allowed up to the limit itself', () => {
    expect(faults([51.99, 51.996, 51.99], [51.99, 51.99, 51.99])).toEqual([])
  })

  it('are reported when beyond, with what to do', () => {
    expect(faults([51.99, 51.9961, 51.99], [51.99, 51.989, 51.99])).toEqual([
      'out-of-round: place=M2, what=journal, reading=6.1 µm, allowed=6 µm',
      'tapered: place=M2, what=journal, reading=7.1 µm, allowed=6 µm',
    ])
  })

  it('of a bore are cured otherwise', () => {
    const bore = measure(grid([56, 56.01]), steel)
    expect(lineOf(shapeFaults(pumpMains, 'M2', 'bore', bore)[0]!)).toMatch(
      /^out-of-round: place=M2, what=bore, /,
    )
  })

  it('of a taper for a length are judged by how far apart the planes are', () => {
    // 5 µm per 25 mm, three planes 20 mm apart from first to last: 2 µm from one to the next, 4 µm over all.
    const measuring = { planes: 3, directions: 1, taper: um(5), taperPer: mm(25), planesApart: mm(20) }
    const faultsOf = (...sizes: number[]) =>
      shapeFaults(
        { ...pumpMains, measuring },
        'M2',
        'journal',
        measure(grid(...sizes.map((size) => [size])), steel),
      ).map(lineOf)
    expect(faultsOf(51.99, 51.992, 51.994)).toEqual([])
    expect(faultsOf(51.99, 51.992, 51.9941)).toEqual([
      'tapered: place=M2, what=journal, reading=2.1 µm, allowed=2 µm',
    ])
    expect(faultsOf(51.99, 51.993, 51.99)).toEqual([
      expect.stringContaining('tapered: place=M2, what=journal, reading=3 µm, allowed=2 µm'),
    ])
  })

  it('are not judged where the spec sets no limits', () => {
    const { measuring: _, ...free } = pumpMains
    expect(shapeFaults(free, 'M2', 'bore', measure(grid([56, 56.1]), steel))).toEqual([])
  })
})
