import { half, nanometres, sum, type Length } from '../quantity/index.ts'
import type { FastenerGroup } from './fastening.ts'

const oneMillimetre = nanometres(1_000_000)
const widestWithMore = nanometres(10_000_000)

/**
 * How wide a head is: across the flats of a hexagon; of a socket head, whose flats are its key's, 1.5·d, and 1 mm more up to
 * M10 (ISO 4762, table 1: 10 mm for M6, 16 for M10, 18 for M12).
 */
export function headWidth({
  head,
  acrossFlats,
  thread: { diameter },
}: Pick<FastenerGroup, 'head' | 'acrossFlats' | 'thread'>): Length {
  if (head === 'hexagon') return acrossFlats
  return sum(diameter, half(diameter), ...(diameter <= widestWithMore ? [oneMillimetre] : []))
}
