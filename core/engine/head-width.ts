import { half, nanometres, sum, type Length } from '../quantity/index.ts'
import type { FastenerGroup } from './fastening.ts'

const oneMillimetre = nanometres(1_000_000)

/** How wide a head is: across the flats of a hexagon; of a socket head about 1.5·d and 1 mm (ISO 4762), whose flats are its key's. */
export function headWidth({ head, acrossFlats, thread }: FastenerGroup): Length {
  return head === 'socket' ? sum(thread.diameter, half(thread.diameter), oneMillimetre) : acrossFlats
}
