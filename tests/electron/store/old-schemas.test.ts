import { copyFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { firstBroken, recordName } from '../../../electron/store/index.ts'
import { expectedSchemaDigest, schemaDigest, latestSchemaVersion } from '../../../electron/store/schema.ts'
import { folder, store } from '../bench.ts'
import { asking } from '../requests/asking.ts'

/** A real file of each schema that the record ever had, as the program of that time wrote it. */
const oldSchemas = join(import.meta.dirname, 'old-schemas')
const versions = Array.from({ length: latestSchemaVersion }, (_, at) => at + 1)

function folderWith(version: number): string {
  const inFolder = folder()
  copyFileSync(join(oldSchemas, `schema-${version}.db`), join(inFolder, recordName))
  return inFolder
}

describe('a record of an older schema', () => {
  it('is kept here for every schema there was', () => {
    expect(readdirSync(oldSchemas).sort()).toEqual(
      versions.map((version) => `schema-${version}.db`).toSorted(),
    )
  })

  it.each(versions)(
    'of schema version %i opens, with the schema of today and every entry as it was',
    async (version) => {
      const inFolder = folderWith(version)
      const old = new Database(join(oldSchemas, `schema-${version}.db`), { readonly: true })
      const before = old.prepare('SELECT build, seq, body, sha256 FROM event ORDER BY build, seq').raw().all()
      old.close()
      const opened = await store(inFolder)
      const builds = opened.builds()
      const after = builds
        .toReversed()
        .flatMap(({ id }) => opened.entries(id).map(({ seq, body, sha256 }) => [id, seq, body, sha256]))
      expect(after).toEqual(before)
      for (const { id } of builds) expect(firstBroken(id, opened.entries(id))).toBeNull()
      opened.close()
      const now = new Database(join(inFolder, recordName))
      expect(schemaDigest(now)).toBe(expectedSchemaDigest(latestSchemaVersion))
      now.close()
    },
  )

  it.each(versions)(
    'of schema version %i shows its builds, finds them, and is worked on',
    async (version) => {
      const opened = await store(folderWith(version))
      const { get, act, bugs } = asking(opened)
      const [second, first] = await get('builds.list', {})
      expect(first).toMatchObject({
        name: 'Ferry, port engine',
        serial: 'F-201',
        number: '2026-001',
        entries: 61,
      })
      expect(second).toMatchObject({ name: 'Pump set 7', serial: 'P-7', number: '2026-002', entries: 13 })
      expect(opened.builds({ words: ['brandvold'] }).map(({ id }) => id)).toEqual([second?.id])
      expect(opened.builds({ words: ['2026', '001'], kind: 'number' }).map(({ id }) => id)).toEqual([
        first?.id,
      ])
      const voided = await act(second?.id ?? '', 13, { type: 'void-build', reason: 'Wrong engine' })
      expect(voided).toMatchObject({ ok: true })
      expect(bugs).toEqual([])
    },
  )

  it.each(versions)('of schema version %i keeps what was preferred', async (version) => {
    const opened = await store(folderWith(version))
    expect(opened.preferences()).toMatchObject({ person: 'Ana Ruiz', torqueUnit: 'lbf·ft', theme: 'dark' })
  })

  it.each(versions.slice(0, -1))(
    'of schema version %i is copied first, and the copy is the file as it was',
    async (version) => {
      const inFolder = folderWith(version)
      ;(await store(inFolder)).close()
      const copy = readdirSync(inFolder).find((name) => name.startsWith('before-schema-'))
      const kept = new Database(join(inFolder, copy ?? ''), { readonly: true })
      expect(kept.pragma('user_version', { simple: true })).toBe(version)
      expect(schemaDigest(kept)).toBe(expectedSchemaDigest(version))
      expect(kept.prepare('SELECT count(*) FROM event').pluck().get()).toBe(74)
      kept.close()
    },
  )

  it('without the words of today has them after it was opened', async () => {
    const inFolder = folderWith(11)
    const old = new Database(join(inFolder, recordName))
    old.exec('DELETE FROM mention')
    old.close()
    const opened = await store(inFolder)
    expect(opened.builds({ words: ['brandvold'], kind: 'person' })).toHaveLength(1)
  })
})
