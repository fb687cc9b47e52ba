import type { Point } from '../../plane/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import type { SpecDocument } from '../../engine/index.ts'
import { liesOn, offFace } from './face.ts'
import { lengthTextOf, unitOf } from './position.ts'

type Bead = NonNullable<SpecDocument['beads']>[number]

/** So many points make an outline, or a bead; fewer are not in the document yet. */
export const leastPoints = { outline: 3, bead: 2 } as const

/** A face with these corners, in the manual's unit. */
export function withOutline(document: SpecDocument, face: string, corners: readonly Point[]): SpecDocument {
  const faces = document.case.faces.map((each) =>
    each.id === face ? { ...each, outline: textsOf(document, corners) } : each,
  )
  return { ...document, case: { ...document.case, faces } }
}

/** A bead as it is typed from the manual, before its path is drawn. */
export type TypedBead = Pick<Bead, 'name' | 'width' | 'sealant' | 'openTimeMinutes' | 'closed'>

export interface NewBead {
  readonly document: SpecDocument
  readonly bead: string
}

/** A bead along a path, and the step at the end of the list that lays it. Refuses `draft-off-face`. */
export function withBead(
  document: SpecDocument,
  face: string,
  typed: TypedBead,
  path: readonly Point[],
): Outcome<NewBead> {
  const { beads = [] } = document
  const id = freeId(
    face,
    beads.map((bead) => bead.id),
  )
  const refusedThere = offPath(document, face, id, path)
  if (refusedThere !== null) return refusedThere
  const step = freeId(
    `bead-${id}`,
    document.steps.map((each) => each.id),
  )
  const bead: Bead = { ...typed, id, face, path: textsOf(document, path), keepOut: [] }
  return done({
    bead: id,
    document: {
      ...document,
      beads: [...beads, bead],
      steps: [...document.steps, { id: step, kind: 'lay-bead', name: typed.name, bead: id }],
    },
  })
}

/** A bead along another path. Refuses `draft-off-face`. */
export function withBeadPath(
  document: SpecDocument,
  id: string,
  path: readonly Point[],
): Outcome<SpecDocument> {
  const bead = document.beads?.find((each) => each.id === id)
  if (bead === undefined) return refused('draft-edit-unfit', {})
  const refusedThere = offPath(document, bead.face, id, path)
  if (refusedThere !== null) return refusedThere
  const beads = document.beads?.map((each) =>
    each === bead ? { ...each, path: textsOf(document, path) } : each,
  )
  return done({ ...document, ...(beads && { beads }) })
}

function offPath(document: SpecDocument, face: string, bead: string, path: readonly Point[]) {
  return path.every((at) => liesOn(document, face, at))
    ? null
    : offFace(document, { kind: 'bead-point', id: `${bead}~1` })
}

function textsOf({ case: engine }: SpecDocument, points: readonly Point[]): [string, string][] {
  const unit = unitOf(engine.bore)
  return points.map(({ x, y }) => [lengthTextOf(x, unit), lengthTextOf(y, unit)])
}

/** The id itself, or with a number behind it where it is taken. */
export function freeId(like: string, taken: readonly string[]): string {
  const short = like.slice(0, 36)
  let id = short
  for (let more = 2; taken.includes(id); more += 1) id = `${short}-${more}`
  return id
}
