import { difference, half, nanometres, sum, type Length } from '../quantity/index.ts'
import type { FastenerGroup } from './fastening.ts'

const oneMillimetre = nanometres(1_000_000)
const widestWithMore = nanometres(10_000_000)

/** 1/4 in: unified threads below it go by number, and the heads of their socket screws are wider for their size. */
const quarterInch = nanometres(6_350_000)
const fourThousandths = nanometres(101_600)

/**
 * How wide a head is: across the flats of a hexagon; of a socket head, whose flats are its key's, 1.5·d, and 1 mm more up to
 * M10 (ISO 4762, table 1: 10 mm for M6, 16 for M10, 18 for M12); of an inch one 1.5·d, below 1/4 in 5/3·d less 0.004 in, which is
 * within 0.001 in of what is printed (ASME B18.3: 0.375 in for 1/4, 0.562 for 3/8, 0.312 for #10, 0.226 for #6).
 */
export function headWidth({
  head,
  acrossFlats,
  thread: { diameter, system },
}: Pick<FastenerGroup, 'head' | 'acrossFlats' | 'thread'>): Length {
  if (head === 'hexagon') return acrossFlats
  if (system === 'unified' && diameter < quarterInch)
    return difference(nanometres(Math.round((diameter * 5) / 3)), fourThousandths)
  if (system === 'unified') return sum(diameter, half(diameter))
  return sum(diameter, half(diameter), ...(diameter <= widestWithMore ? [oneMillimetre] : []))
}
