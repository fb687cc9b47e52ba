import type { Point } from '../../plane/index.ts'

/** What can be placed on a joint face, by what of it a person works on. */
export const subjects = {
  parts: ['fastener', 'dowel', 'oil-passage', 'face-part'],
  bearings: ['saddle', 'rod', 'balance'],
  outline: ['corner'],
  beads: ['bead-point', 'keep-out'],
} as const
export type Subject = keyof typeof subjects

/** Those that stand in a list of the document with a face and a place of their own. */
export type ListedKind = (typeof subjects.parts)[number]
/** Those that stand along the crank, on every face that shows them. */
export type BearingKind = (typeof subjects.bearings)[number]
/** The points of an outline and of a bead, and the zones that a bead keeps out of: told apart by their number. */
export type PathKind = 'corner' | 'bead-point' | 'keep-out'
export type ThingKind = ListedKind | BearingKind | PathKind

export const thingKinds: readonly ThingKind[] = Object.values(subjects).flat()

/** One of them, as a drawing names it: `fastener/C4`, `corner/joint~3`. */
export interface Thing {
  readonly kind: ThingKind
  readonly id: string
}

/** With its place in the engine's own frame, in whole nanometres: x from the nose, y across. */
export interface PlacedThing extends Thing {
  readonly face: string
  readonly at: Point
}

export function aboutOf({ kind, id }: Thing): string {
  return `${kind}/${id}`
}

/** The thing that a drawing names; null for what cannot be placed. */
export function thingNamed(about: string): Thing | null {
  const [kind, id, ...more] = about.split('/')
  const known = thingKinds.find((each) => each === kind)
  return known === undefined || id === undefined || more.length > 0 ? null : { kind: known, id }
}

export function subjectOf(kind: ThingKind): Subject {
  if (isListed(kind)) return 'parts'
  if (isBearing(kind)) return 'bearings'
  return kind === 'corner' ? 'outline' : 'beads'
}

export function isListed(kind: ThingKind): kind is ListedKind {
  return (subjects.parts as readonly ThingKind[]).includes(kind)
}

export function isBearing(kind: ThingKind): kind is BearingKind {
  return (subjects.bearings as readonly ThingKind[]).includes(kind)
}
