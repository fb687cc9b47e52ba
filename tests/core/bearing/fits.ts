import { celsius, millimetres, type Length } from '../../../core/quantity/index.ts'
import type { Band, Fit, RecordedName } from '../../../core/engine/index.ts'

/** A length in millimetres, for sizes as a mechanic writes them. */
export const mm = millimetres

/** Micrometres, for clearances. */
export function um(value: number): Length {
  return millimetres(value / 1000)
}

/** A name that is the same in every language. */
export function called(name: string): RecordedName {
  return { key: name, text: name }
}

export function band(over: number, upTo: number): Band {
  return { over: mm(over), upTo: mm(upTo) }
}

/**
 * Main bearings of an invented irrigation pump engine: four saddles, three marks for the bore (6 µm each, from
 * 56.000 mm), three for the journal (6 µm each, from 51.982 mm), five grades (3 µm each). Clearance 20 to 44 µm.
 */
export const pumpMains: Fit = {
  id: 'mains',
  name: 'Main bearings',
  kind: 'main',
  split: 'upper-lower',
  positions: ['M1', 'M2', 'M3', 'M4'],
  housing: {
    name: 'the case',
    marks: [
      { mark: '1', band: band(56, 56.006) },
      { mark: '2', band: band(56.006, 56.012) },
      { mark: '3', band: band(56.012, 56.018) },
    ],
  },
  journal: {
    name: 'the crank',
    marks: [
      { mark: 'A', band: band(51.994, 52) },
      { mark: 'B', band: band(51.988, 51.994) },
      { mark: 'C', band: band(51.982, 51.988) },
    ],
  },
  grades: [
    { grade: 'P', colour: '#E69F00', pattern: 'plain', wall: band(1.986, 1.989) },
    { grade: 'Q', colour: '#56B4E9', pattern: 'bars', wall: band(1.989, 1.992) },
    { grade: 'R', colour: '#009E73', pattern: 'dots', wall: band(1.992, 1.995) },
    { grade: 'S', colour: '#F0E442', pattern: 'slant', wall: band(1.995, 1.998) },
    { grade: 'T', colour: '#0072B2', pattern: 'grid', wall: band(1.998, 2.001) },
  ],
  mixing: { neighbours: true, thicker: 'lower' },
  clearance: { least: um(20), most: um(44) },
  undersizes: [
    { name: called('0.25 under'), undersize: mm(0.25) },
    { name: called('0.50 under'), undersize: mm(0.5) },
  ],
  measuring: { planes: 2, directions: 3, outOfRound: um(6), taper: um(6) },
  warm: {
    housingExpansion: 23.1,
    journalExpansion: 11.5,
    shellExpansion: 11.5,
    oilTemperature: celsius(100),
  },
}

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
