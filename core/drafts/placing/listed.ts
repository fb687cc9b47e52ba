import type { SpecDocument } from '../../engine/index.ts'
import type { ListedKind } from './thing.ts'

export interface ListedThing {
  readonly id: string
  readonly face: string
  readonly at: readonly [string, string]
}

export function listOf(document: SpecDocument, kind: ListedKind): readonly ListedThing[] {
  switch (kind) {
    case 'fastener':
      return document.fasteners
    case 'dowel':
      return document.case.dowels ?? []
    case 'oil-passage':
      return document.case.oilPassages ?? []
    case 'face-part':
      return document.case.faceParts ?? []
    default:
      return kind satisfies never
  }
}

/** A document with another list of things of a kind. The entries must be of that kind. */
export function withList(
  document: SpecDocument,
  kind: ListedKind,
  list: readonly ListedThing[],
): SpecDocument {
  const engine = document.case
  switch (kind) {
    case 'fastener':
      return { ...document, fasteners: list as SpecDocument['fasteners'] }
    case 'dowel':
      return { ...document, case: { ...engine, dowels: list as NonNullable<typeof engine.dowels> } }
    case 'oil-passage':
      return { ...document, case: { ...engine, oilPassages: list as NonNullable<typeof engine.oilPassages> } }
    case 'face-part':
      return { ...document, case: { ...engine, faceParts: list as NonNullable<typeof engine.faceParts> } }
    default:
      return kind satisfies never
  }
}
