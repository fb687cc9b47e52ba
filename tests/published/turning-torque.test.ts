import { describe, expect, it } from 'vitest'
import { torqueIn, type TorqueUnit } from '../../core/quantity/index.ts'
import { readTurning } from '../../core/tightening/index.ts'

/** What was typed, in a unit, to so many digits as the source prints. */
function turned(typed: string, unit: TorqueUnit, decimals: number): string {
  const read = readTurning(typed, unit)
  if (!read.ok) throw new Error(read.problem.code)
  return torqueIn(read.value.torque, unit).toFixed(decimals)
}

describe('force times lever, TM 9-254, para 4-1 (torque = distance × force)', () => {
  it.each([
    ['6 lbf × 10 in', '60'],
    ['5 lbf × 12 in', '60'],
    ['10 lbf × 6 in', '60'],
  ])('%s is %s lbf·in', (typed, inchPounds) => {
    expect(turned(typed, 'lbf·in', 0)).toBe(inchPounds)
  })
})

/** The same torque by a wrench and by a pull scale on a cord around the hub: radius times reading, divided by 12. */
describe('a rotating torque by wrench and by pull scale, TM 5-3805-257-14P, steps 29 to 31', () => {
  it.each([
    ['21 lbf × 8-5/16 in', '14.5'],
    ['28 lbf × 8-5/16 in', '19.4'],
    ['9 lbf × 8-5/16 in', '6.2'],
    ['17 lbf × 8-5/16 in', '11.8'],
  ])('%s is %s lbf·ft', (typed, footPounds) => {
    expect(turned(typed, 'lbf·ft', 1)).toBe(footPounds)
  })

  it('is what the wrench must read, 15 to 20 for new bearings and 6 to 12 for used ones, as far as whole pounds go', () => {
    const printed = [15, 20, 6, 12]
    const scale = [21, 28, 9, 17].map((pounds) => Number(turned(`${pounds} lbf × 8-5/16 in`, 'lbf·ft', 2)))
    scale.forEach((footPounds, index) =>
      expect(Math.abs(footPounds - printed[index]!)).toBeLessThan(8.3125 / 12),
    )
  })
})
