import fc from 'fast-check'
import {
  assignFromTray,
  exactly,
  type ShellAssignment,
  type Half,
  type OpenBearing,
  type Tray,
  type TrayLine,
} from '../../../../core/bearing/index.ts'
import { nanometres, type Length } from '../../../../core/quantity/index.ts'
import type { Fit } from '../../../../core/engine/index.ts'
import { band, mm, pumpMains } from '../fits.ts'
import { lineOf } from '../../../problem-line.ts'

export const nine = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'K']

/** Seven mains with nine grades of 3 µm, limits 20 to 44 µm. */
export const sevenMains: Fit = {
  ...pumpMains,
  positions: ['M1', 'M2', 'M3', 'M4', 'M5', 'M6', 'M7'],
  grades: nine.map((grade, index) => ({
    grade,
    colour: '#E69F00',
    pattern: 'plain',
    wall: band(1.98 + index * 0.003, 1.983 + index * 0.003),
  })),
}

export function line(grade: string, count: number, half: Half | 'either' = 'either'): TrayLine {
  return { label: `${grade} ${half}`, grade, undersize: null, half, count, wall: null }
}

/** A bearing of a measured bore and journal in millimetres, nothing pinned. */
export function openBearing(position: string, bore: number, journal: number): OpenBearing {
  return {
    position,
    sizes: { bore: exactly(mm(bore)), journal: exactly(mm(journal)) },
    undersize: null,
    pinned: { upper: null, lower: null },
  }
}

/** A fit's mixing rule, a tray, and seven bearings: what a machinist may have on the bench, short trays among them. */
export const benches: fc.Arbitrary<{ fit: Fit; tray: Tray; bearings: readonly OpenBearing[] }> = fc
  .record({
    neighbours: fc.boolean(),
    thicker: fc.constantFrom('upper', 'lower', 'either'),
    halves: fc.constantFrom('alike', 'differ'),
    counts: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 18, maxLength: 18 }),
    wallsOffMiddle: fc.array(fc.integer({ min: -24_000, max: 24_000 }), { minLength: 7, maxLength: 7 }),
  })
  .map(({ neighbours, thicker, halves, counts, wallsOffMiddle }) => {
    const half = (index: number) => (halves === 'alike' ? 'either' : index % 2 === 0 ? 'upper' : 'lower')
    const lines = (halves === 'alike' ? counts.slice(0, 9) : counts).map((count, index) =>
      line(nine[halves === 'alike' ? index : Math.floor(index / 2)]!, count, half(index)),
    )
    return {
      fit: { ...sevenMains, mixing: { neighbours, thicker } },
      tray: { halves, lines },
      // The middle grade, 1.9935 mm, on both halves and 32 µm of oil need 4.019 mm between bore and journal.
      bearings: sevenMains.positions.map((position, index) => ({
        ...openBearing(position, 56, 52),
        sizes: {
          bore: exactly(nanometres(mm(56.019) + wallsOffMiddle[index]!)),
          journal: exactly(mm(52)),
        },
      })),
    }
  })

/** The assignment, where there must be one. */
export function assigned(fit: Fit, tray: Tray, bearings: readonly OpenBearing[]): ShellAssignment {
  const assignment = assignFromTray(fit, tray, bearings)
  if (!assignment.ok) throw new Error(lineOf(assignment.problem))
  return assignment.value
}

/** A tray in which upper and lower shells are the same part. */
export const alike = (...lines: TrayLine[]): Tray => ({ halves: 'alike', lines })

/** One shell with its measured wall. */
export const single = (label: string, grade: string, wall: Length): TrayLine => ({
  ...line(grade, 1),
  label,
  wall,
})
