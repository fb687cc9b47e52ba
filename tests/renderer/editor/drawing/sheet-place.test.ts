import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { engineAt, engineDirection } from '../../../../renderer/editor/drawing/sheet-place.ts'
import { checkProperty } from '../../../property.ts'

/** Drawings from above (y up the sheet), from below, of a side seen with the nose at the right, turned by a quarter; stretched across. */
const places = {
  above: (x: number, y: number) => ({ x, y: -y }),
  below: (x: number, y: number) => ({ x, y: y * 1.4 }),
  side: (x: number, y: number) => ({ x: -x, y: -y }),
  turned: (x: number, y: number) => ({ x: y, y: x }),
}

describe('a place of the sheet', () => {
  it.each(Object.entries(places))('is the place of the engine that is drawn there: %s', (_, place) => {
    checkProperty(
      fc.property(
        fc.integer({ min: -900_000, max: 900_000 }),
        fc.integer({ min: -400_000, max: 400_000 }),
        (x, y) => {
          const found = engineAt({ place }, place(x / 1000, y / 1000))
          expect(Math.abs(found.x - x * 1000)).toBeLessThanOrEqual(1)
          expect(Math.abs(found.y - y * 1000)).toBeLessThanOrEqual(1)
        },
      ),
    )
  })
})

describe('a direction of the sheet', () => {
  it.each([
    ['above', { x: 0, y: 1 }],
    ['below', { x: 0, y: -1 }],
    ['side', { x: 0, y: 1 }],
    ['turned', { x: -1, y: 0 }],
  ] as const)('up is along or across the engine: %s', (name, up) => {
    expect(engineDirection({ place: places[name] }, { x: 0, y: -1 })).toEqual(up)
  })
})
