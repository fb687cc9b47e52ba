import { describe, expect, it } from 'vitest'
import {
  lyingBy,
  pinnedByDistance,
  pinnedToPlaces,
  pixelAt,
  placeOf,
  shifted,
  turnedAbout,
  type Pins,
} from '../../../core/drafts/index.ts'

const mm = (x: number, y: number) => ({ x: x * 1e6, y: y * 1e6 })
/** In mm with three decimals: what a drawing can show. */
const inMm = ({ x, y }: { x: number; y: number }) => [x, y].map((each) => Math.round(each / 1000) / 1000 + 0)

/**
 * By hand: a picture of 0.2 mm to the pixel, turned a quarter, its corner at 10 mm along and 20 mm across, so that a pixel (x, y) lies at
 * 10 − 0.2·y and 20 + 0.2·x: (100, 50) at 0 and 40, (600, 50) at 0 and 140, (100, 300) at −50 and 40.
 */
const points = [
  { x: 100, y: 50 },
  { x: 600, y: 50 },
] as const
const third = { x: 100, y: 300 }
const quarter: Pins = [
  { px: points[0], at: mm(0, 40) },
  { px: points[1], at: mm(0, 140) },
]

describe('a picture that two of its points hold', () => {
  it('has its third point where a ruler on paper has it', () => {
    expect(inMm(placeOf(lyingBy(quarter, false), third))).toEqual([-50, 40])
  })

  it('is not seen reversed where the drawing is: the third point is on the other side of the two', () => {
    expect(inMm(placeOf(lyingBy(quarter, true), third))).toEqual([50, 40])
  })

  it.each([false, true])('gives the pixel of a place back, reversed or not (%s)', (mirrored) => {
    const lying = lyingBy(quarter, mirrored)
    const { x, y } = pixelAt(lying, placeOf(lying, { x: 371, y: 222 }))
    expect(x).toBeCloseTo(371, 6)
    expect(y).toBeCloseTo(222, 6)
  })

  it('is placed by two things of the drawing', () => {
    const pins = pinnedToPlaces(points, [mm(0, 40), mm(0, 140)])
    expect(pins).toEqual({ ok: true, value: quarter })
  })

  it('is placed by a distance: the first point stays, the line keeps its way, runs along or across', () => {
    const lying = lyingBy(quarter, false)
    // The two points lie 100 mm apart across the crank; 50 mm is the truth.
    const by = (runs: 'as-it-lies' | 'along' | 'across') => {
      const pins = pinnedByDistance(lying, points, 50e6, runs)
      return pins.ok ? pins.value.map(({ at }) => inMm(at)) : pins.problem.code
    }
    expect(by('as-it-lies')).toEqual([
      [0, 40],
      [0, 90],
    ])
    expect(by('across')).toEqual(by('as-it-lies'))
    expect(by('along')).toEqual([
      [0, 40],
      [50, 40],
    ])
  })

  it('is placed by nothing that says nothing', () => {
    const same = [points[0], { x: 104, y: 53 }] as const
    const lying = lyingBy(quarter, false)
    const codes = [
      pinnedToPlaces(same, [mm(0, 0), mm(10, 0)]),
      pinnedToPlaces(points, [mm(5, 5), mm(5, 5)]),
      pinnedByDistance(lying, points, 0, 'along'),
      pinnedByDistance(lying, same, 50e6, 'along'),
    ].map((outcome) => (outcome.ok ? null : outcome.problem.code))
    expect(codes).toEqual([
      'picture-points-near',
      'picture-places-same',
      'picture-distance-none',
      'picture-points-near',
    ])
  })

  it('moves, turns and grows about a place', () => {
    expect(shifted(quarter, mm(1, -2)).map(({ at }) => inMm(at))).toEqual([
      [1, 38],
      [1, 138],
    ])
    // A quarter about (0, 40), twice as large: the second point, 100 mm across, comes to lie 200 mm back along.
    expect(turnedAbout(quarter, mm(0, 40), 90, 2).map(({ at }) => inMm(at))).toEqual([
      [0, 40],
      [-200, 40],
    ])
  })
})
