import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  assignFromTray,
  exactly,
  orderList,
  type Assignment,
  type OpenBearing,
  type Tray,
  type TrayLine,
} from '../../../core/bearing/index.ts'
import { sentenceOf } from '../../../core/problem/index.ts'
import { nanometres, type Length } from '../../../core/quantity/index.ts'
import type { Fit } from '../../../core/spec/index.ts'
import { mm, pumpMains, um } from './fits.ts'
import { benches, line, openBearing, sevenMains } from './trays.ts'

function assigned(fit: Fit, tray: Tray, bearings: readonly OpenBearing[]): Assignment {
  const assignment = assignFromTray(fit, tray, bearings)
  if (!assignment.ok) throw new Error(sentenceOf(assignment.problem))
  return assignment.value
}

function refusal(tray: Tray, bearings: readonly OpenBearing[] = [openBearing('M1', 56.007, 52)]): string {
  const assignment = assignFromTray(pumpMains, tray, bearings)
  return assignment.ok ? 'taken' : sentenceOf(assignment.problem)
}

/** `M1 P/Q` with an asterisk for what must be ordered. */
function laidOut({ filled }: Assignment): readonly string[] {
  const name = ({ grade, label }: { grade: string; label: string | null }) =>
    grade + (label === null ? '*' : '')
  return filled.map(({ position, upper, lower }) => `${position} ${name(upper)}/${name(lower)}`)
}

const alike = (...lines: TrayLine[]): Tray => ({ halves: 'alike', lines })
const single = (label: string, grade: string, wall: Length): TrayLine => ({ ...line(grade, 1), label, wall })

// Target 32 µm: with 4.007 mm between bore and journal P/P, 3.975 mm, hits it; every 3 µm more asks for one grade more in
// one half.
const wantsPP = openBearing('M1', 56.007, 52)
const wantsPQ = openBearing('M2', 56.01, 52)
const wantsQQ = openBearing('M3', 56.013, 52)

describe('shells from the tray', () => {
  it('are for each bearing the nearest to its target where the tray has them', () => {
    const assignment = assigned(pumpMains, alike(line('P', 4), line('Q', 4)), [wantsPP, wantsPQ, wantsQQ])
    expect(laidOut(assignment)).toEqual(['M1 P/P', 'M2 P/Q', 'M3 Q/Q'])
    expect(assignment.squaredDeviation).toBe(0)
    expect(orderList(assignment)).toEqual([])
    expect(assignment.filled[0]?.judged.clearance.nominal).toBe(um(32))
  })

  it('are weighed for all bearings at once', () => {
    // Two P and two Q. Were M1 given P/P, M2 would be left with Q/Q: 0 + 3² = 9 µm². Both mixed: 3² + 0 = 9 µm² too, but
    // with M2 wanting Q/Q it is 0 + 0 against 3² + 3².
    const tray = alike(line('P', 2), line('Q', 2))
    expect(laidOut(assigned(pumpMains, tray, [wantsPP, wantsQQ]))).toEqual(['M1 P/P', 'M3 Q/Q'])
    expect(laidOut(assigned(pumpMains, tray, [wantsQQ, wantsPP]))).toEqual(['M3 Q/Q', 'M1 P/P'])
  })

  it('give up a little at one bearing to spare much at another', () => {
    // One P and three Q: M1 gets the P although that leaves it 3 µm off; P/Q at M2 would leave M1 6 µm off.
    const assignment = assigned(pumpMains, alike(line('P', 1), line('Q', 3)), [wantsPP, wantsPQ])
    expect(laidOut(assignment)).toEqual(['M1 P/Q', 'M2 Q/Q'])
    expect(assignment.squaredDeviation).toBe(18)
  })

  it('are ordered where the tray is short, as few as will do', () => {
    const assignment = assigned(pumpMains, alike(line('P', 2), line('Q', 1)), [wantsPP, wantsPQ, wantsQQ])
    expect(laidOut(assignment)).toEqual(['M1 P/P', 'M2 P*/Q', 'M3 Q*/Q*'])
    expect(orderList(assignment)).toEqual([
      { grade: 'P', undersize: null, half: 'either', count: 1, waiting: ['M2 upper'] },
      { grade: 'Q', undersize: null, half: 'either', count: 2, waiting: ['M3 upper', 'M3 lower'] },
    ])
  })

  it('are not ordered as long as what is there stays inside the limits', () => {
    // R/R leaves M1 20 µm ± 3: outside. Q/R 23 ± 3, just inside, though P/P would be on target.
    const assignment = assigned(pumpMains, alike(line('Q', 1), line('R', 1)), [wantsPP])
    expect(laidOut(assignment)).toEqual(['M1 Q/R'])
    expect(assignment.filled[0]?.judged).toMatchObject({ within: 'inside', clearance: { least: um(20) } })
  })

  it('may all have to be ordered', () => {
    const assignment = assigned(pumpMains, alike(), [wantsPP, wantsQQ])
    expect(laidOut(assignment)).toEqual(['M1 P*/P*', 'M3 Q*/Q*'])
  })

  it('differ between halves where the engine has it so', () => {
    const tray: Tray = { halves: 'differ', lines: [line('P', 2, 'upper'), line('P', 0, 'lower')] }
    const assignment = assigned(pumpMains, tray, [wantsPP])
    expect(laidOut(assignment)).toEqual(['M1 P/P*'])
    expect(orderList(assignment)).toEqual([
      { grade: 'P', undersize: null, half: 'lower', count: 1, waiting: ['M1 lower'] },
    ])
  })

  it('are mixed only as the spec allows', () => {
    const tray = alike(line('P', 1), line('Q', 1))
    expect(laidOut(assigned(pumpMains, tray, [wantsPQ]))).toEqual(['M2 P/Q'])
    const never: Fit = { ...pumpMains, mixing: { neighbours: false, thicker: 'lower' } }
    expect(laidOut(assigned(never, tray, [wantsPQ]))).toEqual(['M2 P/P*'])
    const above: Fit = { ...pumpMains, mixing: { neighbours: true, thicker: 'upper' } }
    expect(laidOut(assigned(above, tray, [wantsPQ]))).toEqual(['M2 Q/P'])
  })
})

