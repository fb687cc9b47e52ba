import type { PhraseText } from '../../phrase.ts'
import type { ReasonText } from '../../reason.ts'
import { capital } from '../../formats/index.ts'
import { counted } from '../formats.ts'
import { namedParts } from './spec.ts'

export interface OfOrderInDraft {
  readonly order: PhraseText
  readonly procedure: PhraseText
}

export interface FaceInUse {
  readonly face: PhraseText
  readonly what: 'fasteners' | 'procedures' | 'beads' | 'steps'
  readonly count: number
}

const faceUses = {
  fasteners: (count: number) => counted(count, 'fastener', 'fasteners'),
  procedures: (count: number) => counted(count, 'procedure', 'procedures'),
  beads: (count: number) => counted(count, 'bead', 'beads'),
  steps: (count: number) => counted(count, 'step', 'steps'),
}

const stop = (text: string): string => (text.endsWith('.') ? '' : '.')

/** What the editor of a spec says where something cannot be done on its drawing or in its forms. */
export const placingWords = {
  'draft-value-unfit': (facts: { readonly place: PhraseText; readonly should: PhraseText | ReasonText }) =>
    `${capital(facts.place)}: ${facts.should}${stop(facts.should)}`,
  'draft-too-large': ({ mostCharacters }: { readonly mostCharacters: number }) =>
    `With that the spec would have more than ${mostCharacters / 1_000_000} million characters. Nothing was changed: type less.`,
  'draft-part-needed': (facts: {
    readonly what: keyof typeof namedParts
    readonly name: PhraseText
    readonly place: PhraseText
  }) =>
    `${capital(namedParts[facts.what])} “${facts.name}” is still needed: ${facts.place}. Change that first, then take it out.`,
  'draft-off-face': ({ what }: { readonly what: PhraseText }) =>
    `There ${what} would lie outside its face. Nothing was changed: choose a place on the face, or change the outline first.`,
  'draft-order-left-empty': ({ order, procedure }: OfOrderInDraft) =>
    `The order “${order}” of the procedure “${procedure}” would have no fastener left. Put others into it first, or take out the procedure.`,
  'draft-thing-in-step': ({ what, step }: { readonly what: PhraseText; readonly step: PhraseText }) =>
    `The step “${step}” works on ${what}. Change the step first.`,
  'draft-face-without-fasteners': ({ face }: { readonly face: PhraseText }) =>
    `There is no fastener on the face “${face}” yet. Place its fasteners first, then tighten them.`,
  'draft-step-uses-part': ({ step, part }: { readonly step: PhraseText; readonly part: PhraseText }) =>
    `At the step “${step}” “${part}” goes in. Say first, under Parts, at which step it goes in instead, or take the part out of the list.`,
  'draft-step-has-caution': ({ step }: { readonly step: PhraseText }) =>
    `A caution stands beside the step “${step}” alone. Put it beside another step first, or take the caution out.`,
  'draft-size-unsaid': (_: Record<never, never>) =>
    'There is none on this face yet from which a size could be taken. Type the size that the manual gives first, then place it.',
  'draft-way-unsaid': (_: Record<never, never>) =>
    'Say which way the lip points, or the oil flows, as the manual has it. Then place it.',
  'draft-no-outline': (_: Record<never, never>) =>
    'The edge of this face is still grown round what lies on it. Choose “Draw the outline again” and tap its corners.',
  'draft-face-in-use': ({ face, what, count }: FaceInUse) =>
    `On the face “${face}” there ${count === 1 ? 'is' : 'are'} still ${faceUses[what](count)}. Take ${count === 1 ? 'it' : 'them'} out first.`,
}
