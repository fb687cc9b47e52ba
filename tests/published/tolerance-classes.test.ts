import { describe, expect, it } from 'vitest'
import { difference, limitsOfClass, lengthIn, millimetres } from '../../core/quantity/index.ts'
import { exactly, oilClearance } from '../../core/bearing/index.ts'
import { valueOf } from '../core/joint/workshop.ts'

/** How far both limits of a class lie from the size, in µm. */
function deviations(size: number, name: string): readonly [lower: number, upper: number] {
  const { nominal, least, most } = valueOf(limitsOfClass(`${size} ${name}`))
  return [lengthIn(difference(least, nominal), 'µm'), lengthIn(difference(most, nominal), 'µm')]
}

describe('tolerance grades, ISO 286-1, table 1', () => {
  // Read in two reprints of the table; a size on the edge of two steps belongs to the smaller, 'up to and including'.
  it.each([
    [3, [4, 6, 10, 14, 25, 40, 60]],
    [6, [5, 8, 12, 18, 30, 48, 75]],
    [10, [6, 9, 15, 22, 36, 58, 90]],
    [18, [8, 11, 18, 27, 43, 70, 110]],
    [30, [9, 13, 21, 33, 52, 84, 130]],
    [50, [11, 16, 25, 39, 62, 100, 160]],
    [80, [13, 19, 30, 46, 74, 120, 190]],
    [120, [15, 22, 35, 54, 87, 140, 220]],
    [180, [18, 25, 40, 63, 100, 160, 250]],
    [250, [20, 29, 46, 72, 115, 185, 290]],
    [315, [23, 32, 52, 81, 130, 210, 320]],
    [400, [25, 36, 57, 89, 140, 230, 360]],
    [500, [27, 40, 63, 97, 155, 250, 400]],
  ])('up to and including %d mm, IT5 to IT11 are %j µm', (size, tolerances) => {
    const widths = [5, 6, 7, 8, 9, 10, 11].map((grade) => deviations(size, `H${grade}`)[1])
    expect(widths).toEqual(tolerances)
    expect([5, 6, 7, 8, 9, 10, 11].map((grade) => -deviations(size, `h${grade}`)[0])).toEqual(tolerances)
  })

  it.each([
    [30, 21],
    [30.001, 25],
    [50, 25],
    [50.001, 30],
  ])('IT7 of %d mm is %d µm', (size, micrometres) => {
    expect(deviations(size, 'H7')).toEqual([0, micrometres])
  })
})

describe('fundamental deviations of shafts, ISO 286-1, tables 4 and 5', () => {
  // Upper deviations of d, e, f, g: read in a reprint.
  it.each([
    [3, [-20, -14, -6, -2]],
    [6, [-30, -20, -10, -4]],
    [10, [-40, -25, -13, -5]],
    [18, [-50, -32, -16, -6]],
    [30, [-65, -40, -20, -7]],
    [50, [-80, -50, -25, -9]],
    [80, [-100, -60, -30, -10]],
    [120, [-120, -72, -36, -12]],
    [180, [-145, -85, -43, -14]],
    [250, [-170, -100, -50, -15]],
    [315, [-190, -110, -56, -17]],
    [400, [-210, -125, -62, -18]],
    [500, [-230, -135, -68, -20]],
  ])('of %d mm: d, e, f and g end at %j µm', (size, upper) => {
    expect(['d9', 'e8', 'f7', 'g6'].map((name) => deviations(size, name)[1])).toEqual(upper)
    // And the holes of the same letters begin where the shafts end, on the other side.
    expect(['D9', 'E8', 'F7', 'G6'].map((name) => -deviations(size, name)[0])).toEqual(upper)
  })

  // Lower deviations of m, n, p, r and s: read in a textbook's reprint, for up to 180 mm.
  it.each([
    [3, [2, 4, 6, 10, 14]],
    [6, [4, 8, 12, 15, 19]],
    [10, [6, 10, 15, 19, 23]],
    [18, [7, 12, 18, 23, 28]],
    [30, [8, 15, 22, 28, 35]],
    [50, [9, 17, 26, 34, 43]],
    [65, [11, 20, 32, 41, 53]],
    [80, [11, 20, 32, 43, 59]],
    [100, [13, 23, 37, 51, 71]],
    [120, [13, 23, 37, 54, 79]],
    [140, [15, 27, 43, 63, 92]],
    [160, [15, 27, 43, 65, 100]],
    [180, [15, 27, 43, 68, 108]],
  ])('of %d mm: m, n, p, r and s begin at %j µm', (size, lower) => {
    expect(['m6', 'n6', 'p6', 'r6', 's6'].map((name) => deviations(size, name)[0])).toEqual(lower)
  })

  it('k begins at 4 µm up to 400 mm and at 5 µm up to 500 mm, and in coarse grades at the size: the same reprint', () => {
    expect([200, 300, 400, 500].map((size) => deviations(size, 'k6')[0])).toEqual([4, 4, 4, 5])
    expect(deviations(50, 'k8')).toEqual([0, 39])
  })
})

describe('fits by their classes, ISO 286-2', () => {
  it.each([
    [50, 'H7', 'g6', 9, 50],
    [50, 'H7', 'f7', 25, 75],
    [50, 'H7', 'k6', -18, 23],
    [50, 'H8', 'f7', 25, 89],
    [60, 'H7', 'g6', 10, 59],
    [60, 'H7', 'k6', -21, 28],
    // What these come to is remembered.
    [50, 'H6', 'g5', 9, 36],
    [50, 'H7', 'h6', 0, 41],
    [50, 'H8', 'e8', 50, 128],
    [50, 'H7', 'n6', -33, 8],
    [50, 'H7', 'p6', -42, -1],
    [50, 'H7', 's6', -59, -18],
  ])('%d mm %s/%s has %d to %d µm', (size, hole, shaft, least, most) => {
    const { least: smallest, most: largest } = valueOf(limitsOfClass(`${size} ${hole}`))
    const journal = valueOf(limitsOfClass(`${size} ${shaft}`))
    const none = exactly(millimetres(0))
    const clearance = oilClearance({ least: smallest, most: largest }, journal, none, none)
    expect([lengthIn(clearance.least, 'µm'), lengthIn(clearance.most, 'µm')]).toEqual([least, most])
  })

  // Holes for press fits, with the Δ of ISO 286-1, 4.3.2.4: limits as in ISO 286-2, remembered.
  it.each([
    [50, 'JS6', -8, 8],
    [50, 'K6', -13, 3],
    [50, 'K7', -18, 7],
    [50, 'K8', -27, 12],
    [50, 'M7', -25, 0],
    [50, 'N7', -33, -8],
    [50, 'P7', -42, -17],
    [50, 'R7', -50, -25],
    [50, 'S7', -59, -34],
    [50, 'P8', -65, -26],
    [50, 'N8', -42, -3],
    [300, 'M6', -41, -9],
    [3, 'N7', -14, -4],
    [25, 'K7', -15, 6],
    [80, 'N7', -39, -9],
    [100, 'P7', -59, -24],
  ])('%d %s lies from %d to %d µm', (size, name, lower, upper) => {
    expect(deviations(size, name)).toEqual([lower, upper])
  })
})
