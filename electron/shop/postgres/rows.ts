import { z } from 'zod'
import { benchName } from '../../../core/builds/index.ts'
import type { ListItem } from '../../store/index.ts'
import type { Fork, ShopBench, ShopBuild, ShopEntry } from '../archive.ts'
import { unreadableAnswer } from '../fault.ts'

/** Makes of a row what it says. Throws where that is nothing the archive would say: what is at the address may be anything. */
function readable<Row, Value>(form: z.ZodType<Value>, made: (row: Row) => unknown): (row: Row) => Value {
  return (row) => {
    try {
      return form.parse(made(row))
    } catch {
      throw unreadable()
    }
  }
}

/** Of an answer of which nothing is to be believed. */
export function unreadable(): Error {
  return Object.assign(new Error('the answer cannot be read'), { code: unreadableAnswer })
}

const hash = z.string().regex(/^[0-9a-f]{64}$/)
const bench = benchName.shape.id
const time = z.iso.datetime()
const count = z.int().min(0)

/** A line of `build` with what the list says of its spec. */
export interface BuildRow {
  readonly id: string
  readonly year: number
  readonly ordinal: number
  readonly name: string
  readonly serial: string
  readonly spec_sha256: Buffer
  readonly started_at: Date
  readonly last_at: Date
  readonly finished: boolean
  readonly voided: boolean
  readonly flagged: boolean
  readonly holder: string
  readonly standing: string | null
  readonly entries: number
  readonly head_sha256: Buffer | null
  readonly bench: string | null
  readonly received_at: Date
  readonly forked: boolean
  /** 64 bits come as a text. */
  readonly change: string
  readonly engine: string
  readonly demo: boolean
}

const build = z.object({
  ...{ id: z.guid(), year: z.int(), ordinal: count, name: z.string(), serial: z.string(), specSha256: hash },
  ...{
    startedAtUtc: time,
    lastAtUtc: time,
    finished: z.boolean(),
    voided: z.boolean(),
    flagged: z.boolean(),
  },
  ...{
    holder: bench,
    standing: z.string().nullable(),
    engine: z.string(),
    demo: z.boolean(),
    entries: count,
  },
  // None while the first entries are on their way.
  ...{ headSha256: z.union([hash, z.literal('')]), bench: z.union([bench, z.literal('')]) },
  ...{ receivedAtUtc: time, forked: z.boolean(), change: count },
})

export const buildIn = readable(build, (row: BuildRow): ShopBuild => {
  return {
    id: row.id,
    year: row.year,
    ordinal: row.ordinal,
    name: row.name,
    serial: row.serial,
    specSha256: row.spec_sha256.toString('hex'),
    startedAtUtc: row.started_at.toISOString(),
    lastAtUtc: row.last_at.toISOString(),
    finished: row.finished,
    voided: row.voided,
    flagged: row.flagged,
    holder: row.holder,
    standing: row.standing,
    engine: row.engine,
    demo: row.demo,
    entries: row.entries,
    headSha256: row.head_sha256?.toString('hex') ?? '',
    bench: row.bench ?? '',
    receivedAtUtc: row.received_at.toISOString(),
    forked: row.forked,
    change: Number(row.change),
  }
})

export interface EntryRow {
  readonly seq: number
  readonly body: string
  readonly sha256: Buffer
  readonly bench: string
}

const entry = z.object({ seq: z.int().min(1), body: z.string(), sha256: hash, bench })

export const entryIn = readable(entry, ({ seq, body, sha256, bench }: EntryRow): ShopEntry => ({
  seq,
  body,
  sha256: sha256.toString('hex'),
  bench,
}))

export interface ForkRow extends EntryRow {
  readonly build: string
  readonly root_seq: number
  readonly root_sha256: Buffer
  readonly by_bench: string | null
  readonly person: string | null
  readonly reason: string | null
  readonly at: Date | null
}

/** Rows in the order of their forks, and of their numbers in each. */
export function forksIn(rows: readonly ForkRow[]): readonly Fork[] {
  const forks = new Map<string, Fork>()
  for (const row of rows) {
    const { build, root_seq: at, by_bench: bench, person, reason } = row
    const sha256 = row.root_sha256.toString('hex')
    const key = `${build} ${sha256}`
    const settled =
      row.at === null
        ? null
        : { bench: bench ?? '', person: person ?? '', reason: reason ?? '', atUtc: row.at.toISOString() }
    const before = forks.get(key)?.entries ?? []
    forks.set(key, { build, at, sha256, settled, entries: [...before, entryIn(row)] })
  }
  return [...forks.values()]
}

export interface BenchRow {
  readonly id: string
  readonly name: string
  readonly program: string
  readonly seen_at: Date
}

const greeted = benchName.extend({ program: z.string(), seenAtUtc: time })

export const benchIn = readable(greeted, ({ id, name, program, seen_at: seen }: BenchRow): ShopBench => ({
  ...{ id, name, program },
  seenAtUtc: seen.toISOString(),
}))

export interface ItemRow {
  readonly id: string
  readonly json: string | null
  readonly at: Date
  readonly bench: string
}

const item = z.object({ id: z.string(), json: z.string().nullable(), atUtc: time, bench })

export const itemIn = readable(item, ({ id, json, at, bench }: ItemRow): ListItem => ({
  id,
  json,
  atUtc: at.toISOString(),
  bench,
}))