describe('single shells with measured walls', () => {
  it('are paired to their walls, the thicker where it belongs', () => {
    // 4.007 − 0.032 = 3.975 mm of wall wanted: 1.9862 + 1.9888.
    const tray = alike(
      single('a', 'P', mm(1.9888)),
      single('b', 'P', mm(1.987)),
      single('c', 'P', mm(1.9862)),
    )
    const [first] = assigned(pumpMains, tray, [wantsPP]).filled
    expect([first?.upper.label, first?.lower.label]).toEqual(['c', 'a'])
    expect(first?.judged.clearance).toMatchObject({ least: um(32), most: um(32) })
  })

  it('are used once each', () => {
    const tray = alike(single('a', 'P', mm(1.9875)), single('b', 'P', mm(1.9875)))
    const assignment = assigned(pumpMains, tray, [wantsPP, { ...wantsPP, position: 'M4' }])
    const labels = assignment.filled.flatMap(({ upper, lower }) => [upper.label, lower.label])
    expect(labels.toSorted()).toEqual(['a', 'b', null, null])
  })

  it('are preferred to ordering', () => {
    const tray = alike(single('a', 'P', mm(1.986)), single('b', 'P', mm(1.986)))
    expect(laidOut(assigned(pumpMains, tray, [wantsPP]))).toEqual(['M1 P/P'])
  })
})

