import { appendFileSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { syncFolder } from '../file/durable.ts'
import type { Database } from '../file/sqlite.ts'

/** A head that was given out, on paper or in a file, and can be held against the record later. */
export interface Witness {
  readonly kind: 'sheet' | 'export' | 'backup'
  /** '' for the head over all builds of a backup. */
  readonly build: string
  /** How many entries the build, or the backup, had then. */
  readonly entries: number
  /** The first 16 hexadecimal digits, or all 64. */
  readonly head: string
  /** UTC, ISO 8601. */
  readonly at: string
}

/** The witnesses that are kept in the record itself. */
export function witnessesOn(db: Database) {
  const read = db.prepare<[], Witness>(
    'SELECT kind, build, entries, head, at_utc AS at FROM witness ORDER BY at_utc',
  )
  const insert = db.prepare(
    'INSERT INTO witness (kind, build, entries, head, at_utc) VALUES (@kind, @build, @entries, @head, @at) ON CONFLICT DO NOTHING',
  )
  return {
    all: (): readonly Witness[] => read.all(),
    /** False where the very same was kept before. */
    keep: (witness: Witness): boolean => insert.run(witness).changes > 0,
  }
}

const line = /^(sheet|export|backup) (\S+) (-|[0-9a-f-]{36}) (\d{1,9}) ([0-9a-f]{16,64})$/

/** The list of witnesses of one bench in a folder outside the data folder. */
function witnessFile(folder: string, bench: string): string {
  return join(folder, `bedplate-${bench}-witnesses.txt`)
}

/** Adds lines at the end; what is there is never written again. Throws where the folder cannot be written. */
export function appendWitnesses(folder: string, bench: string, witnesses: readonly Witness[]): void {
  const known = new Set(readWitnesses(folder, bench).map(lineOf))
  const lines = witnesses.map(lineOf).filter((each) => !known.has(each))
  if (lines.length === 0) return
  appendFileSync(witnessFile(folder, bench), lines.map((each) => `${each}\n`).join(''), {
    mode: 0o600,
    flush: true,
  })
  syncFolder(folder)
}

/** None where the list is not there or cannot be read; a line that is none is passed over. */
export function readWitnesses(folder: string, bench: string): readonly Witness[] {
  let text: string
  try {
    text = readFileSync(witnessFile(folder, bench), 'utf8')
  } catch {
    return []
  }
  return text.split('\n').flatMap((each) => {
    const [, kind, at = '', build = '', entries, head = ''] = line.exec(each) ?? []
    if (kind === undefined) return []
    return [
      {
        kind: kind as Witness['kind'],
        at,
        build: build === '-' ? '' : build,
        entries: Number(entries),
        head,
      },
    ]
  })
}

function lineOf({ kind, at, build, entries, head }: Witness): string {
  return `${kind} ${at} ${build === '' ? '-' : build} ${entries} ${head}`
}
