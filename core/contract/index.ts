export { mostExportCharacters } from './archive.ts'
export type { Imported, ReadEntry } from './archive.ts'
export { mostComparedBytes } from './backups.ts'
export type { BackupList, HeldAgainst, Verification } from './backups.ts'
export { buildLine } from './build-line.ts'
export type { BuildLine } from './build-line.ts'
export { contract, mostKeptViews, preferences } from './contract.ts'
export type {
  Answer,
  Client,
  EngineLine,
  Input,
  OpenBuild,
  Output,
  ParsedInput,
  Preferences,
  RequestName,
} from './contract.ts'
export type { OpenedFile } from './files.ts'
export type { DoctorLine } from './host.ts'
export type { PersonLine } from './people.ts'
export { toldProblem } from './problem-message.ts'
export type { ToldProblem } from './problem-message.ts'
export { writtenWrench } from './wrenches.ts'
export type { WrittenWrench } from './wrenches.ts'
