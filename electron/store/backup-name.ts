import { headCode } from './chain.ts'

/** What the name of a backup says of it: when it was made, what is in it, and the code over the heads of its builds. */
export interface BackupName {
  readonly name: string
  /** UTC, ISO 8601, to the second. */
  readonly at: string
  readonly builds: number
  readonly entries: number
  /** 16 hexadecimal digits. */
  readonly head: string
}

const pattern = /^bedplate-(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z-(\d+)-(\d+)-([0-9a-f]{16})\.sqlite$/

/** The time as it can stand in a file name: 20260419T081502Z. */
export function stamp(at: Date): string {
  return at.toISOString().replace(/[-:]|\.\d+/g, '')
}

export function backupName(at: Date, found: { builds: number; entries: number; head: string }): string {
  return `bedplate-${stamp(at)}-${found.builds}-${found.entries}-${headCode(found.head)}.sqlite`
}

/** Null for a file that is not one of ours. */
export function readBackupName(name: string): BackupName | null {
  const found = pattern.exec(name)
  if (found === null) return null
  const [, year, month, day, hour, minute, second, builds, entries, head = ''] = found
  const at = `${year}-${month}-${day}T${hour}:${minute}:${second}Z`
  if (Number.isNaN(Date.parse(at))) return null
  return { name, at, builds: Number(builds), entries: Number(entries), head }
}

const keptLast = 12
const keptMonths = 24

/**
 * The backups that may go: all but the last twelve and the last one of each of the last 24 months. A loss that is
 * noticed late is then still to be had back, and the disk does not fill.
 */
export function outlived(backups: readonly BackupName[]): readonly BackupName[] {
  const newestFirst = backups.toSorted((a, b) => (a.name < b.name ? 1 : -1))
  const months = new Map<string, BackupName>()
  for (const backup of newestFirst) {
    const month = backup.at.slice(0, 7)
    if (!months.has(month)) months.set(month, backup)
  }
  const kept = new Set([...newestFirst.slice(0, keptLast), ...[...months.values()].slice(0, keptMonths)])
  return newestFirst.filter((backup) => !kept.has(backup))
}
