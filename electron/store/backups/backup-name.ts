import { headCode } from '../chain/chain.ts'

/** What the name of a backup says of it: whose it is, when it was made, what is in it, and the code over its heads. */
export interface BackupName {
  readonly name: string
  /** The bench whose record it is; null in a name that an earlier version gave. */
  readonly bench: string | null
  /** 1, 2, 3 … for each bench: what is newer is known by this, never by the clock. 0 where no bench is named. */
  readonly sequence: number
  /** UTC, ISO 8601, to the second: what the machine's clock said. */
  readonly at: string
  readonly builds: number
  readonly entries: number
  /** 16 hexadecimal digits. */
  readonly head: string
  /** How many things in it did not verify when it was made; 0 for a sound one. */
  readonly broken: number
}

const pattern =
  /^bedplate-(?:([0-9a-f]{12})-(\d{1,8})-)?(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z-(\d+)-(\d+)-([0-9a-f]{16})(?:-broken(\d+))?\.sqlite$/

/** The time as it can stand in a file name: 20260419T081502Z. */
export function stamp(at: Date): string {
  return at.toISOString().replace(/[-:]|\.\d+/g, '')
}

export function backupName(
  at: Date,
  of: { bench: string; sequence: number },
  found: { builds: number; entries: number; head: string; broken: number },
): string {
  const { builds, entries, head, broken } = found
  const ending = broken === 0 ? '' : `-broken${broken}`
  const number = String(of.sequence).padStart(6, '0')
  return `bedplate-${of.bench}-${number}-${stamp(at)}-${builds}-${entries}-${headCode(head)}${ending}.sqlite`
}

/** Null for a file that is not one of ours. */
export function readBackupName(name: string): BackupName | null {
  const found = pattern.exec(name)
  if (found === null) return null
  const [, bench, sequence, year, month, day, hour, minute, second, builds, entries, head = '', broken] =
    found
  const at = `${year}-${month}-${day}T${hour}:${minute}:${second}Z`
  if (Number.isNaN(Date.parse(at))) return null
  return {
    name,
    bench: bench ?? null,
    sequence: Number(sequence ?? 0),
    at,
    builds: Number(builds),
    entries: Number(entries),
    head,
    broken: Number(broken ?? 0),
  }
}

/** Orders backups of one bench, the newest first: by their number, and by the clock only where there is none. */
export function newerFirst(a: BackupName, b: BackupName): number {
  return b.sequence - a.sequence || (a.at === b.at ? (a.name < b.name ? 1 : -1) : a.at < b.at ? 1 : -1)
}

const keptLast = 12
const keptMonths = 24
const keptBroken = 3

/**
 * The backups of one bench that may go: all but the last twelve and the last one of each of the last 24 months. A loss
 * that is noticed late is then still to be had back, and the disk does not fill. Those that did not verify are counted
 * apart, so that none of them ever takes the place of a sound one.
 */
export function expiredBackups(backups: readonly BackupName[]): readonly BackupName[] {
  const newestFirst = backups.toSorted(newerFirst)
  const sound = newestFirst.filter(({ broken }) => broken === 0)
  const months = new Map<string, BackupName>()
  for (const backup of sound) {
    const month = backup.at.slice(0, 7)
    if (!months.has(month)) months.set(month, backup)
  }
  const kept = new Set([
    ...sound.slice(0, keptLast),
    ...[...months.values()].slice(0, keptMonths),
    ...newestFirst.filter(({ broken }) => broken > 0).slice(0, keptBroken),
  ])
  return newestFirst.filter((backup) => !kept.has(backup))
}