describe('pinned shells', () => {
  it('stay, and the rest is found around them', () => {
    const pinned = { ...wantsPP, pinned: { upper: null, lower: { grade: 'Q' } } }
    const assignment = assigned(pumpMains, alike(line('P', 4), line('Q', 4)), [pinned, wantsQQ])
    expect(laidOut(assignment)).toEqual(['M1 P/Q', 'M3 Q/Q'])
  })

  it('may be one shell of the tray', () => {
    const tray = alike(line('P', 2), single('a', 'P', mm(1.9885)))
    const pinned = { ...wantsPP, pinned: { upper: { label: 'a' }, lower: null } }
    expect(assigned(pumpMains, tray, [pinned]).filled[0]?.upper.label).toBe('a')
  })

  it('that cannot be inside the limits leave the bearing open and are kept for it', () => {
    const pinned = { ...wantsPP, pinned: { upper: { grade: 'T' }, lower: { grade: 'T' } } }
    const assignment = assigned(pumpMains, alike(line('T', 2)), [pinned, openBearing('M2', 56.035, 52)])
    expect(assignment.unfilled.map(({ problem }) => sentenceOf(problem))).toEqual([
      'M1: with what is pinned here no pair of shells is allowed and inside the limits. Release one half.',
    ])
    // M2 wants thick walls, but both T are M1's.
    expect(laidOut(assignment)).toEqual(['M2 T*/T*'])
  })
})

describe('reground journals', () => {
  it('take shells of their undersize only', () => {
    const tray = alike(line('P', 4), { ...line('P', 1), label: 'P 0.25', undersize: '0.25 under' })
    const ground = { ...openBearing('M2', 56.007, 51.75), undersize: '0.25 under' }
    const assignment = assigned(pumpMains, tray, [wantsPP, ground])
    expect(laidOut(assignment)).toEqual(['M1 P/P', 'M2 P/P*'])
    expect(assignment.filled[1]?.upper).toMatchObject({ undersize: '0.25 under', label: 'P 0.25' })
    expect(orderList(assignment)[0]).toMatchObject({ grade: 'P', undersize: '0.25 under', count: 1 })
  })
})

describe('what no tray can fill', () => {
  it('is named, and the other bearings get their shells', () => {
    const assignment = assigned(pumpMains, alike(line('P', 4)), [openBearing('M9', 56.2, 52), wantsPP])
    expect(laidOut(assignment)).toEqual(['M1 P/P'])
    expect(sentenceOf(assignment.unfilled[0]!.problem)).toMatch(
      /^M9: no allowed pair of shells is sure to stay inside 20 to 44 µm/,
    )
  })

  it('is all of it where there are neither walls to order by nor shells enough', () => {
    const bare = { ...pumpMains, grades: pumpMains.grades.map(({ wall: _, ...grade }) => grade) }
    const tray = alike(single('a', 'P', mm(1.9875)), single('b', 'P', mm(1.9875)))
    expect(laidOut(assigned(bare, tray, [wantsPP]))).toEqual(['M1 P/P'])
    const assignment = assigned(bare, tray, [wantsPP, { ...wantsPP, position: 'M2' }])
    expect(assignment.filled).toEqual([])
    expect(assignment.unfilled).toHaveLength(2)
  })
})

describe('a tray that was written down wrong', () => {
  it('is refused with a sentence', () => {
    expect(refusal(alike(line('Z', 2)))).toBe(
      'Z either: Z is not a grade of this fit. Its grades are P, Q, R, S, T.',
    )
    expect(refusal(alike(line('P', 2), line('P', 1)))).toBe(
      'Two lines of the tray are labelled P either. Give each a label of its own.',
    )
    expect(refusal(alike(line('P', -1)))).toMatch(/^P either: -1 is not a number of shells/)
    expect(refusal(alike(line('P', 1.5)))).toMatch(/1.5 is not a number of shells/)
    expect(refusal(alike(single('a', 'P', mm(-1.9))))).toMatch(/cannot be a wall/)
    expect(refusal(alike({ ...line('P', 1), undersize: '9 under' }))).toMatch(/has no undersize 9 under/)
  })

  it('is refused for a bearing of an undersize that the spec does not have', () => {
    expect(refusal(alike(), [{ ...wantsPP, undersize: '9 under' }])).toMatch(/has no undersize 9 under/)
  })
})

