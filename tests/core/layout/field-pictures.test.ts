import { describe, expect, it } from 'vitest'
import { fieldPicture, fieldPictures } from '../../../core/layout/index.ts'

const pictures = Object.keys(fieldPictures).map((field) => [field, fieldPicture(field)!] as const)

describe('the picture of a field', () => {
  it('lies on its sheet, and says by arrows what is measured', () => {
    expect(pictures.length).toBeGreaterThan(50)
    for (const [field, { width, height, lines }] of pictures) {
      const xs = lines.flatMap(({ points }) => points.filter((_, at) => at % 2 === 0))
      const ys = lines.flatMap(({ points }) => points.filter((_, at) => at % 2 === 1))
      expect([Math.min(...xs) >= 0, Math.max(...xs) <= width], field).toEqual([true, true])
      expect([Math.min(...ys) >= 0, Math.max(...ys) <= height], field).toEqual([true, true])
      expect(lines.filter(({ role }) => role === 'gauge').length, field).toBeGreaterThan(0)
      expect(
        lines.some(({ role }) => role !== 'gauge'),
        field,
      ).toBe(true)
    }
  })

  it('tells what one field measures from what its neighbour does', () => {
    const alike = (one: string, other: string) =>
      JSON.stringify(fieldPicture(one)) === JSON.stringify(fieldPicture(other))
    const neighbours = [
      ['fastenerGroups.grip', 'fastenerGroups.acrossFlats'],
      ['fastenerGroups.thread.diameter', 'fastenerGroups.thread.pitch'],
      ['case.saddles.at', 'case.saddles.width'],
      ['case.bore', 'case.pitch'],
      ['fits.housing.marks.band', 'fits.journal.marks.band'],
      ['fits.clearance.least', 'fits.grades.wall'],
      ['fasteners.at.0', 'fasteners.at.1'],
      ['procedures.passes.torque.target', 'procedures.passes.angle.target'],
    ] as const
    for (const [one, other] of neighbours) expect(alike(one, other), `${one}, ${other}`).toBe(false)
  })

  it('is that of what a field is part of, and none where nothing is measured', () => {
    expect(fieldPicture('fits.clearance.serviceLimit')).toEqual(fieldPicture('fits.clearance'))
    expect(fieldPicture('ringSets.rings.endGap.new.least')).toEqual(fieldPicture('ringSets.rings.endGap'))
    for (const field of ['', 'name', 'fastenerGroups.name', 'case.sides.plus', 'beads.sealant'])
      expect(fieldPicture(field), field).toBeNull()
  })
})
