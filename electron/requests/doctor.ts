import { accessSync, constants, existsSync, statfsSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { DoctorLine, ShopState } from '../../core/contract/index.ts'
import { problem } from '../../core/problem/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import { fileProblem, inspectRecord, recordName, wasThere } from '../store/index.ts'
import type { PhotoCount } from '../store/index.ts'
import { mayPass } from '../shop/index.ts'
import { listBackups } from './backups.ts'
import type { HostFacts } from './host-facts.ts'

/** How the record stands, for a host that has it open or has tried to. */
export type RecordState =
  | {
      readonly kind: 'open'
      readonly builds: number
      /** Null where they were not looked at. */
      readonly photos: PhotoCount | null
    }
  | { readonly kind: 'closed'; readonly problem: Problem }
  | { readonly kind: 'none' }

const megabyte = 1024 * 1024
const dayMs = 86_400_000

/** What to read out over the phone when something is wrong: one line each. */
export function doctorLines(
  facts: HostFacts,
  record: RecordState,
  now: Date,
  shop: ShopState['joined'] = null,
): DoctorLine[] {
  return [
    line('program', 'good', 'program', {
      version: facts.version,
      electron: process.versions.electron ?? null,
      node: process.versions.node,
      platform: process.platform,
      arch: process.arch,
    }),
    line('host', 'good', 'host', { host: facts.host, why: facts.why }),
    folderLine(facts.dataFolder),
    diskLine(facts.dataFolder),
    recordLine(facts.dataFolder, record),
    ...photoLines(record),
    backupLine(facts.dataFolder, record, now),
    ...(shop === null ? [] : [shopLine(shop)]),
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
      ? { kind: 'open', builds: inspected.value.builds, photos: null }
      : { kind: 'closed', problem: inspected.problem }
  } catch (error) {
    const found = fileProblem(error, file, folder)
    if (found === null) throw error
    return { kind: 'closed', problem: found }
  }
}

type LineText = DoctorLine['says']

function line<Code extends LineText['code']>(
  subject: DoctorLine['subject'],
  state: DoctorLine['state'],
  code: Code,
  facts: Extract<LineText, { readonly code: Code }>['facts'],
): DoctorLine {
  return { subject, state, says: { code, facts } as LineText }
}

function folderLine(folder: string): DoctorLine {
  try {
    accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK)
  } catch {
    return existsSync(folder)
      ? line('data-folder', 'bad', 'folder-closed', { folder })
      : line('data-folder', 'good', 'folder-to-come', { folder })
  }
  const isOpenToOthers = process.platform !== 'win32' && (statSync(folder).mode & 0o077) !== 0
  return isOpenToOthers
    ? line('data-folder', 'look', 'folder-open-to-others', { folder })
    : line('data-folder', 'good', 'folder-of-this-user', { folder })
}

function diskLine(folder: string): DoctorLine {
  try {
    const { bavail, bsize } = statfsSync(folder)
    const megabytes = Math.floor((bavail * bsize) / megabyte)
    if (megabytes < 50) return line('disk', 'bad', 'disk-full', { megabytes })
    return line('disk', megabytes < 1000 ? 'look' : 'good', 'disk-free', { megabytes })
  } catch {
    return line('disk', 'look', 'disk-unknown', {})
  }
}

function recordLine(folder: string, record: RecordState): DoctorLine {
  switch (record.kind) {
    case 'none':
      return line('record', 'good', 'record-to-come', {})
    case 'closed':
      return record.problem.code === 'record-in-use'
        ? line('record', 'good', 'record-in-use', {})
        : line('record', 'bad', 'record-closed', { why: record.problem })
    case 'open': {
      const megabytes = Math.ceil(statSync(join(folder, recordName)).size / megabyte)
      return line('record', 'good', 'record-opens', { builds: record.builds, megabytes })
    }
    default:
      return record satisfies never
  }
}

function shopLine({
  address,
  connection,
  since,
  problem: why,
  waiting,
  refused,
  apart,
}: NonNullable<ShopState['joined']>): DoctorLine {
  const unsettled = apart.filter(({ counts }) => counts === null).length
  if (why !== null) {
    const isWaiting = connection === 'cut' && mayPass(why)
    return line('shop', isWaiting ? 'look' : 'bad', 'shop-not-reached', {
      why,
      since,
      entries: waiting.entries,
    })
  }
  if (refused.length + unsettled > 0)
    return line('shop', 'bad', 'shop-refused', { refused: refused.length, apart: unsettled })
  return line('shop', 'good', 'shop-connected', { address, entries: waiting.entries })
}

/** None where no build has a photo. */
function photoLines(record: RecordState): DoctorLine[] {
  if (record.kind !== 'open' || record.photos === null || record.photos.photos === 0) return []
  const { photos, damaged, missing, bytes } = record.photos
  const megabytes = Math.ceil(bytes / megabyte)
  return damaged + missing === 0
    ? [line('photos', 'good', 'photos-there', { photos, megabytes })]
    : [line('photos', 'bad', 'photos-not-there', { photos, damaged, missing })]
}

function backupLine(folder: string, record: RecordState, now: Date): DoctorLine {
  const { backups, secondFolder } = listBackups(folder)
  const [newest] = backups.filter(({ own }) => own)
  if (newest === undefined) {
    const isWanted = record.kind === 'closed' || (record.kind === 'open' && record.builds > 0)
    return line('backup', isWanted ? 'bad' : 'good', 'backup-none', { secondFolder })
  }
  const days = Math.floor((now.getTime() - Date.parse(newest.at)) / dayMs)
  if (days < -1) {
    const [on, today] = [newest.at.slice(0, 10), now.toISOString().slice(0, 10)]
    return line('backup', 'look', 'backup-of-later', { on, today, secondFolder })
  }
  const { builds, entries, head, broken } = newest
  const state = days > 14 || broken > 0 ? 'look' : 'good'
  return line('backup', state, 'backup-newest', { days, builds, entries, head, broken, secondFolder })
}