describe('any tray', () => {
  it('is kept to, and every bearing stays inside its limits', () => {
    fc.assert(
      fc.property(benches, ({ fit, tray, bearings }) => {
        const { filled } = assigned(fit, tray, bearings)
        for (const { label, count } of tray.lines) {
          const used = filled
            .flatMap(({ upper, lower }) => [upper, lower])
            .filter((shell) => shell.label === label)
          expect(used.length).toBeLessThanOrEqual(count)
        }
        for (const { judged } of filled) expect(judged.within).toBe('inside')
      }),
    )
  })

  it('gives the same shells to the same bearings in whatever order they are asked for', () => {
    fc.assert(
      fc.property(benches, ({ fit, tray, bearings }) => {
        const there = assigned(fit, tray, bearings)
        const back = assigned(fit, tray, bearings.toReversed())
        const sizesOf = new Map(bearings.map(({ position, sizes }) => [position, sizes.bore.least]))
        // Bearings of one size are alike, so it is the sizes that the shells are told by.
        const told = ({ filled }: Assignment) =>
          filled
            .map(({ position, upper, lower }) => `${sizesOf.get(position)} ${upper.grade}/${lower.grade}`)
            .toSorted()
        expect(told(back)).toEqual(told(there))
      }),
    )
  })

  it('with more in it is never a worse one', () => {
    fc.assert(
      fc.property(benches, fc.nat(17), ({ fit, tray, bearings }, at) => {
        const more = {
          ...tray,
          lines: tray.lines.map((each, index) =>
            index === at % tray.lines.length ? { ...each, count: each.count + 1 } : each,
          ),
        }
        const before = assigned(fit, tray, bearings)
        const after = assigned(fit, more, bearings)
        const ordered = (assignment: Assignment) =>
          orderList(assignment).reduce((total, { count }) => total + count, 0)
        expect(ordered(after)).toBeLessThanOrEqual(ordered(before))
        if (ordered(after) === ordered(before))
          expect(after.squaredDeviation).toBeLessThanOrEqual(before.squaredDeviation)
      }),
    )
  })

  it('of single shells is used as well as trying everything would', () => {
    const walls = fc.array(fc.integer({ min: 1_984_000, max: 1_994_000 }).map(nanometres), {
      minLength: 4,
      maxLength: 7,
    })
    const rooms = fc.array(fc.integer({ min: 4_004_000, max: 4_016_000 }), { minLength: 1, maxLength: 3 })
    fc.assert(
      fc.property(walls, rooms, (walls, rooms) => {
        const bare = { ...pumpMains, grades: [{ grade: 'P', colour: '#E69F00', pattern: 'plain' as const }] }
        const tray = alike(...walls.map((wall, index) => single(`${index}`, 'P', wall)))
        const bearings = rooms.map((room, index) => ({
          ...openBearing(`M${index}`, 56, 52),
          sizes: { bore: exactly(nanometres(mm(52) + room)), journal: exactly(mm(52)) },
        }))
        const { filled, squaredDeviation } = assigned(bare, tray, bearings)
        const within = rooms.filter((room) => leastByTrying([room], walls) < Infinity)
        const best = leastByTrying(within, walls)
        if (best === Infinity) expect(filled).toHaveLength(0)
        else expect([filled.length, squaredDeviation]).toEqual([within.length, expect.closeTo(best, 6)])
      }),
      { numRuns: 300 },
    )
  })
})

/** The least sum of squared deviations from 32 µm inside 20 to 44 µm, by trying every pair for every room. */
function leastByTrying([room, ...rooms]: readonly number[], walls: readonly number[]): number {
  if (room === undefined) return 0
  let least = Infinity
  for (let a = 0; a < walls.length; a++)
    for (let b = a + 1; b < walls.length; b++) {
      const clearance = (room - walls[a]! - walls[b]!) / 1000
      if (clearance < 20 || clearance > 44) continue
      const others = walls.filter((_, index) => index !== a && index !== b)
      least = Math.min(least, (clearance - 32) ** 2 + leastByTrying(rooms, others))
    }
  return least
}

describe('200 saddles', () => {
  it('get their shells too', () => {
    const bearings = Array.from({ length: 200 }, (_, index) =>
      openBearing(`M${index}`, 56.005 + (index % 20) / 1000, 52),
    )
    const tray = alike(...sevenMains.grades.map(({ grade }) => line(grade, 40)))
    const { filled, unfilled } = assigned(sevenMains, tray, bearings)
    expect([filled.length, unfilled.length]).toEqual([200, 0])
  })
})
