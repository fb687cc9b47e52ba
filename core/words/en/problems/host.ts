import type { PhraseText } from '../../phrase.ts'
import type { ReasonText } from '../../reason.ts'
import { thingText, type NamedThing } from './named-thing.ts'

export type None = Record<never, never>
export type AtFile = { file: string }

/** How a record is damaged, where SQLite's own check does not say it. */
const damages = {
  empty: 'it is empty',
  pages: 'its pages do not fit together',
  disk: 'the disk does not give it back whole',
}

/** Sentences about the program itself: its record on disk, its window and host, what was asked of it. */
export const hostWords = {
  'own-fault': (_: None) =>
    'Bedplate made a mistake of its own and ends. What was confirmed is on disk. Start it again; if that does not help, start it with --local, and tell who looks after it.',
  'still-ending': ({ folder }: { readonly folder: string }) =>
    `A Bedplate on ${folder} is still ending. Wait until it has, then start again.`,
  'host-lost': (_: None) =>
    'The program behind this window has ended. What was confirmed is on disk. Start Bedplate again to continue.',
  'host-misunderstood': (_: None) =>
    'The program behind this window gave an answer that this window does not know. Close it and start Bedplate again.',
  'program-fault': (_: None) =>
    'The program made a mistake of its own and changed nothing. Try once more; if it happens again, start Bedplate again and tell the person who looks after it.',
  'request-unknown': ({ name }: { name: string }) =>
    `This host does not know the request “${name}”. Close the window and start Bedplate again.`,
  /** What is to be written instead, or what Zod has to say. */
  'request-unreadable': ({ fault }: { fault: string | PhraseText | ReasonText }) =>
    `Nothing was changed, because what was sent has a fault: ${fault}${fault.endsWith('.') ? '' : '.'} Correct it and send it again.`,
  'text-broken': (_: None) => 'The text holds half a character, as a broken paste leaves it. Type it again.',

  'data-folder-closed': ({ folder, why }: { folder: string; why: keyof typeof closedFolder }) =>
    `Bedplate cannot write in its data folder ${folder}. ${closedFolder[why]} Or choose another folder with --data.`,
  'data-folder-is-file': ({ folder }: { folder: string }) =>
    `Builds cannot be kept at ${folder}: it is a file, or lies within one, and a folder is needed. Choose another with --data.`,
  'record-in-use': ({ folder }: { folder: string }) =>
    `Another Bedplate is already running on the data folder ${folder}. Go to its window, or end it first.`,
  'record-newer': ({ file, version, known }: AtFile & { version: number; known: number }) =>
    `The record ${file} was made by a newer Bedplate (version ${version} of its tables; this one knows ${known}). It was left as it is. Start the newer program.`,
  'record-of-another-program': ({ file }: AtFile) =>
    `${file} is a database of another program. It was left as it is. Move it away, or choose another folder with --data.`,
  'record-not-a-database': ({ file }: AtFile) =>
    `${file} is not a record of Bedplate, or its first page is destroyed. It was left as it is. Restore a backup, or move the file away to begin again.`,
  'record-damaged': ({
    file,
    found,
  }: AtFile & { found: keyof typeof damages | { readonly check: string } }) =>
    `The record ${file} is damaged (${typeof found === 'string' ? damages[found] : found.check}). It was left as it is. Restore a backup, or have a copy of the file looked at.`,
  'record-schema-altered': ({ file }: AtFile) =>
    `The tables of the record ${file} were altered by something other than Bedplate, so its guards cannot be relied on. It was left as it is. Restore a backup.`,
  'record-missing': ({ file }: AtFile) =>
    `The record ${file} is gone, though there was one here. Put it back, or restore a backup. Begin with an empty record only if what was in it is no longer wanted.`,
  'record-being-replaced': (_: None) => 'A backup is being restored. Wait a moment, then do it again.',
  'pdf-by-browser': (_: None) =>
    'In a browser window the browser makes the PDF: print, and choose “Save as PDF” as the printer.',
  'pdf-not-saved': (_: None) =>
    'The PDF was not saved: it could not be written there. Choose another folder.',
  'save-by-browser': (_: None) => 'In a browser window the browser saves files: save it as a download.',
  'file-not-saved': ({ file }: AtFile) =>
    `${file} was not saved: it could not be written there. Save it again in another folder.`,
  'record-not-saved': ({ reason }: { reason: 'disk-full' | 'read-only' | 'disk-fault' }) =>
    `Not saved: ${notSaved[reason]} Nothing counts as confirmed until it is saved. Put that right, then confirm again.`,

  'backup-not-saved': ({ folder, reason }: { folder: string; reason: 'full' | 'gone' | 'closed' }) =>
    `No backup was put in ${folder}: ${noBackup[reason]} The record itself is as it was. Put that right, then make a backup.`,
  'backup-not-sound': (_: None) =>
    'A backup was made and does not verify, so it does not count: something in the record is not as it was confirmed. The older backups are kept. Verify the archive to see which build it is.',
  'backup-lost': ({ folder }: { folder: string }) =>
    `The backup in ${folder} does not read back as it was written, so it does not count. Have that disk looked at, and choose another folder.`,
  'backup-unknown': (_: None) =>
    'There is no such backup any more. Look at the list again and choose another.',
  'backup-unusable': ({ name }: { name: string }) =>
    `The backup ${name} is damaged, so it was not restored, and the record is as it was. Choose another one.`,
  'backup-folder-wrong': ({ folder, fault }: { folder: string; fault: keyof typeof wrongFolder }) =>
    `“${folder}” cannot take backups: ${wrongFolder[fault]} Choose another folder.`,

  'build-unknown': (_: None) => 'This build is not in the record. Open the list of builds and choose again.',
  'sample-not-needed': (_: None) =>
    'This demo build is only made once, and only where all builds are of demo engines. Open one of the list.',
  'build-moved-on': ({ last }: { last: number }) =>
    `Something was added to this build elsewhere; its last entry is now number ${last}. Look at what changed, then do it again if it still holds.`,
  'build-of-earlier-rules': ({ entry }: { entry: number }) =>
    `Entry ${entry} of this imported build was allowed by an earlier Bedplate and is against the rules of this one. It can be read and printed, and nothing can be added. Look at what was done there before relying on it.`,
  'build-newer': ({ entry }: { entry: number }) =>
    `Entry ${entry} of this build was made by a newer Bedplate. It can be read up to there, and nothing can be added with this version.`,
  'build-chain-broken': ({ entry }: { entry: number }) =>
    `Entry ${entry} of this build is not what was once confirmed, or an entry before it is missing. Nothing can be added. Compare it with its printed sheet or a backup.`,
  'build-spec-lost': (_: None) =>
    'The spec this build was started with is not in the record, so it cannot be drawn. Restore a backup.',
  'file-not-ours': (_: None) =>
    'Bedplate cannot open this file, and left it as it is. Choose an exported build (.bedplate), a spec of a library (.bedplate-spec) or an engine spec (.json).',
  'file-unreadable': (_: None) =>
    'The file could not be read. Is it still there, and may this user read it? Then open it again.',
  'import-too-large': ({ most }: { most: number }) =>
    `The file is larger than any exported build (${most} MB at most). Nothing was imported. Choose the file that was exported.`,
  'import-not-ours': (_: None) =>
    'The file is not an exported build. Nothing was imported. Choose a file whose name ends in .bedplate.',
  'import-newer': (_: None) =>
    'The file was exported by a newer Bedplate. Nothing was imported. Import it with that version.',
  'import-altered': ({ line }: { line: number }) =>
    `The file is not as it was exported: at line ${line} something was changed, added or cut off. Nothing was imported. Export it again, and carry it over as a file.`,
  'import-spec-faulty': ({ fault }: { fault: ReasonText }) =>
    `The spec in the file has a fault, so nothing was imported: ${fault}`,
  'import-senseless': (_: None) =>
    'The entries of the file do not fit together as a build of its engine, so nothing was imported. Ask the person who made the file.',
  'build-name-missing': (_: None) =>
    'The build has no name. Type one, for example the customer and the pump.',
  'person-not-proven': ({ name }: { name: string }) =>
    `${name} has a PIN, and it was not given yet. Choose ${name} and type the PIN.`,
  'practice-not-kept': ({ name }: { name: string }) =>
    `${name} is not in the list of people, so this round is not kept. Add the name to the list of people to keep what is practised.`,
  'practice-only': (_: None) =>
    'This is a dry run: it is in no record, so nothing of it is exported, verified or kept. Start a build to make a record.',
  'practice-led-by-mechanic': (_: None) =>
    'A mechanic from the list of people sets what is to be practised and sees how the others stand; where mechanics have a PIN, one ' +
    'of those. Choose such a mechanic as the person at the bench.',
  'person-unknown': (_: None) => 'This person is not in the list any more. Look at the list again.',
  'person-twice': ({ name }: { name: string }) =>
    `${name} is in the list already. Give the other one a name by which they can be told apart.`,
  'people-guarded': (_: None) =>
    'The list of people is guarded by a PIN. Let a mechanic who has one choose their name and type it.',
  'badge-unknown': (_: None) =>
    'Nobody in the list has this badge. Choose the name, or give the badge to somebody.',
  'badge-twice': ({ name }: { name: string }) =>
    `This badge is ${name}’s. Take it from there first, or use another.`,
  'pin-too-short': ({ fewest }: { fewest: number }) =>
    `The PIN is too short. Give at least ${fewest} digits or letters.`,
  'pin-wrong': ({ name }: { name: string }) => `That is not the PIN of ${name}. Type it again.`,
  'pin-wanted': ({ name }: { name: string }) => `${name} has a PIN. Type it.`,
  'pin-wait': ({ seconds }: { seconds: number }) =>
    `Too many wrong PINs. Wait ${seconds} s, then type it again.`,
  'second-is-first': ({ name }: { name: string }) =>
    `This is ${name}’s own work, and nobody checks their own work. Call another person.`,
  'second-not-known': ({ name }: { name: string }) =>
    `${name} is not in the list of people as a mechanic, so the check would not count. Call a mechanic who is.`,
  'person-missing': (_: None) => 'Nobody is named. Type the name of the person at the bench.',
  'text-too-long': ({ what, most }: { what: NamedThing; most: number }) =>
    `The ${thingText(what)} is too long. Keep it to ${most} characters.`,

  'engine-unknown': ({ engine }: { engine: string }) =>
    `There is no engine “${engine}” here. Choose one from the list of engines.`,
  'engine-faulty': ({ engine }: { engine: string }) =>
    `The spec of “${engine}” has faults, and nothing is built from it until they are corrected. They are listed beside it.`,
  'engine-named-twice': ({ engine, file }: { engine: string; file: string }) =>
    `“${engine}” is already the id of another spec. Give the one in ${file} an id of its own.`,
}

const closedFolder = {
  'no-right': 'Give this user the right to write there.',
  'read-only': 'Its disk can only be read: have it made writable.',
  dangling: 'A link on the way to it leads nowhere: connect the disk it leads to, or repair the link.',
  'too-long': 'The path is longer than the system takes: move the folder nearer to the root.',
}

const noBackup = {
  full: 'the disk is full.',
  gone: 'the folder is not there; is the disk or the share connected?',
  closed: 'the folder cannot be written.',
}

const wrongFolder = {
  relative: 'write the whole path, from the root or the drive on.',
  missing: 'there is no such folder.',
  closed: 'it cannot be written.',
  own: 'it is the data folder or lies in it, and would be lost with it.',
}

const notSaved = {
  'disk-full': 'the disk is full.',
  'read-only': 'the data folder cannot be written.',
  'disk-fault': 'the disk did not take it.',
}
