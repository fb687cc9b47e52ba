import { accessSync, constants, existsSync, statfsSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { DoctorLine } from '../../core/contract/index.ts'
import { problem, sentenceOf } from '../../core/problem/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import { fileProblem, inspectRecord, recordName, wasThere } from '../store/index.ts'
import { listBackups } from './backups.ts'
import type { HostFacts } from './host-facts.ts'

/** How the record stands, for a host that has it open or has tried to. */
export type RecordState =
  | { readonly kind: 'open'; readonly builds: number }
  | { readonly kind: 'closed'; readonly problem: Problem }
  | { readonly kind: 'none' }

const megabyte = 1024 * 1024
const dayMs = 86_400_000

/** What to read out over the phone when something is wrong: one line each, the worst of it in words. */
export function doctorLines(facts: HostFacts, record: RecordState, now: Date): DoctorLine[] {
  return [
    line(
      'program',
      'good',
      `Bedplate ${facts.version} on ${runtime()}, ${process.platform} ${process.arch}.`,
    ),
    line('host', 'good', `It runs in the ${facts.host} host: ${facts.why}.`),
    folderLine(facts.dataFolder),
    diskLine(facts.dataFolder),
    recordLine(facts.dataFolder, record),
    backupLine(facts.dataFolder, record, now),
  ]
}

/** The lines for a program that is not running here, or runs elsewhere. The record is looked at, and nothing is changed. */
export function askDoctor(facts: HostFacts, now: Date): Promise<DoctorLine[]> {
  return Promise.resolve(doctorLines(facts, stateOf(facts.dataFolder), now))
}

function stateOf(folder: string): RecordState {
  const file = join(folder, recordName)
  try {
    if (!existsSync(file))
      return wasThere(folder)
        ? { kind: 'closed', problem: problem('record-missing', { file }) }
        : { kind: 'none' }
    const inspected = inspectRecord(file, folder)
    return inspected.ok
      ? { kind: 'open', builds: inspected.value.builds }
      : { kind: 'closed', problem: inspected.problem }
  } catch (error) {
    const found = fileProblem(error, file, folder)
    if (found === null) throw error
    return { kind: 'closed', problem: found }
  }
}

function line(subject: DoctorLine['subject'], state: DoctorLine['state'], sentence: string): DoctorLine {
  return { subject, state, sentence }
}

function runtime(): string {
  const { electron, node } = process.versions
  return electron === undefined ? `Node ${node}` : `Electron ${electron} with Node ${node}`
}

function folderLine(folder: string): DoctorLine {
  try {
    accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK)
  } catch {
    const found = existsSync(folder)
      ? 'cannot be written by this user'
      : 'is not there yet; it is made at the first start'
    return line('data folder', existsSync(folder) ? 'bad' : 'good', `The data folder ${folder} ${found}.`)
  }
  const isOpenToOthers = process.platform !== 'win32' && (statSync(folder).mode & 0o077) !== 0
  return isOpenToOthers
    ? line(
        'data folder',
        'look',
        `The data folder ${folder} can be written, but other users of this machine can look into it.`,
      )
    : line('data folder', 'good', `The data folder ${folder} can be written, by this user alone.`)
}

function diskLine(folder: string): DoctorLine {
  try {
    const { bavail, bsize } = statfsSync(folder)
    const free = Math.floor((bavail * bsize) / megabyte)
    if (free < 50)
      return line('disk', 'bad', `Only ${free} MB are free on its disk. Make room before going on.`)
    return line('disk', free < 1000 ? 'look' : 'good', `${free} MB are free on its disk.`)
  } catch {
    return line('disk', 'look', 'How much room there is on its disk cannot be told.')
  }
}

function recordLine(folder: string, record: RecordState): DoctorLine {
  switch (record.kind) {
    case 'none':
      return line('record', 'good', 'There is no record yet; it is made at the first start.')
    case 'closed':
      return record.problem.code === 'record-in-use'
        ? line('record', 'good', 'The record is in use by a Bedplate that is running.')
        : line('record', 'bad', sentenceOf(record.problem))
    case 'open': {
      const size = Math.ceil(statSync(join(folder, recordName)).size / megabyte)
      return line(
        'record',
        'good',
        `The record opens; it holds ${counted(record.builds, 'build', 'builds')} in ${size} MB.`,
      )
    }
    default:
      return record satisfies never
  }
}

function backupLine(folder: string, record: RecordState, now: Date): DoctorLine {
  const { backups, secondFolder } = listBackups(folder)
  const [newest] = backups.filter(({ own }) => own)
  const second =
    secondFolder === null ? 'No second folder is chosen.' : `The second folder is ${secondFolder}.`
  if (newest === undefined) {
    const isWanted = record.kind === 'closed' || (record.kind === 'open' && record.builds > 0)
    return line('backup', isWanted ? 'bad' : 'good', `There is no backup. ${second}`)
  }
  const broken =
    newest.broken === 0 ? '' : ' Not all of it was as confirmed when it was made; verify the archive.'
  const days = Math.floor((now.getTime() - Date.parse(newest.at)) / dayMs)
  const when = days <= 0 ? 'less than a day' : days === 1 ? 'one day' : `${days} days`
  if (days < -1)
    return line(
      'backup',
      'look',
      `The last backup is dated ${newest.at.slice(0, 10)}, and the clock of this computer says ${now.toISOString().slice(0, 10)}. One of the two was wrong. ${second}`,
    )
  const state = days > 14 || newest.broken > 0 ? 'look' : 'good'
  const what = `${counted(newest.builds, 'build', 'builds')}, ${counted(newest.entries, 'entry', 'entries')}, head ${newest.head}`
  return line('backup', state, `The last backup is ${when} old (${what}).${broken} ${second}`)
}

function counted(count: number, one: string, more: string): string {
  return `${count} ${count === 1 ? one : more}`
}
