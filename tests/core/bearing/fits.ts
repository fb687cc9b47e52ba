import type { Fit } from '../../../core/spec/index.ts'
import { fit as fitSchema } from '../../../core/spec/fit.ts'
import { millimetres, type Length } from '../../../core/quantity/index.ts'

/** A length in millimetres, for sizes as a mechanic writes them. */
export const mm = millimetres

/** Micrometres, for clearances. */
export function um(value: number): Length {
  return millimetres(value / 1000)
}

/**
 * Main bearings of an invented irrigation pump engine: four saddles, three marks for the bore (6 µm each, from
 * 56.000 mm), three for the journal (6 µm each, from 51.982 mm), five grades (3 µm each). Clearance 20 to 44 µm.
 */
export const pumpMains: Fit = fitSchema.parse({
  id: 'mains',
  name: 'Main bearings',
  kind: 'main',
  positions: ['M1', 'M2', 'M3', 'M4'],
  housing: {
    name: 'the case',
    marks: [
      { mark: '1', band: { over: '56.000 mm', upTo: '56.006 mm' } },
      { mark: '2', band: { over: '56.006 mm', upTo: '56.012 mm' } },
      { mark: '3', band: { over: '56.012 mm', upTo: '56.018 mm' } },
    ],
  },
  journal: {
    name: 'the crank',
    marks: [
      { mark: 'A', band: { over: '51.994 mm', upTo: '52.000 mm' } },
      { mark: 'B', band: { over: '51.988 mm', upTo: '51.994 mm' } },
      { mark: 'C', band: { over: '51.982 mm', upTo: '51.988 mm' } },
    ],
  },
  grades: [
    { grade: 'P', colour: '#E69F00', pattern: 'plain', wall: { over: '1.986 mm', upTo: '1.989 mm' } },
    { grade: 'Q', colour: '#56B4E9', pattern: 'bars', wall: { over: '1.989 mm', upTo: '1.992 mm' } },
    { grade: 'R', colour: '#009E73', pattern: 'dots', wall: { over: '1.992 mm', upTo: '1.995 mm' } },
    { grade: 'S', colour: '#F0E442', pattern: 'slant', wall: { over: '1.995 mm', upTo: '1.998 mm' } },
    { grade: 'T', colour: '#0072B2', pattern: 'grid', wall: { over: '1.998 mm', upTo: '2.001 mm' } },
  ],
  mixing: { neighbours: true, thicker: 'lower' },
  clearance: { least: '20 µm', most: '44 µm' },
})

/** The same bearings with a chart: housing mark down, journal mark across. */
export const chartedMains: Fit = {
  ...pumpMains,
  chart: [
    { housing: '1', journal: 'A', upper: 'P', lower: 'P' },
    { housing: '1', journal: 'B', upper: 'Q', lower: 'Q' },
    { housing: '1', journal: 'C', upper: 'R', lower: 'R' },
    { housing: '2', journal: 'A', upper: 'Q', lower: 'Q' },
    { housing: '2', journal: 'B', upper: 'R', lower: 'R' },
    { housing: '2', journal: 'C', upper: 'S', lower: 'S' },
    { housing: '3', journal: 'A', upper: 'R', lower: 'R' },
    { housing: '3', journal: 'B', upper: 'S', lower: 'S' },
    { housing: '3', journal: 'C', upper: 'T', lower: 'T' },
  ],
}
