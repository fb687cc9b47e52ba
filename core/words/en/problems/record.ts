import type { ReasonText } from '../../reason.ts'
import { thingText, type NamedThing } from './named-thing.ts'
import { day, dayAndTime } from '../formats.ts'

type None = Record<never, never>

/** Sentences about what the record keeps: whether it is in its place, and whether all of it is as it was confirmed. */
export const recordWords = {
  'record-not-in-place': ({ file, fault }: { file: string; fault: keyof typeof outOfPlace }) =>
    `Not saved: ${file} ${outOfPlace[fault]} while the program had it open. Nothing more can be confirmed. Put it back where it was, or write a copy of what is still in memory now, before the program is closed.`,
  'record-not-missing': (_: None) =>
    'There is a record here, so no empty one is begun. Look at the window again.',
  'clock-unusable': ({ at }: { at: string }) =>
    `Not saved: the clock of this computer says ${dayAndTime(at)}, which cannot be recorded. Set the clock right, then confirm again.`,

  'build-spec-altered': (_: None) =>
    'The spec this build was started with was altered in the record: its text is no longer the one the first entry names. Nothing can be added, and no numbers of it can be relied on. Restore a backup.',
  'build-spec-swapped': (_: None) =>
    'The list of builds has this build rest on another spec than its first entry names. It is shown with the spec of its first entry. Nothing can be added until the lists are made again from the entries (on the page “Record and backups”).',
  'build-unlisted': (_: None) =>
    'The entries of this build are in the record, but the list of builds has lost it. Make the lists again from the entries, on the page “Record and backups”.',
  'build-list-differs': ({ columns }: { columns: readonly string[] }) =>
    `The list of builds says something else of this build than its entries do (${columns.map((each) => columnNames[each] ?? each).join(', ')}). The entries count. Make the lists again from them.`,
  'build-number-missing': ({ number }: { number: string }) =>
    `The number ${number} was given to a build that is not in the record any more. Restore a backup that has it, or import its export again.`,
  'build-entry-unreadable': ({ entry }: { entry: number }) =>
    `Entry ${entry} of this build has a time, a name or a number that no Bedplate writes. It can be read up to there, and nothing can be added. Compare it with its printed sheet or a backup.`,
  'build-row-unreadable': ({ columns }: { columns: readonly string[] }) =>
    `This row of the list cannot be read: ${columns.map(rowFault).join(', ')}. The other builds are not touched by it. Verify the archive, and make the lists again from the entries.`,
  'witness-differs': (facts: {
    kind: keyof typeof witnessNames
    at: string
    entries: number
    head: string
  }) =>
    facts.kind === 'backup'
      ? `A backup made on ${day(facts.at)} has ${facts.entries} entries, and the record has fewer now. Either an older backup was restored since, or entries were removed.`
      : `${witnessNames[facts.kind]} of ${day(facts.at)} has the head code ${facts.head.slice(0, 16)} after entry ${facts.entries}, and the build here has another, or ends before it. Either an older backup was restored since, or the build was written again. Compare it with that ${facts.kind}.`,

  'verify-file-unknown': ({ name }: { name: string }) =>
    `“${name}” is no export, no backup, and has no head code in its name. Drop an exported build or a backup here, or type the code that stands on a sheet.`,
  'verify-code-unknown': ({ code }: { code: string }) =>
    `No entry of any build here has the head code ${code}. Look whether it is typed as it stands on the sheet. If it is, that build was altered, removed or never in this record.`,
  'verify-build-missing': ({ name }: { name: string }) =>
    `${name} is not in the record here, neither whole nor in part.`,
  'verify-build-differs': ({ entry }: { entry: number }) =>
    `Here, entry ${entry} is another one than in the file. One of the two was written again after it was confirmed.`,
  'verify-build-shorter': ({ entries, there }: { entries: number; there: number }) =>
    `The build here ends after entry ${entries}; the file has ${there}. Entries are missing here, or an older backup was put in place.`,

  'backup-carries-broken': ({ count }: { count: number }) =>
    `A backup was made, and ${count === 1 ? 'one thing' : `${count} things`} in it ${count === 1 ? 'is' : 'are'} not as confirmed. It is marked so in the list, and the last sound backup is kept beside it. Verify the archive to see what it is.`,

  'spec-file-unread': ({ file, reason, code }: { file: string; reason: keyof typeof unread; code: string }) =>
    `${file} ${unread[reason]}${code === '' ? '' : ` (${code})`}.`,
  'import-busy': (_: None) =>
    'Another file is being taken in. Wait until it is done, then choose this one again.',
  'import-against-rules': ({ entry, why }: { entry: number; why: ReasonText }) =>
    `Entry ${entry} of the file could not have been confirmed there, so nothing was imported: ${why}`,
  'entry-not-first': (_: None) => 'it does not begin a build.',
  'entry-out-of-place': (_: None) =>
    'it only ever follows together with the entry before it, and that one did not lead to it.',
  'entry-not-as-decided': (_: None) => 'what it says is not what follows from the entries before it.',
  'name-unreadable': ({ what }: { what: NamedThing }) =>
    `The ${thingText(what)} has signs that nobody can see or read: a line break, a control sign, one for the direction of writing, or nothing visible at all. Type it again by hand.`,
  'request-too-large': (_: None) =>
    'What was sent is larger than anything this program asks for. Nothing was changed.',
}

const outOfPlace = {
  gone: 'was deleted or moved away',
  replaced: 'was replaced by another file',
  shortened: 'was cut short',
}

const unread = {
  folder:
    'is the folder of the engine specs, and cannot be read: give this user the right to, or choose another',
  missing: 'is not there. Check its name',
  'is-folder': 'is a folder. Name the files in it',
  'not-a-file': 'is not a text file, so it is not an engine spec',
  'too-large': 'is larger than any engine spec',
  dangling: 'leads to a file that is not there. Put the file back, or remove the link',
  'not-text': 'is not text in UTF-8. Save it again as that',
  closed: 'cannot be read. Give this user the right to read it',
}

const witnessNames = { sheet: 'The sheet', export: 'The export', backup: 'The backup' }

const columnNames: Readonly<Record<string, string>> = {
  year: 'its year',
  name: 'its name',
  serial: 'its serial number',
  started_at_utc: 'when it was started',
  finished: 'whether it is finished',
  voided: 'whether it counts',
  flagged: 'whether anything was flagged',
}

const rowFaults: Readonly<Record<string, string>> = {
  id: 'its id is none',
  startedAt: 'the time it was started is none',
  lastAt: 'the time of its last entry is none',
}

/** Of any other column its name has to do. */
function rowFault(column: string): string {
  return rowFaults[column] ?? column
}
