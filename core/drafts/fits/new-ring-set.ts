import type { SpecDocument } from '../../engine/index.ts'
import { freeId } from '../placing/index.ts'

type RingSet = NonNullable<SpecDocument['ringSets']>[number]

/** Rings as they are typed from the manual, the first one of them. */
export interface TypedRingSet {
  readonly name: string
  /** How the gap is measured, in words. */
  readonly where: string
  /** The least between the gaps of neighbouring rings. */
  readonly apart: string
  readonly ring: Omit<RingSet['rings'][number], 'id'>
}

/** The rings of all pistons, one for each cylinder, with the first ring; the others are added to it. */
export function withRingSet(
  document: SpecDocument,
  { name, where, apart, ring }: TypedRingSet,
  named: { piston(cylinder: number): string; bore(cylinder: number): string },
): SpecDocument {
  const { ringSets = [] } = document
  const set: RingSet = {
    id: freeId(
      'rings',
      ringSets.map(({ id }) => id),
    ),
    name,
    pistons: Array.from({ length: document.case.cylinders }, (_, index) => ({
      cylinder: index + 1,
      name: named.piston(index + 1),
      bore: named.bore(index + 1),
    })),
    rings: [{ id: 'ring-1', ...ring }],
    where: { gap: where },
    clock: { apart },
  }
  return { ...document, ringSets: [...ringSets, set] }
}
