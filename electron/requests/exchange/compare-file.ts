import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { mostComparedBytes } from '../../../core/contract/index.ts'
import type { HeldAgainst } from '../../../core/contract/index.ts'
import { done, problem, refused } from '../../../core/problem/index.ts'
import type { Outcome, Problem } from '../../../core/problem/index.ts'
import { checkRecord, headsIn } from '../../store/index.ts'
import type { Head, Store } from '../../store/index.ts'
import { readExport } from './export-file.ts'
import { lineOf } from '../open-build.ts'

type Line = HeldAgainst['lines'][number]

const sqliteMagic = 'SQLite format 3\0'
/** The head code at the end of the name of an exported file, a table or a printed sheet; or as typed from a sheet. */
const codeInName = /(?:^|[ -])([0-9a-f]{16})(?:\.[a-z.]{1,12})?$/

/**
 * Holds what somebody brings against the record: an export or a backup by its content, anything else by the head code in
 * its name. What the record has confirmed since is no difference. Refuses `verify-file-unknown`, `verify-code-unknown`,
 * and what `readExport` refuses.
 */
export async function compareWith(
  store: Store,
  name: string,
  base64: string | null,
): Promise<Outcome<HeldAgainst>> {
  const content = base64 === null ? null : Buffer.from(base64, 'base64')
  if (content !== null && content.length > mostComparedBytes) return refused('request-too-large', {})
  if (content?.toString('latin1', 0, sqliteMagic.length) === sqliteMagic)
    return withBackup(store, name, content)
  if (content?.toString('latin1', 0, 16).startsWith('{"bedplateBuild"') === true) {
    const read = await readExport(content.toString('utf8'))
    if (!read.ok) return read
    const { build, entries, events } = read.value
    const [first] = events
    const title = first?.event.type === 'build-started' ? `“${first.event.name}”` : name
    const hashes = entries.map(({ sha256 }) => sha256)
    return done({ lines: [comparedBuild(store, { build, title, hashes })] })
  }
  const typed = name.replace(/\s/g, '').toLowerCase()
  const code = /^[0-9a-f]{16}$/.test(typed) ? typed : codeInName.exec(name.trim().toLowerCase())?.[1]
  if (code === undefined) return refused('verify-file-unknown', { name: name.slice(0, 80) })
  return withCode(store, code)
}

/** Opened as a copy of its own: nothing is taken from it but the heads. */
async function withBackup(store: Store, name: string, content: Buffer): Promise<Outcome<HeldAgainst>> {
  const beside = mkdtempSync(join(tmpdir(), 'bedplate-compare-'))
  try {
    const file = join(beside, 'backup.sqlite')
    writeFileSync(file, content, { mode: 0o600 })
    const checked = await checkRecord(file, new AbortController().signal)
    if (!checked.ok || checked.value === null) return refused('backup-unusable', { name: name.slice(0, 80) })
    return done({ lines: headsIn(file).map((head) => comparedBuild(store, head)) })
  } finally {
    rmSync(beside, { recursive: true, force: true })
  }
}

/** The first difference of a build's hashes from those of the record. */
function comparedBuild(store: Store, { build, title, hashes }: Head): Line {
  const row = store.build(build)
  const ours = store.entries(build)
  const name = row === null ? title : lineOf(row).number
  if (ours.length === 0) return bad(name, problem('verify-build-missing', { name: title }))
  const differs = hashes.findIndex((hash, at) => ours[at] !== undefined && ours[at].sha256 !== hash)
  if (differs >= 0) return bad(name, problem('verify-build-differs', { entry: differs + 1 }))
  if (ours.length < hashes.length)
    return bad(name, problem('verify-build-shorter', { entries: ours.length, there: hashes.length }))
  const since = ours.length - hashes.length
  return { good: true, says: { code: 'same-entries', facts: { name, entries: hashes.length, since } } }
}

function bad(name: string, found: Problem): Line {
  return { good: false, says: { code: 'not-same', facts: { name, why: found } } }
}

function withCode(store: Store, code: string): Outcome<HeldAgainst> {
  const found = store.entryOfCode(code)
  if (found === null) return refused('verify-code-unknown', { code })
  const row = store.build(found.build)
  const number = row === null ? found.build : lineOf(row).number
  const since = found.of - found.entry
  const facts = { name: number, entry: found.entry, since }
  return done({ lines: [{ good: true, says: { code: 'entry-has-code', facts } }] })
}
