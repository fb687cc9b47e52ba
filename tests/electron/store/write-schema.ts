import { mkdtempSync, renameSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { sentenceOf } from '../../../core/problem/index.ts'
import { evolve, replay } from '../../../core/builds/index.ts'
import type { Output } from '../../../core/contract/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { latestSchemaVersion } from '../../../electron/store/schema.ts'
import { openStore, recordName } from '../../../electron/store/index.ts'
import { answersOn } from '../answers.ts'
import { nextCommand } from '../mechanic.ts'

// `node tests/electron/store/write-schema.ts`: writes a small real record of today's schema to `old-schemas/`, to be kept when the
// schema changes. Two builds, of 61 and 13 entries, and a draft that was published.
const folder = mkdtempSync(join(tmpdir(), 'bedplate-schema-'))
let at = Date.parse('2026-03-02T07:29:59.000Z')
let drawn = 0
const now = (): Date => new Date((at += 1000))
const opened = await openStore(folder, now)
if (!opened.ok) throw new Error(opened.problem.code)
const { answer } = answersOn(opened.value, {
  now,
  newId: () => `01956f6c-8a00-7000-8000-${String((drawn += 1)).padStart(12, '0')}`,
})

await work('Ferry, port engine', 'F-201', 'Ana Ruiz', 60)
await work('Pump set 7', 'P-7', 'I. Brandvold', 12)
await get('preferences.keep', { person: 'Ana Ruiz', torqueUnit: 'lbf·ft', theme: 'dark' })
const draft = (await get('drafts.begin', {
  ...{ person: 'Ana Ruiz', name: 'Heron 4', from: 'Heron workshop manual, 2nd edition' },
  origin: { kind: 'copy', engine: 'skerry-3', revision: 0 },
})) as Output<'drafts.begin'>
for (const act of [
  {
    type: 'edit',
    edit: {
      what: { code: 'removed', facts: { what: { code: 'placeInFile', facts: { parts: [] } } } },
      patches: [{ op: 'replace', path: '/case/bore', value: '71 mm' }],
    },
  },
  { type: 'undo' },
])
  await get('drafts.act', {
    ...{ draft: draft.line.id, person: 'Ana Ruiz', act },
    after: act.type === 'undo' ? 1 : 0,
  })
await get('drafts.publish', { draft: draft.line.id, after: 2, person: 'Ana Ruiz' })
opened.value.close()

const file = join(folder, recordName)
const db = new Database(file)
db.pragma('journal_mode = DELETE')
db.exec('VACUUM')
db.close()
renameSync(file, join(import.meta.dirname, `old-schemas/schema-${latestSchemaVersion}.db`))
rmSync(folder, { recursive: true })

async function work(name: string, serial: string, person: string, commands: number): Promise<void> {
  const begun = (await get('builds.start', {
    engine: 'skerry-3',
    name,
    serial,
    person,
  })) as Output<'builds.start'>
  const read = readSpec(begun.specText)
  if (!read.ok) throw new Error('the spec cannot be read')
  let state = replay(begun.events)
  for (let done = 0; done < commands; done += 1) {
    const command = nextCommand(read.spec, state)
    const input = { build: begun.line.id, after: state.seq, person, command }
    state = ((await get('builds.act', input)) as Output<'builds.act'>).events.reduce(evolve, state)
  }
}

async function get(name: string, input: unknown): Promise<unknown> {
  const reply = await answer(name, input)
  if (!reply.ok) throw new Error(sentenceOf(reply.problem))
  return reply.value
}
