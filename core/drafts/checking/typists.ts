import type { SpecDocument } from '../../engine/index.ts'
import { nameKey } from '../../person/index.ts'
import { changesBetween } from '../changes.ts'
import { placesAfter } from '../notes.ts'
import { valuesToCheck } from './values.ts'

/** The document after an edit, and whose it was. */
interface EditOf {
  readonly person: string
  readonly document: SpecDocument
}

/**
 * Who typed each value last, by its path: of those that an edit changed, and of those of which the document that the draft was begun with
 * says it. The others are typed by who entered the spec. What a person edited in one go is compared as a whole. A value that nobody
 * changed goes with its entry where that moves in a list.
 */
export function typistsOf(base: SpecDocument, edits: readonly EditOf[]): ReadonlyMap<string, string> {
  let typists: ReadonlyMap<string, string> = new Map((base.typedBy ?? []).map(({ path, by }) => [path, by]))
  let before = base
  edits.forEach((edit, at) => {
    const { person, document } = edit
    if (edits[at + 1]?.person === person) return
    const known = afterEdits.get(edit)
    if (known !== undefined) {
      typists = known
      before = document
      return
    }
    const was = shownIn(before)
    const origins = originsOf(before, document, [...was.keys()])
    const now = new Map<string, string>()
    for (const [path, shown] of shownIn(document)) {
      const origin = origins.get(path) ?? (was.get(path) === shown ? path : null)
      const by = origin === null ? person : typists.get(origin)
      if (by !== undefined) now.set(path, by)
    }
    afterEdits.set(edit, now)
    typists = now
    before = document
  })
  return typists
}

/** By the last edit that somebody made in one go: those before it in its draft stay what they are. */
const afterEdits = new WeakMap<EditOf, ReadonlyMap<string, string>>()

/** Where each value that stayed what it was stood before, by where it stands now. */
function originsOf(
  before: SpecDocument,
  after: SpecDocument,
  paths: readonly string[],
): ReadonlyMap<string, string> {
  const places = placesAfter(paths, changesBetween(before, after))
  return new Map(
    paths.flatMap((path, at) => {
      const place = places[at] ?? null
      return place === null ? [] : [[place, path]]
    }),
  )
}

/** The document with who typed each value, where that is somebody else than who entered the spec: what a later revision goes by. */
export function withTypists(document: SpecDocument, typists: ReadonlyMap<string, string>): SpecDocument {
  const { typedBy: _, ...rest } = document
  const { source } = document
  const enteredBy = source.kind === 'entered' ? nameKey(source.enteredBy) : null
  const typedBy = valuesToCheck(document).flatMap(({ path }) => {
    const by = typists.get(path)
    return by === undefined || nameKey(by) === enteredBy ? [] : [{ path, by }]
  })
  return typedBy.length === 0 ? rest : { ...rest, typedBy }
}

function shownIn(document: SpecDocument): ReadonlyMap<string, string> {
  return new Map(valuesToCheck(document).map(({ path, shown }) => [path, shown]))
}
