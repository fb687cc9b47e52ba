export { mostExportCharacters } from './archive.ts'
export type { BuildTable, ImportResult, ReadEntry } from './archive.ts'
export { mostComparedBytes } from './backups.ts'
export type { BackupList, HeldAgainst, Verification } from './backups.ts'
export { buildLine } from './build-line.ts'
export type { BuildLine } from './build-line.ts'
export { contract, mostBytesOf } from './contract.ts'
export { mostKeptBuilds, preferences, speechRates } from './preferences.ts'
export type { HandleState, OrderDraftState, Preferences } from './preferences.ts'
export type {
  Answer,
  Client,
  EngineLine,
  Input,
  StoredBuild,
  Output,
  ParsedInput,
  RequestName,
} from './contract.ts'
export type { DraftLine, DraftOrigin, LibraryLine, OpenedDraft } from './drafts.ts'
export type { OpenedFile } from './files.ts'
export type { DoctorLine } from './host.ts'
export type { PersonLine } from './people.ts'
export type { PracticeStanding, Readiness, ReadyPeople } from './practice.ts'
export { problemMessage } from './problem-message.ts'
export { writtenWrench } from './wrenches.ts'
export type { WrittenWrench } from './wrenches.ts'
