import type { ReasonText } from '../../reason.ts'
import { counted } from '../formats.ts'

type None = Record<never, never>

/** Sentences about specs that people write: drafts, the library, files of specs. */
export const libraryWords = {
  'draft-unknown': (_: None) =>
    'This draft is not in the record. Go back to the library and choose one that is.',
  'draft-of-another-version': (_: None) =>
    'Another version of Bedplate wrote this draft, with edits that this one does not understand. All of them are kept: open it with that version.',
  'draft-moved-on': ({ last }: { readonly last: number }) =>
    `Another window has edited this draft meanwhile; it is at entry ${last} now. What is there is shown: look at it, then make the edit again.`,
  'draft-closed': ({ state }: { readonly state: 'published' | 'discarded' }) =>
    state === 'published'
      ? 'This draft was published, and a published revision is never changed. Begin a new revision in the library.'
      : 'This draft was discarded. Bring it back in the library to go on with it.',
  'draft-not-discarded': (_: None) => 'This draft was not discarded. Open it from the library.',
  'draft-nothing-to-undo': (_: None) => 'There is no edit to undo. This is the draft as it was begun.',
  'draft-nothing-to-redo': (_: None) =>
    'There is no edit to do again. This is the draft after its last edit.',
  'draft-edit-unfit': (_: None) =>
    'This edit does not fit the draft as it is, and nothing was changed. Open the draft again and make the edit once more.',
  'check-of-a-demo': (_: None) =>
    'The numbers of a demo are invented: there is no manual to compare them with. Begin an engine of your own in the library.',
  'check-by-who-entered': ({ person }: { readonly person: string }) =>
    `${person} entered these numbers, and people overlook their own slips. Let another person compare them: choose that name at the bench.`,
  'draft-faulty': ({ faults }: { readonly faults: number }) =>
    `The audit finds ${counted(faults, 'fault', 'faults')}, and an engine built by this would come out wrong. Mend what it says, then publish.`,
  'draft-overtaken': ({ revision }: { readonly revision: number }) =>
    `Revision ${revision} was published meanwhile by another draft. Compare the two in the library, and begin a new revision from the latest one.`,
  'draft-id-taken': ({ engine }: { readonly engine: string }) =>
    `Another engine has the id “${engine}” already. Give this one another id.`,
  'engine-name-missing': (_: None) =>
    'The engine has no name yet. Type one by which people here will know it.',
  'engine-manual-missing': (_: None) =>
    'It is not said which manual the numbers come from. Type its title and edition, so that somebody else can check them.',
  'bare-size-not-above-zero': (_: None) =>
    'A measure of zero or below is no measure. Type it again with its unit.',
  'bare-thrust-main': ({ main, mains }: { readonly main: number; readonly mains: number }) =>
    `Main ${main} is to have the thrust washers, and there are ${mains}. Choose one that is there.`,
  'library-engine-unknown': ({ engine }: { readonly engine: string }) =>
    `The engine “${engine}” is not in the library in this revision. Open the library again and choose one that is.`,
  'spec-file-foreign': (_: None) =>
    'This is no file of an engine spec. Choose one that was saved from a library and ends with .bedplate-spec.',
  'spec-file-newer': ({ version, known }: { readonly version: number; readonly known: number }) =>
    `This file was made by a newer Bedplate (version ${version} of specs; this one knows ${known}). Nothing was taken in. Open it with the newer program.`,
  'spec-file-older': ({ version, known }: { readonly version: number; readonly known: number }) =>
    `This file has version ${version} of specs, and this program knows ${known} alone. Nothing was taken in. Save the spec again with a newer program.`,
  'spec-file-altered': (_: None) =>
    'The spec in this file is not as it was saved: its hash differs. Nothing was taken in. Ask for the file again, and do not open it with an editor.',
  'spec-file-not-a-spec': ({ why }: { readonly why: ReasonText }) =>
    `The spec in this file cannot be read, and nothing was taken in. ${why}`,
  'spec-file-faulty': ({ faults, why }: { readonly faults: number; readonly why: ReasonText }) =>
    `The audit finds ${counted(faults, 'fault', 'faults')} in this spec, and nothing was taken in. ${why}`,
}
