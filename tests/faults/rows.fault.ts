import { randomUUID } from 'node:crypto'
import Database from 'better-sqlite3'
import type { Answer, Output, RequestName } from '../../core/contract/index.ts'
import { sentenceOf } from '../../core/problem/index.ts'
import { openStore, sha256 } from '../../electron/store/index.ts'
import { alter } from '../electron/alter.ts'
import { answersOn } from '../electron/answers.ts'
import { chance } from './chance.ts'
import { found, type Fault } from './fault.ts'
import { withFolder } from './folder.ts'

const engines = ['skerry-3', 'tarn-4', 'fen-1'] as const

/** Requests on the record of a folder, and what in the program went wrong meanwhile. */
async function opened(folder: string) {
  const store = await openStore(folder, () => new Date())
  if (!store.ok) throw new Error(store.problem.code)
  const bugs: string[] = []
  const dependencies = {
    now: () => new Date(),
    newId: randomUUID,
    report: (line: string) => void bugs.push(line),
  }
  const { answer, stop } = answersOn(store.value, dependencies)
  const ask = async <Name extends RequestName>(name: Name, input: unknown) =>
    (await answer(name, input)) as Answer<Name>
  const get = async <Name extends RequestName>(name: Name, input: unknown): Promise<Output<Name>> => {
    const reply = await ask(name, input)
    if (!reply.ok) throw new Error(`${name}: ${sentenceOf(reply.problem)}`)
    return reply.value
  }
  const close = async (): Promise<void> => {
    await stop()
    store.value.close()
  }
  return { ask, get, bugs, close }
}

type Opened = Awaited<ReturnType<typeof opened>>

/** A build of each of three engines; their ids. */
async function threeBuilds(folder: string): Promise<readonly string[]> {
  const { get, close } = await opened(folder)
  const ids: string[] = []
  for (const engine of engines) {
    const start = { engine, name: `Ferry ${engine}`, serial: '', person: 'Ana Ruiz' }
    ids.push((await get('builds.start', start)).line.id)
  }
  await get('people.keep', { id: null, name: 'Bo Lind', role: 'mechanic', by: null })
  await get('preferences.keep', { theme: 'dark' })
  await get('verification.keep-head', { build: ids[0] })
  await close()
  return ids
}

async function breaksIn({ get }: Opened): Promise<number> {
  await get('verification.start', { build: null })
  for (;;) {
    const at = await get('verification.read', {})
    if (at.state === 'done') return at.breaks.length
    if (at.state !== 'running') throw new Error(`verifying is ${at.state}`)
    await new Promise((resolve) => setTimeout(resolve, 2))
  }
}

/** A spec that asks for three times as much somewhere. */
function tripled(text: string): string {
  const changed = text.replace(/"(\d+) N·m/, (_, value) => `"${Number(value) * 3} N·m`)
  if (changed === text) throw new Error('the spec has no torque that could be tripled')
  return changed
}

/** What a build rests on is exchanged past the guards: by pointing the list elsewhere, by another text, or by none. */
const swaps = {
  pointed(build: string, text: string): string[] {
    const changed = tripled(text)
    const hash = sha256(changed)
    return [
      `INSERT INTO spec (sha256, text, engine, demo) VALUES ('${hash}', '${changed.replaceAll("'", "''")}', 'x', 1)`,
      `UPDATE build SET spec_sha256 = '${hash}' WHERE id = '${build}'`,
    ]
  },
  altered(_: string, text: string): string[] {
    const changed = tripled(text)
    return [`UPDATE spec SET text = '${changed.replaceAll("'", "''")}' WHERE sha256 = '${sha256(text)}'`]
  },
  gone(_: string, text: string): string[] {
    return [`DELETE FROM spec WHERE sha256 = '${sha256(text)}'`]
  },
} satisfies Record<string, (build: string, text: string) => string[]>

/** What may stand in a column of a row that went bad. */
const bads = [
  "''",
  "'\u0000'",
  "'yesterday'",
  '-1',
  '0',
  '99999999999',
  'NULL',
  "x'00ff'",
  "'{'",
  "'\ud83d\ude00'",
  "'__proto__'",
]

/** Everything in the record that is not under the chain, and the entries themselves. */
const columns = [
  'build.year',
  'build.ordinal',
  'build.name',
  'build.serial',
  'build.started_at_utc',
  'build.finished',
  'build.voided',
  'build.flagged',
  'build.id',
  'event.body',
  'event.sha256',
  'event.seq',
  'person.name',
  'person.role',
  'person.badge',
  'person.pin',
  'person.id',
  'preference.value_json',
  'preference.name',
  'spec.engine',
  'spec.demo',
  'mention.word',
  'mention.kind',
  'witness.head',
  'witness.entries',
  'witness.at_utc',
  'witness.build',
]

