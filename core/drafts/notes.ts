import type { SpecDocument } from '../engine/index.ts'
import { keysOf, type Patch } from './patch.ts'

type Path = readonly string[]
interface Note {
  readonly path: string
}

/**
 * The document with its notes on values (second-person checks, accepted doubts, pages, who typed them) as they are after the patches: a note on what
 * was changed or taken out is gone, one on an entry of a list that moved goes with it. The page of a part stays where something in
 * the part is changed. What the patches say of the notes themselves stays as they say it.
 */
export function notesAfter(document: SpecDocument, patches: readonly Patch[]): SpecDocument {
  const { checks, accepted, pages, typedBy } = document
  if ([checks, accepted, pages, typedBy].every((notes) => notes === undefined)) return document
  const others = patches.filter(({ path }) => !/^\/(checks|accepted|pages|typedBy)(\/|$)/.test(path))
  if (others.length === 0) return document
  const after = <Of extends Note>(notes: readonly Of[] | undefined, isOfWhole = false) => {
    if (notes === undefined) return undefined
    const moved = notes.flatMap((note) => {
      const path = placeAfter(note.path, others, isOfWhole)
      if (path === null) return []
      return [path === note.path ? note : { ...note, path }]
    })
    return moved.length === notes.length && moved.every((note, at) => note === notes[at]) ? notes : moved
  }
  const [keptChecks, keptAccepted, keptPages] = [after(checks), after(accepted), after(pages, true)]
  const keptTypedBy = after(typedBy)
  const areSame = keptChecks === checks && keptAccepted === accepted && keptPages === pages
  if (areSame && keptTypedBy === typedBy) return document
  return {
    ...document,
    ...(keptChecks !== undefined && { checks: [...keptChecks] }),
    ...(keptAccepted !== undefined && { accepted: [...keptAccepted] }),
    ...(keptPages !== undefined && { pages: [...keptPages] }),
    ...(keptTypedBy !== undefined && { typedBy: [...keptTypedBy] }),
  }
}

/** Where each of some values is after the patches; null for one that is not what it was. */
export function placesAfter(paths: readonly string[], patches: readonly Patch[]): readonly (string | null)[] {
  return paths.map((path) => placeAfter(path, patches, false))
}

function placeAfter(path: string, patches: readonly Patch[], isOfWhole: boolean): string | null {
  const keys = patches.reduce<Path | null>(
    (now, patch) => pathAfterPatch(now, patch, isOfWhole),
    splitPath(path),
  )
  return keys === null ? null : joinPath(keys)
}

/**
 * Where a note is after a patch; null where its value is not what it was, or, of a note on a part as a whole, where the part is
 * taken out.
 */
function pathAfterPatch(path: Path | null, patch: Patch, isOfWhole: boolean): Path | null {
  if (path === null) return null
  const changed = keysOf(patch.path)
  const parent = changed.slice(0, -1)
  const key = changed.at(-1) ?? ''
  const isWithin = changed.every((each, at) => path[at] === each)
  const isOfList = /^\d+$/.test(key)
  if (isOfList && patch.op !== 'replace' && parent.every((each, at) => path[at] === each)) {
    const place = Number(path[parent.length])
    if (patch.op === 'remove' && place === Number(key)) return null
    // A note on the list as a whole is on another list now.
    if (path.length === parent.length) return isOfWhole ? path : null
    const by = patch.op === 'add' ? (place >= Number(key) ? 1 : 0) : place > Number(key) ? -1 : 0
    return by === 0 ? path : path.with(parent.length, String(place + by))
  }
  // What the note is on, or something inside of that.
  const isInside = path.every((each, at) => changed[at] === each)
  if (isOfWhole) return isWithin && patch.op === 'remove' ? null : path
  return isWithin || isInside ? null : path
}

/** `a.b[0].c`, as findings have their places, in keys. */
function splitPath(path: string): Path {
  return path.split(/[.[\]]+/).filter((key) => key !== '')
}

function joinPath(keys: Path): string {
  return keys.reduce(
    (text, key) => (/^\d+$/.test(key) ? `${text}[${key}]` : text === '' ? key : `${text}.${key}`),
    '',
  )
}
