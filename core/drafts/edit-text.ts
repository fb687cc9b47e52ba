import { placeInSpec, type SpecDocument } from '../engine/index.ts'
import { textIn } from '../problem/index.ts'
import type { Words } from '../words/index.ts'
import type { EditMessage } from './entry.ts'
import { keysOf, type Patch } from './patch.ts'

/** What an edit did, said by its first patch: for one that needs no words of its own. */
export function messageOfPatches(
  before: SpecDocument,
  after: SpecDocument,
  [first]: readonly Patch[],
): EditMessage {
  const keys = keysOf(first?.path ?? '').map((key) => (/^\d+$/.test(key) ? Number(key) : key))
  if (first?.op === 'add') return { code: 'added', facts: { what: placeInSpec(after, keys) } }
  if (first?.op === 'remove') return { code: 'removed', facts: { what: placeInSpec(before, keys) } }
  return { code: 'valueChanged', facts: { place: placeInSpec(after, keys) } }
}

/** What an edit did, in words; of one that only a newer program knows, that it is one. */
function editText(words: Words, what: EditMessage): string {
  const { edits, otherEdit } = words.drafts
  return Object.hasOwn(edits, what.code) ? textIn(words, words.drafts.edits, what) : otherEdit
}

/** What a button says that takes an edit back, or makes it again. */
export function undoText(words: Words, what: EditMessage): string {
  return words.drafts.undo({ edit: editText(words, what) })
}

export function redoText(words: Words, what: EditMessage): string {
  return words.drafts.redo({ edit: editText(words, what) })
}
