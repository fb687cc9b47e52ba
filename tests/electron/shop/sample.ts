import { searchWords, type BuildEvent, type Mention } from '../../../core/builds/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'
import type { Consignment, ListedBuild } from '../../../electron/shop/index.ts'
import { seal, type StoredEntry } from '../../../electron/store/chain/chain.ts'
import { sha256, type KeptSpec } from '../../../electron/store/index.ts'

export const first = 'a00000000001'
export const second = 'a00000000002'

export const ferryEngine: KeptSpec = { text: '{"name":"Ferry 4"}', engine: 'Ferry 4', demo: true }

export function value<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem))
  return outcome.value
}

/** Ids as the program makes them: the milliseconds of the start, then a number (RFC 9562, 5.7). */
export function buildId(started: string, number: number): string {
  const time = Date.parse(started).toString(16).padStart(12, '0')
  return `${time.slice(0, 8)}-${time.slice(8)}-7000-8000-${number.toString(16).padStart(12, '0')}`
}

const started = (): BuildEvent => ({
  type: 'build-started',
  version: 1,
  spec: 'ferry-4',
  specRevision: '1',
  name: 'Ferry, port engine',
  serial: 'F-201',
  specSha256: sha256(ferryEngine.text),
})

const fitted = (step: string): BuildEvent => ({ type: 'part-fitted', version: 1, step })

/** A build of so many entries. With a `word`, what comes after `common` entries is another than without it. */
export function chainOf(build: string, count: number, common = count, word = ''): readonly StoredEntry[] {
  const entries: StoredEntry[] = []
  for (let seq = 1; seq <= count; seq += 1)
    entries.push(
      seal({
        build,
        seq,
        at: `2026-11-02T08:00:${String(seq % 60).padStart(2, '0')}.000Z`,
        person: 'Ana Ruiz',
        event: seq === 1 ? started() : fitted(seq > common ? `step-${seq}-${word}` : `step-${seq}`),
        previous: entries.at(-1)?.sha256 ?? null,
      }),
    )
  return entries
}

export const listed: ListedBuild = {
  year: 2026,
  ordinal: 1,
  name: 'Ferry, port engine',
  serial: 'F-201',
  specSha256: sha256(ferryEngine.text),
  startedAtUtc: '2026-11-02T08:00:01.000Z',
  lastAtUtc: '2026-11-02T08:00:02.000Z',
  finished: false,
  voided: false,
  flagged: false,
  holder: first,
  standing: null,
}

export const mentions: readonly Mention[] = [
  ...searchWords('Ferry, port engine').map((word) => ({ kind: 'name', word }) as const),
  ...searchWords('F-201').map((word) => ({ kind: 'serial', word }) as const),
  ...searchWords('Ferry 4').map((word) => ({ kind: 'engine', word }) as const),
]

export function consignment(
  build: string,
  entries: readonly StoredEntry[],
  {
    bench = first,
    counts = null,
    ...about
  }: Partial<ListedBuild> &
    Partial<Pick<Consignment, 'bench' | 'counts'>> & { readonly mentions?: readonly Mention[] } = {},
): Consignment {
  const { mentions: words = entries[0]?.seq === 1 ? mentions : [], ...rest } = about
  return { build, bench, entries, listed: { ...listed, ...rest }, mentions: words, counts }
}
