import { z } from 'zod'
import type { Message } from '../problem/index.ts'
import type { Words } from '../words/index.ts'
import { patch } from './patch.ts'

/** What an edit did, as a code with its facts: the words for it are in `words.drafts.edits`. */
export type EditMessage = Message<Words['drafts']['edits']>

const messageForm = z.strictObject({
  code: z.string().min(1).max(60),
  facts: z.record(z.string().max(60), z.unknown()),
})
const editMessage = z.custom<EditMessage>((value) => messageForm.safeParse(value).success)

/** One edit: what it did, and the change of the document. How it is taken back follows from the document before it. */
const draftEdit = z.strictObject({
  what: editMessage,
  patches: z.array(patch).min(1).max(20_000),
})
export type DraftEdit = z.output<typeof draftEdit>

/** What a person does with a draft. */
export const draftAct = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('edit'), edit: draftEdit }),
  z.strictObject({ type: z.literal('undo') }),
  z.strictObject({ type: z.literal('redo') }),
  z.strictObject({ type: z.literal('discard') }),
  /** A draft that was discarded is open again. */
  z.strictObject({ type: z.literal('bring-back') }),
])
export type DraftAct = z.output<typeof draftAct>

/** What happened to a draft. Entries are only ever added: what was undone is still there, and can be done again. */
export const draftEvent = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('edited'), edit: draftEdit }),
  z.strictObject({ type: z.literal('undone') }),
  z.strictObject({ type: z.literal('redone') }),
  z.strictObject({ type: z.literal('discarded') }),
  z.strictObject({ type: z.literal('brought-back') }),
  /** It is a revision of the library now, and is not edited any more. */
  z.strictObject({ type: z.literal('published'), engine: z.string(), revision: z.int().min(1) }),
])
export type DraftEvent = z.output<typeof draftEvent>

/** An event with its place in the draft, who it is of, and when. */
export const draftEntry = z.strictObject({
  seq: z.int().min(1),
  at: z.iso.datetime(),
  person: z.string(),
  event: draftEvent,
})
export type DraftEntry = z.output<typeof draftEntry>
