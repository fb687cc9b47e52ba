import { done, refused, type Outcome } from '../../problem/index.ts'
import { nameInSpec, type SpecDocument } from '../../engine/index.ts'
import { idFrom } from '../id-from.ts'

type Face = SpecDocument['case']['faces'][number]

/** A face as it is said from the manual, before anything is on it. */
export type TypedFace = Pick<Face, 'name' | 'shows' | 'plane' | 'workedFrom'>

/** A face more, its id made of its name. */
export function withFace(
  document: SpecDocument,
  face: TypedFace,
): { readonly document: SpecDocument; readonly face: string } {
  const { faces } = document.case
  const name = typeof face.name === 'string' ? face.name : (Object.values(face.name)[0] ?? '')
  const id = idFrom(name, new Set(faces.map((each) => each.id)))
  return {
    face: id,
    document: { ...document, case: { ...document.case, faces: [...faces, { id, ...face }] } },
  }
}

/**
 * Without a face and the dowels, oil ways and parts in it. Refuses `draft-face-in-use` while fasteners, procedures, beads or steps
 * are of it: what they say has to be taken out by who knows it.
 */
export function withoutFace(document: SpecDocument, id: string): Outcome<SpecDocument> {
  const { fasteners, procedures, beads = [], steps } = document
  const isHere = (each: object) => 'face' in each && each.face === id
  const uses = { fasteners, procedures, beads, steps }
  const counts = Object.entries(uses).map(([what, list]) => ({ what, count: list.filter(isHere).length }))
  const found = counts.find(({ count }) => count > 0)
  const { dowels, oilPassages, faceParts, faces, ...engine } = document.case
  if (found !== undefined)
    return refused('draft-face-in-use', {
      face: nameInSpec(faces.find((face) => face.id === id)?.name),
      what: found.what as keyof typeof uses,
      count: found.count,
    })
  const elsewhere = <Of extends object>(list: readonly Of[]) => list.filter((each) => !isHere(each))
  return done({
    ...document,
    case: {
      ...engine,
      faces: faces.filter((face) => face.id !== id),
      ...(dowels && { dowels: elsewhere(dowels) }),
      ...(oilPassages && { oilPassages: elsewhere(oilPassages) }),
      ...(faceParts && { faceParts: elsewhere(faceParts) }),
    },
  })
}
