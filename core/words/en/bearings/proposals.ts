import type { OfPair } from '../../formats/index.ts'
import { pairText } from '../halves.ts'

export interface OfMarks {
  readonly housing: string
  readonly journal: string
}

const nearestOf = (of: number) =>
  `Nearest to the target of the ${of} allowed pairs that stay inside the limits`

/** Why just this shell is proposed for a half of a bearing. */
export const proposals = {
  'by-chart': ({ housing, journal }: OfMarks) =>
    `The chart gives this for housing mark ${housing} and journal mark ${journal}.`,
  'by-bands': ({ of, housing, journal }: OfMarks & { readonly of: number }) =>
    `${nearestOf(of)} with housing mark ${housing} and journal mark ${journal}.`,
  'by-readings': ({ of }: { readonly of: number }) =>
    `${nearestOf(of)} with the smallest bore and the largest journal that were measured.`,
  'halves-differ': (pair: OfPair) => `The halves differ: ${pairText(pair)}.`,
  'allowed-beside-pinned': (_: Record<never, never>) =>
    'Allowed beside the half that was chosen by hand; the clearance is not known.',
  'nearest-beside-pinned': (_: Record<never, never>) =>
    'Nearest to the target of the allowed pairs with the half that was chosen by hand.',
  'in-tray': ({ label }: { readonly label: string }) => `In the tray: ${label}.`,
  'not-in-tray': (_: Record<never, never>) => 'Not in the tray: to be ordered.',
  'nearest-of-all': (_: Record<never, never>) =>
    'Over all bearings at once this comes nearest to the target.',
  'nearest-of-tried': (_: Record<never, never>) =>
    'Over all bearings at once this comes nearest to the target of what was tried; there are too many single shells to ' +
    'try everything.',
}