/** By what a row of each table is found. */
const keys: Readonly<Record<string, string>> = {
  spec: 'sha256',
  event: 'build, seq',
  build: 'id',
  preference: 'name',
  mention: 'word, kind, build',
  person: 'id',
  witness: 'build, entries, head, kind',
}

export const faults: readonly Fault[] = [
  {
    name: 'swapped spec',
    must: 'no build goes on with another spec than its first entry names, and verifying tells the exchange',
    async run(seed) {
      const random = chance(seed + 21)
      const wrong: string[] = []
      const counts = { swaps: 0, readOnly: 0, refused: 0, told: 0, othersOpen: 0 }
      for (const [name, swap] of Object.entries(swaps))
        await withFolder(async (folder) => {
          const ids = await threeBuilds(folder)
          const which = Math.floor(random() * ids.length)
          const build = ids[which] ?? ''
          const before = await opened(folder)
          const { specText } = await before.get('builds.open', { build })
          await before.close()
          alter(folder, ...swap(build, specText))
          const after = await opened(folder)
          counts.swaps += 1
          const reply = await after.ask('builds.open', { build })
          if (!reply.ok) counts.refused += 1
          else if (reply.value.readOnly !== null) counts.readOnly += 1
          else wrong.push(`${name}: the build is open for work`)
          const act = { type: 'amend', what: 'note', text: 'x' }
          const acted = await after.ask('builds.act', { build, after: 1, person: 'Ana Ruiz', command: act })
          if (acted.ok) wrong.push(`${name}: something was added`)
          if ((await after.ask('builds.export', { build })).ok)
            wrong.push(`${name}: it was exported as sound`)
          if ((await breaksIn(after)) > 0) counts.told += 1
          else wrong.push(`${name}: verifying found nothing`)
          for (const other of ids.filter((id) => id !== build)) {
            const sound = await after.ask('builds.open', { build: other })
            if (sound.ok && sound.value.readOnly === null) counts.othersOpen += 1
            else wrong.push(`${name}: another build is closed too`)
          }
          wrong.push(...after.bugs.map((bug) => `${name}: ${bug}`))
          await after.close()
        })
      return found(counts, wrong)
    },
  },
  {
    name: 'bad rows',
    must: 'one bad row takes nothing else away: every list is there, every other build opens, verifying comes to its end',
    async run(seed) {
      const random = chance(seed + 22)
      const wrong: string[] = []
      const counts = { rows: 0, refusedBySqlite: 0, told: 0 }
      const pick = <Value>(from: readonly Value[]): Value => from[Math.floor(random() * from.length)]!
      for (let round = 0; round < 40; round += 1)
        await withFolder(async (folder) => {
          const ids = await threeBuilds(folder)
          const [table = '', column = ''] = pick(columns).split('.')
          const value = pick(bads)
          const what = `${table}.${column} = ${JSON.stringify(value)}`
          const key = keys[table]
          const change = `UPDATE ${table} SET ${column} = ${value} WHERE (${key}) = (SELECT ${key} FROM ${table} LIMIT 1)`
          try {
            alter(folder, change)
          } catch (error) {
            counts.refusedBySqlite += 1 // a check or the kind of the column keeps it out
            if (!(error instanceof Database.SqliteError)) throw error
            return
          }
          counts.rows += 1
          const after = await opened(folder)
          const listed = await after.get('builds.list', {})
          if (listed.length !== ids.length)
            wrong.push(`${what}: ${listed.length} of ${ids.length} are listed`)
          for (const list of [
            'people.list',
            'preferences.read',
            'wrenches.list',
            'backups.list',
            'host.doctor',
          ] as const)
            if (!(await after.ask(list, {})).ok) wrong.push(`${what}: ${list} is refused`)
          let open = 0
          for (const build of ids) {
            const reply = await after.ask('builds.open', { build })
            if (reply.ok && reply.value.readOnly === null) open += 1
          }
          if (open < ids.length - 1) wrong.push(`${what}: ${open} of ${ids.length} builds open`)
          if ((await breaksIn(after)) > 0) counts.told += 1
          wrong.push(...after.bugs.map((bug) => `${what}: ${bug}`))
          await after.close()
        })
      return found(counts, counts.rows < 10 ? [...wrong, 'too few rows went bad'] : wrong)
    },
  },
]
