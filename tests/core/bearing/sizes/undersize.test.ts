import { describe, expect, it } from 'vitest'
import {
  exactly,
  candidatesBetween,
  proposeShells,
  undersized,
  undersizeOf,
  wornShell,
  wornWallOf,
} from '../../../../core/bearing/index.ts'
import type { Fit } from '../../../../core/engine/index.ts'
import { band, chartedMains, mm, pumpMains, um } from '../fits.ts'
import { lineOf } from '../../../problem-line.ts'

function reground(name: string, fit = chartedMains): Fit {
  const ground = undersized(fit, name)
  if (!ground.ok) throw new Error(lineOf(ground.problem))
  return ground.value
}

describe('a crank reground 0.25 mm under', () => {
  it('takes walls thicker by half of it', () => {
    expect(reground('0.25 under').grades[0]?.wall).toEqual({ over: mm(2.111), upTo: mm(2.114) })
  })

  it('has the clearance of the standard crank, since the walls make up for what was ground off', () => {
    const standard = { bore: exactly(mm(56.009)), journal: exactly(mm(51.997)) }
    const ground = { bore: exactly(mm(56.009)), journal: exactly(mm(51.747)) }
    expect(candidatesBetween(reground('0.25 under'), 'M1', ground)).toEqual(
      candidatesBetween(pumpMains, 'M1', standard),
    )
  })

  it('is not chosen for by the marks stamped before grinding', () => {
    const [first] = proposeShells(reground('0.25 under'), ['2', '2', '2', '2'], ['A', 'A', 'A', 'A'])
    expect(first?.upper).toBeNull()
    expect(lineOf(first!.problem!)).toMatch(/^mark-without-band: .*part=the crank, mark=A/)
  })

  it('takes its walls as the spec prints them, and no other grades', () => {
    const [first, ...others] = pumpMains.undersizes
    const walls = [
      { grade: 'Q', wall: band(2.115, 2.118) },
      { grade: 'R', wall: band(2.118, 2.121) },
    ]
    const printed = reground('0.25 under', { ...pumpMains, undersizes: [{ ...first!, walls }, ...others] })
    expect(printed.grades.map(({ grade, wall }) => [grade, wall])).toEqual([
      ['Q', { over: mm(2.115), upTo: mm(2.118) }],
      ['R', { over: mm(2.118), upTo: mm(2.121) }],
    ])
    expect(printed.grades[0]?.colour).toBe('#56B4E9')
    // 56.009 − 51.747 − 2 × 2.115…2.118: 0.026 to 0.032 mm.
    const sizes = { bore: exactly(mm(56.009)), journal: exactly(mm(51.747)) }
    expect(
      candidatesBetween(printed, 'M1', sizes).find(({ upper, lower }) => upper + lower === 'QQ'),
    ).toMatchObject({
      judged: { clearance: { least: um(26), most: um(32) }, within: 'inside' },
    })
  })

  it('must be an undersize of the spec', () => {
    const ground = undersized(pumpMains, '0.30 under')
    expect(ground.ok ? '' : lineOf(ground.problem)).toBe(
      'undersize-unknown: place=Main bearings, name=0.30 under, known=0.25 under 0.50 under',
    )
  })
})

describe('the undersize of a measured journal', () => {
  const undersizeAt = (journal: number, fit = pumpMains) => {
    const size = undersizeOf(fit, 'M2', mm(journal))
    return size.ok ? size.value : lineOf(size.problem)
  }

  it.each([
    [52, null],
    [51.982, null],
    [51.75, '0.25 under'],
    [51.732, '0.25 under'],
    [51.49, '0.50 under'],
  ])('%d mm is %s', (journal, name) => {
    expect(undersizeAt(journal)).toBe(name)
  })

  it('names the next size for a worn journal', () => {
    expect(undersizeAt(51.96)).toBe(
      'journal-of-no-size: place=M2, journal=51.96 mm, name=0.25 under, least=51.732 mm, most=51.75 mm',
    )
    expect(undersizeAt(51.731)).toMatch(/name=0\.50 under, least=51\.482 mm, most=51\.5 mm/)
  })

  it('names the next one in whatever order the spec lists them', () => {
    const reversed = { ...pumpMains, undersizes: pumpMains.undersizes.toReversed() }
    expect(undersizeAt(51.96, reversed)).toMatch(/^journal-of-no-size: .*name=0\.25 under/)
    expect(undersizeAt(51.96)).toMatch(/^journal-of-no-size: .*name=0\.25 under/)
  })

  it('names none below the last, and none for one that is too large', () => {
    expect(undersizeAt(51.4)).toBe('journal-of-no-size: place=M2, journal=51.4 mm')
    expect(undersizeAt(52.01)).toBe('journal-of-no-size: place=M2, journal=52.01 mm')
  })

  it('cannot be given without the sizes of the standard one', () => {
    const marks = pumpMains.journal.marks.map(({ mark }) => ({ mark }))
    expect(undersizeAt(51.75, { ...pumpMains, journal: { ...pumpMains.journal, marks } })).toMatch(
      /^journal-sizes-unknown: place=M2, part=/,
    )
  })
})

describe('walls of mixed halves', () => {
  it('take off the clearance what each is thicker by', () => {
    const sizes = { bore: exactly(mm(56.009)), journal: exactly(mm(51.997)) }
    const nominal = (pair: string) =>
      candidatesBetween(pumpMains, 'M1', sizes).find(({ upper, lower }) => `${upper}${lower}` === pair)
        ?.judged?.clearance.nominal
    expect([nominal('PP'), nominal('PQ'), nominal('QQ')]).toEqual([um(37), um(34), um(31)])
  })
})

describe('a used shell', () => {
  const [first, second] = pumpMains.undersizes
  const worn: Fit = {
    ...pumpMains,
    wornWall: mm(1.98),
    undersizes: [first!, { ...second!, wornWall: mm(2.225) }],
  }
  const wornShellText = (undersize: string | null, wall: number) => {
    const problem = wornShell(worn, undersize, 'Single 1', mm(wall))
    return problem === null ? null : lineOf(problem)
  }

  it('may go back from its worn wall on, and not below it', () => {
    expect(wornShellText(null, 1.98)).toBeNull()
    expect(wornShellText(null, 1.979)).toBe('shell-worn: label=Single 1, wall=1.979 mm, least=1.98 mm')
  })

  it('of an undersize has the worn wall that is printed for it, else half of the undersize more', () => {
    expect(wornWallOf(worn, '0.25 under')).toBe(mm(2.105))
    expect(wornWallOf(worn, '0.50 under')).toBe(mm(2.225))
    expect([wornShellText('0.25 under', 2.105), wornShellText('0.50 under', 2.225)]).toEqual([null, null])
    expect(wornShellText('0.50 under', 2.224)).toContain('2.225 mm')
  })

  it('is not judged where the spec gives no worn wall', () => {
    expect(wornShell(pumpMains, null, 'Single 1', mm(1.5))).toBeNull()
    expect(wornShell(pumpMains, '0.25 under', 'Single 1', mm(1.5))).toBeNull()
  })
})
