import type { PhraseText } from '../../phrase.ts'

export interface OfOrderInDraft {
  readonly order: string
  readonly procedure: string
}

/** What the editor of a spec says where something cannot be done on its drawing. */
export const placingWords = {
  'draft-off-face': ({ what }: { readonly what: PhraseText }) =>
    `There ${what} would lie outside its face. Nothing was changed: choose a place on the face, or change the outline first.`,
  'draft-order-left-empty': ({ order, procedure }: OfOrderInDraft) =>
    `The order ${order} of the procedure ${procedure} would have no fastener left. Put others into it first, or take out the procedure.`,
  'draft-thing-in-step': ({ what, step }: { readonly what: PhraseText; readonly step: string }) =>
    `The step ${step} works on ${what}. Change the step first.`,
  'draft-face-without-fasteners': ({ face }: { readonly face: string }) =>
    `There is no fastener on the face ${face} yet. Place its fasteners first, then tighten them.`,
  'draft-size-unsaid': (_: Record<never, never>) =>
    'There is none on this face yet from which a size could be taken. Type the size that the manual gives first, then place it.',
}
