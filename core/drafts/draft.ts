import type { SpecDocument } from '../engine/index.ts'
import { done, refused, type Outcome } from '../problem/index.ts'
import { hasOwnCheck, typistsOf } from './checking/index.ts'
import { documentAfter } from './document.ts'
import type { DraftAct, DraftEntry, DraftEvent, EditMessage } from './entry.ts'

interface EditedDraft {
  readonly what: EditMessage
  readonly person: string
  /** The document after it. Documents share what an edit left alone. */
  readonly document: SpecDocument
}

/** A spec while it is written: the document it was begun with, and the edits since. */
export interface Draft {
  readonly base: SpecDocument
  /** All edits that are done or can be done again, in order. */
  readonly edits: readonly EditedDraft[]
  /** How many of the edits are done; those past it were undone. */
  readonly position: number
  readonly state: 'open' | 'published' | 'discarded'
  /** How many entries there are. */
  readonly seq: number
}

export function beginDraft(base: SpecDocument): Draft {
  return { base, edits: [], position: 0, state: 'open', seq: 0 }
}

/** The document as it is now. */
export function documentOf({ base, edits, position }: Draft): SpecDocument {
  return edits[position - 1]?.document ?? base
}

/** Who typed each value last, as in `typistsOf`. */
export function typistsIn({ base, edits, position }: Draft): ReadonlyMap<string, string> {
  return typistsOf(base, edits.slice(0, position))
}

/** The edit that would be undone next; null for none. */
export function undoable({ edits, position, state }: Draft): EditMessage | null {
  return state === 'open' ? (edits[position - 1]?.what ?? null) : null
}

export function redoable({ edits, position, state }: Draft): EditMessage | null {
  return state === 'open' ? (edits[position]?.what ?? null) : null
}

/**
 * What follows from an act of a person. Refuses `draft-closed` for one that is published or discarded, `draft-nothing-to-undo`,
 * `draft-nothing-to-redo`, `draft-edit-unfit` for patches that do not fit the document, `check-by-who-entered` for the check of a
 * value that this person typed, and as `asEdited` says it what `readSpec` refuses: a draft can be drawn and audited at any time.
 */
export function decideDraft(draft: Draft, act: DraftAct, person: string): Outcome<DraftEvent> {
  if (act.type === 'bring-back')
    return draft.state === 'discarded' ? done({ type: 'brought-back' }) : refused('draft-not-discarded', {})
  if (draft.state !== 'open') return refused('draft-closed', { state: draft.state })
  switch (act.type) {
    case 'edit': {
      const before = documentOf(draft)
      const after = documentAfter(before, act.edit.patches)
      if (!after.ok) return after
      // Checks also move with their entries: those are nobody's.
      const checks = act.edit.patches.some(({ path }) => /^\/checks(\/|$)/.test(path))
      if (checks && hasOwnCheck(before, after.value, person, typistsIn(draft)))
        return refused('check-by-who-entered', { person })
      return done({ type: 'edited', edit: act.edit })
    }
    case 'undo':
      return undoable(draft) === null ? refused('draft-nothing-to-undo', {}) : done({ type: 'undone' })
    case 'redo':
      return redoable(draft) === null ? refused('draft-nothing-to-redo', {}) : done({ type: 'redone' })
    case 'discard':
      return done({ type: 'discarded' })
    default:
      return act satisfies never
  }
}

/** An event with whose it is. */
type EventOf = Pick<DraftEntry, 'event' | 'person'>

/** The draft after an event that `decideDraft` gave. An edit after an undo drops the edits past it. */
export function evolveDraft(draft: Draft, { event, person }: EventOf): Draft {
  const { edits, position } = draft
  const seq = draft.seq + 1
  switch (event.type) {
    case 'edited': {
      const after = documentAfter(documentOf(draft), event.edit.patches, { isRead: true })
      if (!after.ok) throw new Error('an edit that was kept does not fit its draft')
      const edit = { what: event.edit.what, person, document: after.value }
      return { ...draft, edits: [...edits.slice(0, position), edit], position: position + 1, seq }
    }
    case 'undone':
      return { ...draft, position: position - 1, seq }
    case 'redone':
      return { ...draft, position: position + 1, seq }
    case 'discarded':
      return { ...draft, state: 'discarded', seq }
    case 'brought-back':
      return { ...draft, state: 'open', seq }
    case 'published':
      return { ...draft, state: 'published', seq }
    default:
      return event satisfies never
  }
}

/** Whether an entry can follow: what a newer version of the program wrote may not, nor what was altered. */
export function mayFollow({ edits, position, base }: Draft, { event }: Pick<DraftEntry, 'event'>): boolean {
  if (event.type === 'undone') return position > 0
  if (event.type === 'redone') return position < edits.length
  const document = edits[position - 1]?.document ?? base
  return event.type !== 'edited' || documentAfter(document, event.edit.patches, { isRead: true }).ok
}

export function replayDraft(base: SpecDocument, entries: readonly EventOf[]): Draft {
  return entries.reduce(evolveDraft, beginDraft(base))
}
