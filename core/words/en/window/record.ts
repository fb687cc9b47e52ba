import type { ReasonText } from '../../reason.ts'
import type { RichText } from '../../rich.ts'
import { counted } from '../formats.ts'

const builds = (count: number) => counted(count, 'build', 'builds')
const entries = (count: number) => counted(count, 'entry', 'entries')

export interface SizeRead {
  readonly fit: string
  readonly position: string
  /** The part's name in the spec. */
  readonly part: string
  /** Both from 1. */
  readonly plane: number
  readonly direction: number
}

/** The page on the record: whether it is as it was confirmed, its backups, and how the program stands. */
export const record = {
  /** In tables for a spreadsheet. */
  tables: {
    size: (facts: SizeRead) =>
      `${facts.fit}, ${facts.position}, ${facts.part}, plane ${facts.plane}, direction ${facts.direction}`,
    pull: (facts: { readonly procedure: string; readonly pass: number; readonly fastener: string }) =>
      `${facts.procedure}, pass ${facts.pass}, ${facts.fastener}`,
    adapter: (facts: { readonly name: string; readonly offset: string; readonly angle: string }) =>
      `${facts.name}, ${facts.offset} at ${facts.angle}`,
  },
  title: 'Record',
  isWhole: 'Is everything as it was confirmed?',
  codes:
    'Each entry carries a code over itself and the one before. Checking the codes finds what was altered, ' +
    'and where. The work at the bench can continue meanwhile.',
  backups: 'Backups',
  doctor: 'System check, to read out over the phone',

  verify: {
    whole: 'Verify the whole archive',
    followed: ({ builds, of }: { readonly builds: number; readonly of: number }) =>
      `Checked ${builds} of ${counted(of, 'build', 'builds')}`,
    stop: 'Stop',
    stopped: 'Stopped before the end. Nothing is said about the rest.',
    /** Of one build, where `builds` is null, or of so many. */
    isWhole: (facts: {
      readonly builds: number | null
      readonly entries: number
      readonly witnesses: number
    }) =>
      `✓ ${facts.builds === null ? '' : `${builds(facts.builds)} with `}${entries(facts.entries)}: each is as it was ` +
      `confirmed.${witnessWords(facts.witnesses)}`,
    buildIsBroken: '! This build is not as it was confirmed.',
    wholeIsBroken: '! The record as a whole is not as it was confirmed.',
    someAreBroken: ({ broken, builds }: { readonly broken: number; readonly builds: number }) =>
      `! ${broken} of ${builds} builds ${broken === 1 ? 'is' : 'are'} not as confirmed.`,
    buildCode: ({ head, at }: { readonly head: string; readonly at: string }): RichText => [
      'Head code, as on its sheet: ',
      { code: head },
      `, looked at ${at}.`,
    ],
    wholeCode: ({ head, at }: { readonly head: string; readonly at: string }): RichText => [
      'Code over all of it: ',
      { code: head },
      `, looked at ${at}. Compare it with the code of a backup: a record that was shortened or written again has ` +
        'another one.',
    ],
    rebuildLists: 'Make the lists again from the entries',
  },

  compare: {
    title: 'Compare with a sheet, an export or a backup',
    whatFor:
      'Somebody who writes the whole record again makes new codes that fit each other. They do not fit what was ' +
      'given out before: drop such a file anywhere here, or type the head code that stands on a sheet.',
    comparing: 'Comparing …',
    chooseFile: 'Choose a file',
    headCode: 'Head code',
    lookForIt: 'Find it',
    file: 'Sheet, export or backup',
    /** What was found, of each build that was looked for. */
    lines: {
      'same-entries': (facts: { readonly name: string; readonly entries: number; readonly since: number }) =>
        `${facts.name}: all ${facts.entries} entries are the same here.${sinceText(facts.since)}`,
      'entry-has-code': (facts: { readonly name: string; readonly entry: number; readonly since: number }) =>
        `${facts.name}: entry ${facts.entry} has this code; it is ` +
        (facts.since === 0 ? 'the last one.' : `${facts.since} before the last one.`),
      'not-same': ({ name, why }: { readonly name: string; readonly why: ReasonText }) => `${name}: ${why}`,
    },
  },

  backup: {
    making: 'Making and checking a backup …',
    make: 'Make a backup now',
    byItself: 'One is made automatically each day and after each finished build.',
    none: 'There is none yet.',
    choose: 'Choose',
    made: 'Made',
    builds: 'Builds',
    entries: 'Entries',
    headCode: 'Head code',
    size: 'Size',
    inThe: 'Kept in',
    of: 'From',
    chooseOf: ({ at }: { readonly at: string }) => `Backup of ${at}`,
    newest: 'the newest',
    kilobytes: ({ bytes }: { readonly bytes: number }) => `${Math.max(1, Math.round(bytes / 1000))} kB`,
    places: { 'data-folder': 'data folder', 'second-folder': 'second folder' },
    ofBench: ({ own, broken }: { readonly own: boolean; readonly broken: number }) =>
      `${own ? 'this bench' : 'another bench'}${broken > 0 ? ` · ! ${broken} not as confirmed` : ''}`,
    putInPlace: (facts: {
      readonly at: string
      readonly builds: number
      readonly entries: number
    }): RichText => [
      'Put the backup of ',
      { strong: facts.at },
      ` in place of the record? It holds ${builds(facts.builds)} with ${entries(facts.entries)}; what was ` +
        'confirmed later is not in it. The present file is kept beside it under another name, and nothing is ' +
        'overwritten.',
    ],
    ofAnother: 'It is from another bench: its builds replace the builds of this bench.',
    wasBroken: 'Something in it was not as confirmed when it was made; verify the archive afterwards.',
    putting: 'Restoring …',
    put: 'Restore this backup',
    isInPlace: '✓ The backup is restored.',
    keptAs: ({ name }: { readonly name: string }): RichText => [
      'The file that was there is kept in the data folder as ',
      { code: name },
      '. Give it to the person who looks after the computer.',
    ],
    nothingThere: 'There was no file in its place before.',
    goOn: 'Continue with it',
    secondFolder: 'A second copy of each backup goes to this folder: another disk, a share',
    secondFolderExample: 'the whole path; empty for no second copy',
    keepThere: 'Keep a copy there',
    keepNone: 'Keep no second copy',
    copiesGoTo: ({ folder }: { readonly folder: string }) => `Copies go to ${folder}.`,
    noSecondCopy: 'There is no second copy.',
  },

  rescue: {
    isBack: 'The record is restored',
    cannotBeUsed: 'The record cannot be used',
    nothingChanged: 'Nothing was changed, and nothing can be built until this is put right.',
    noBackup: ({ secondFolder }: { readonly secondFolder: string | null }) =>
      `There is no backup in the data folder${secondFolder ? ` and none in ${secondFolder}` : ''}. Have the file ` +
      'examined before anything else is done with it.',
    checkedBackups: 'Backups that were checked when they were made',
    lookAgain: 'Look again',
    beginEmptySure:
      'Start with an empty record? The builds that were here are then not in the lists; nothing is deleted.',
    beginEmpty: 'Start with an empty record',
    nothingToBring: 'There is nothing to restore …',
    stillInMemory:
      'What was confirmed before is still in the memory of this program. A copy of it saves all of it.',
    folder: 'Folder for the copy',
    folderExample: 'the whole path; empty for the folder of the backups',
    writing: 'Writing and checking it …',
    write: 'Write a copy now',
    written: (facts: {
      readonly builds: number
      readonly entries: number
      readonly file: string
    }): RichText => [
      `✓ ${builds(facts.builds)} with ${entries(facts.entries)} are in `,
      { code: facts.file },
      '. It is a backup like any other and can be restored below.',
    ],
  },
}

function witnessWords(witnesses: number): string {
  if (witnesses === 0) return ''
  return witnesses === 1
    ? ' One head code that was given out still matches.'
    : ` ${witnesses} head codes that were given out still match.`
}

function sinceText(since: number): string {
  if (since === 0) return ''
  return since === 1 ? ' One entry was added since.' : ` ${since} entries were added since.`
}
