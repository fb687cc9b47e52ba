import { describe, expect, it } from 'vitest'
import {
  assignFromTray,
  orderList,
  type ShellAssignment,
  type OpenBearing,
  type Tray,
} from '../../../../core/bearing/index.ts'
import type { Fit } from '../../../../core/engine/index.ts'
import { mm, pumpMains, um } from '../fits.ts'
import { alike, assigned, line, openBearing, single } from './trays.ts'
import { lineOf } from '../../../problem-line.ts'

function refusal(tray: Tray, bearings: readonly OpenBearing[] = [openBearing('M1', 56.007, 52)]): string {
  const assignment = assignFromTray(pumpMains, tray, bearings)
  return assignment.ok ? 'taken' : lineOf(assignment.problem)
}

/** `M1 P/Q` with an asterisk for what must be ordered. */
function laidOut({ filled }: ShellAssignment): readonly string[] {
  const name = ({ grade, label }: { grade: string; label: string | null }) =>
    grade + (label === null ? '*' : '')
  return filled.map(({ position, upper, lower }) => `${position} ${name(upper)}/${name(lower)}`)
}

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
      { grade: 'P', undersize: null, half: 'either', count: 1, waiting: [{ position: 'M2', half: 'upper' }] },
      {
        grade: 'Q',
        undersize: null,
        half: 'either',
        count: 2,
        waiting: [
          { position: 'M3', half: 'upper' },
          { position: 'M3', half: 'lower' },
        ],
      },
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
      { grade: 'P', undersize: null, half: 'lower', count: 1, waiting: [{ position: 'M1', half: 'lower' }] },
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
    expect(assignment.unfilled.map(({ problem }) => lineOf(problem))).toEqual(['pinned-outside: place=M1'])
    // M2 wants thick walls, but both T are M1's.
    expect(laidOut(assignment)).toEqual(['M2 T*/T*'])
  })

  it('are kept one for each half that is pinned, and no other kind with them', () => {
    const wantsTT = openBearing('M2', 56.035, 52)
    const both = { ...wantsPP, pinned: { upper: { grade: 'T' }, lower: { grade: 'T' } } }
    const kept = assigned(pumpMains, alike(line('P', 4), line('T', 2)), [both, wantsTT])
    expect(laidOut(kept)).toEqual(['M2 T*/T*'])
    // Of three T one is pinned at M1, and two are left.
    const lower = { ...wantsPP, pinned: { upper: null, lower: { grade: 'T' } } }
    const left = assigned(pumpMains, alike(line('T', 3)), [lower, wantsTT])
    expect(left.unfilled.map(({ problem }) => problem.code)).toEqual(['pinned-outside'])
    expect(laidOut(left)).toEqual(['M2 T/T'])
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
    expect(lineOf(assignment.unfilled[0]!.problem)).toMatch(
      /^no-pair-inside-limits: place=M9, .*from=20, upTo=44 µm/,
    )
  })

  it('is all of it where there are neither walls to order by nor shells enough', () => {
    const bare = { ...pumpMains, grades: pumpMains.grades.map(({ wall: _, ...grade }) => grade) }
    const tray = alike(single('a', 'P', mm(1.9875)), single('b', 'P', mm(1.9875)))
    expect(laidOut(assigned(bare, tray, [wantsPP]))).toEqual(['M1 P/P'])
    const assignment = assigned(bare, tray, [wantsPP, { ...wantsPP, position: 'M2' }])
    expect(assignment.filled).toEqual([])
    expect(assignment.squaredDeviation).toBe(0)
    expect(assignment.unfilled).toHaveLength(2)
  })
})

describe('a tray that was written down wrong', () => {
  it('is refused', () => {
    expect(refusal(alike(line('Z', 2)))).toBe('grade-unknown: place=Z either, grade=Z, known=P Q R S T')
    expect(refusal(alike(line('P', 2), line('P', 1)))).toBe('labels-alike: label=P either')
    expect(refusal(alike(line('P', -1)))).toMatch(/^count-not-whole: label=P either, count=-1/)
    expect(refusal(alike(line('P', 1.5)))).toMatch(/^count-not-whole: .*count=1\.5/)
    expect(refusal(alike(single('a', 'P', mm(-1.9))))).toMatch(/wall/)
    expect(refusal(alike({ ...line('P', 1), undersize: '9 under' }))).toMatch(
      /^undersize-unknown: .*name=9 under/,
    )
  })

  it('is refused for a bearing of an undersize that the spec does not have', () => {
    expect(refusal(alike(), [{ ...wantsPP, undersize: '9 under' }])).toMatch(
      /^undersize-unknown: .*name=9 under/,
    )
  })
})
