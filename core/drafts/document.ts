import { readDocument, type SpecDocument } from '../engine/index.ts'
import { done, refused, type Outcome } from '../problem/index.ts'
import { changesBetween } from './changes.ts'
import { checkedAfter } from './checking/check.ts'
import { notesAfter } from './notes.ts'
import { patched, type Json, type Patch } from './patch.ts'
import { asEdited } from './refusal.ts'

/** The text of a document as it is kept and given out. */
export function documentText(document: SpecDocument): string {
  return `${JSON.stringify(document, null, 2)}\n`
}

/** The document of a spec's text that `readSpec` reads. */
export function documentIn(text: string): SpecDocument {
  return JSON.parse(text.replace(/^\uFEFF/, '')) as SpecDocument
}

/**
 * The document after patches, with the checks and the accepted doubts whose values they changed taken out. Refuses
 * `draft-edit-unfit`, and as `asEdited` says it the first of what `readDocument` refuses, which is not looked at again for what `isRead` already.
 */
export function documentAfter(
  document: SpecDocument,
  patches: readonly Patch[],
  { isRead = false }: { readonly isRead?: boolean } = {},
): Outcome<SpecDocument> {
  const known = latest.get(document)
  const after = known?.patches === patches ? known.after : notedAfter(document, patches)
  if (after === null) return refused('draft-edit-unfit', {})
  latest.set(document, { patches, after })
  if (isRead) return done(after)
  const read = readDocument(after)
  const [first] = read.ok ? [] : read.problems
  return first === undefined ? done(after) : { ok: false, problem: asEdited(document, after, first) }
}

/** What was made of a document last: what follows from an edit makes the same of it as what decided on it. */
const latest = new WeakMap<
  SpecDocument,
  { readonly patches: readonly Patch[]; readonly after: SpecDocument }
>()

function notedAfter(document: SpecDocument, patches: readonly Patch[]): SpecDocument | null {
  const after = patched(document, patches)
  return after === null ? null : checkedAfter(notesAfter(after as SpecDocument, patches))
}

/** A document that may be changed in place. */
export type OpenDocument = Mutable<SpecDocument>
type Mutable<Value> = Value extends readonly (infer Entry)[]
  ? number extends Value['length']
    ? Mutable<Entry>[]
    : { -readonly [Key in keyof Value]: Mutable<Value[Key]> }
  : Value extends object
    ? { -readonly [Key in keyof Value]: Mutable<Value[Key]> }
    : Value

/** The patches of what `recipe` does to a copy of the document; none where it changes nothing. */
export function patchesBy(
  document: SpecDocument,
  recipe: (document: OpenDocument) => void,
): readonly Patch[] {
  const copy = JSON.parse(JSON.stringify(document)) as OpenDocument
  recipe(copy)
  return changesBetween(document, JSON.parse(JSON.stringify(copy)) as Json)
}
