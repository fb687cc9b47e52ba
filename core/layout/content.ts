/**
 * What a drawing is about. A step shows what it is about and nothing else; `everything` is for somebody who asks for the rest.
 */
export type DrawingSubject = 'tightening' | 'shells' | 'bead' | 'check' | 'clamp-map' | 'everything'

/** What of a face is drawn, and how. */
export interface Content {
  /** With their numbers in discs, as small rings that say where they are, or as their bare holes. */
  readonly fasteners: 'numbered' | 'rings' | 'holes'
  /** With their shells' grades, or quietly, to find one's way by. */
  readonly bearings: 'graded' | 'landmarks'
  /** Which half is which. */
  readonly halves: boolean
  readonly bearingNames: boolean
  readonly clearances: boolean
  readonly bores: boolean
  readonly dowels: boolean
  readonly oilPassages: boolean
  readonly beads: boolean
  /** The crank, where it lies open. */
  readonly crank: boolean
  /** Seals, plugs, valves and strainers. */
  readonly faceParts: boolean
  readonly gasket: boolean
  /** Signs at what is noted. */
  readonly notes: boolean
}

/** The one table of it. */
export const contents: Readonly<Record<DrawingSubject, Content>> = {
  tightening: {
    ...{ fasteners: 'numbered', bearings: 'landmarks', halves: false },
    ...{ bearingNames: true, clearances: false, bores: false },
    ...{ dowels: false, oilPassages: false, beads: false, notes: false },
    ...{ crank: false, faceParts: false, gasket: false },
  },
  shells: {
    ...{ fasteners: 'rings', bearings: 'graded', halves: true },
    ...{ bearingNames: true, clearances: true, bores: false },
    ...{ dowels: false, oilPassages: false, beads: false, notes: true },
    ...{ crank: false, faceParts: false, gasket: false },
  },
  bead: {
    ...{ fasteners: 'holes', bearings: 'landmarks', halves: false },
    ...{ bearingNames: false, clearances: false, bores: false },
    ...{ dowels: true, oilPassages: true, beads: true, notes: true },
    ...{ crank: false, faceParts: false, gasket: false },
  },
  check: {
    ...{ fasteners: 'rings', bearings: 'landmarks', halves: false },
    ...{ bearingNames: true, clearances: false, bores: false },
    ...{ dowels: false, oilPassages: false, beads: false, notes: true },
    ...{ crank: true, faceParts: true, gasket: true },
  },
  'clamp-map': {
    ...{ fasteners: 'numbered', bearings: 'landmarks', halves: false },
    ...{ bearingNames: true, clearances: false, bores: false },
    ...{ dowels: false, oilPassages: false, beads: false, notes: false },
    ...{ crank: false, faceParts: false, gasket: false },
  },
  everything: {
    ...{ fasteners: 'numbered', bearings: 'graded', halves: true },
    ...{ bearingNames: true, clearances: true, bores: true },
    ...{ dowels: true, oilPassages: true, beads: true, notes: true },
    ...{ crank: false, faceParts: true, gasket: true },
  },
}
