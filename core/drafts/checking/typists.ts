import type { SpecDocument } from '../../engine/index.ts'
import { valuesToCheck } from './values.ts'

/** The document after an edit, and whose it was. */
interface EditOf {
  readonly person: string
  readonly document: SpecDocument
}

/**
 * Who typed each value last, by its path, of those that an edit changed; the others were there when the draft was begun. What a person
 * edited in one go is compared as a whole. A value whose place in a list moved counts as typed by who moved it.
 */
export function typistsOf(base: SpecDocument, edits: readonly EditOf[]): ReadonlyMap<string, string> {
  const typists = new Map<string, string>()
  let before = shownIn(base)
  edits.forEach(({ person, document }, at) => {
    if (edits[at + 1]?.person === person) return
    const after = shownIn(document)
    for (const [path, shown] of after) if (before.get(path) !== shown) typists.set(path, person)
    before = after
  })
  return typists
}

function shownIn(document: SpecDocument): ReadonlyMap<string, string> {
  return new Map(valuesToCheck(document).map(({ path, shown }) => [path, shown]))
}
