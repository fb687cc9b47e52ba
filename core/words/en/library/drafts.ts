import { editorEdits } from '../editor/editor-edits.ts'
import type { PhraseText } from '../../phrase.ts'
import { counted } from '../formats.ts'

type Family = 'split-horizontal' | 'split-vertical' | 'caps' | 'bedplate' | 'tunnel'

const families: Readonly<Record<Family, string>> = {
  'split-horizontal': 'case split level',
  'split-vertical': 'case split upright',
  caps: 'bearing caps',
  bedplate: 'bedplate',
  tunnel: 'tunnel case',
}

/** Specs while they are written. */
export const drafts = {
  families,
  /** What an edit did, for `undo` and `redo`. */
  edits: {
    ...editorEdits,
    valueChanged: ({ place }: { readonly place: PhraseText }) => place,
    added: ({ what }: { readonly what: PhraseText }) => `adding of ${what}`,
    removed: ({ what }: { readonly what: PhraseText }) => `removal of ${what}`,
  },
  undo: ({ edit }: { readonly edit: string }) => `Undo: ${edit}`,
  redo: ({ edit }: { readonly edit: string }) => `Do again: ${edit}`,
  /** An edit that a newer program made. */
  otherEdit: 'an edit of a newer version',
  /** What stands in a spec that was grown from a few parameters, until a person writes it. */
  grown: {
    summary: ({ family, cylinders }: { readonly family: Family; readonly cylinders: number }) =>
      `${counted(cylinders, 'cylinder', 'cylinders')}, ${families[family]}.`,
    sides: { plus: 'side A', minus: 'side B' },
    joints: {
      'split-horizontal': 'Case joint',
      'split-vertical': 'Case joint',
      caps: 'Main caps',
      bedplate: 'Bedplate joint',
      tunnel: 'Main bearing carriers',
    },
    rodFace: 'Rods',
    firstStep: {
      name: 'Look it over',
      instruction: 'Look the case over: clean, dry, no damage, oil ways open.',
    },
    standingCaution:
      'The maker’s current manual and a qualified person overrule this program. Where they differ, follow the manual.',
  },
}
