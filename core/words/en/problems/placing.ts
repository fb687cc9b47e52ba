import type { PhraseText } from '../../phrase.ts'
import { counted } from '../formats.ts'

export interface OfOrderInDraft {
  readonly order: string
  readonly procedure: string
}

export interface FaceInUse {
  readonly face: string
  readonly what: 'fasteners' | 'procedures' | 'beads' | 'steps'
  readonly count: number
}

const faceUses = {
  fasteners: (count: number) => counted(count, 'fastener', 'fasteners'),
  procedures: (count: number) => counted(count, 'procedure', 'procedures'),
  beads: (count: number) => counted(count, 'bead', 'beads'),
  steps: (count: number) => counted(count, 'step', 'steps'),
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
  'draft-step-uses-part': ({ step, part }: { readonly step: string; readonly part: string }) =>
    `At the step “${step}” ${part} goes in. Say first, under Parts, at which step it goes in instead, or take the part out of the list.`,
  'draft-step-has-caution': ({ step }: { readonly step: string }) =>
    `A caution stands beside the step “${step}” alone. Put it beside another step first, or take the caution out.`,
  'draft-size-unsaid': (_: Record<never, never>) =>
    'There is none on this face yet from which a size could be taken. Type the size that the manual gives first, then place it.',
  'draft-way-unsaid': (_: Record<never, never>) =>
    'Say which way the lip points, or the oil flows, as the manual has it. Then place it.',
  'draft-no-outline': (_: Record<never, never>) =>
    'The edge of this face is still grown round what lies on it. Choose “Draw the outline again” and tap its corners.',
  'draft-face-in-use': ({ face, what, count }: FaceInUse) =>
    `On the face ${face} there ${count === 1 ? 'is' : 'are'} still ${faceUses[what](count)}. Take ${count === 1 ? 'it' : 'them'} out first.`,
}
