import type { FoundLine, ShopState } from '../../core/contract/index.ts'
import { done, problem } from '../../core/problem/index.ts'
import type { MemoryBuild } from '../bench/memory-build.ts'
import type { MemoryHandlers } from './memory-client.ts'
import { momentOf } from './at-bench.ts'

const at = '2026-03-09T12:00:00.000Z'
const here = { id: '0123456789ab', name: 'Bench 2' }
const other = { id: 'ba9876543210', name: 'Bench 1, left of the door' }

export const sampleJoined: NonNullable<ShopState['joined']> = {
  address: 'postgres://bench@archive.example/bedplate',
  connection: 'open',
  since: at,
  problem: null,
  waiting: { entries: 0, builds: 0 },
  refused: [],
  apart: [],
  commonLists: [],
  benches: [
    { ...here, program: '0.1.0', seenAt: at, isHere: true },
    { ...other, program: '0.1.0', seenAt: at, isHere: false },
  ],
}

const named = { build: '01956f6c-8a00-7000-8000-000000000001', name: 'Pump set 7', number: '2026-002' }

/** Everything that can be said at once. */
export const troubledShop: NonNullable<ShopState['joined']> = {
  ...sampleJoined,
  connection: 'cut',
  problem: problem('shop-unreachable', { host: 'archive.example', code: 'ECONNREFUSED' }),
  waiting: { entries: 31, builds: 2 },
  refused: [{ ...named, why: problem('shop-entry-refused', { entry: 9 }) }],
  commonLists: ['people', 'wrenches'],
  apart: [
    { ...named, entry: 7, line: 'f'.repeat(64), bench: other.name, own: null, counts: null },
    { ...named, entry: 9, line: 'e'.repeat(64), bench: other.name, own: 'Machine shop', counts: 'there' },
  ],
}

/** Open builds at two benches, one of which needs somebody. */
export function sampleShopLines(): readonly FoundLine[] {
  const moments = ['run in mid pass', 'run with a flag', 'turn by an angle'] as const
  return moments.map((moment, index) => ({
    ...momentOf('skerry-3', moment).build.line,
    id: String(index),
    at: { bench: index === 0 ? here : other, isHere: index === 0, asOf: at, isForked: index === 2 },
  }))
}

/** Answers about a shop that the bench has joined, or not. */
export const sampleShop = (joined: ShopState['joined']): MemoryHandlers => ({
  'shop.read': () => done({ bench: here, joined, passwordIn: 'file' }),
  'builds.find': () =>
    done({
      lines: [...sampleShopLines()],
      more: false,
      ...(joined !== null && {
        shop: {
          cut: joined.problem === null ? null : { since: joined.since, problem: joined.problem },
        },
      }),
    }),
  'shop.news': () => done({ isJoined: false, number: 0, builds: [] }),
})

const sampleCut = {
  since: troubledShop.since,
  problem: problem('shop-unreachable', { host: 'archive.example', code: 'ECONNREFUSED' }),
}

/** A build of the shop as the host gives it. */
export function atBenchOf(
  build: MemoryBuild,
  where: 'here' | 'elsewhere' | 'cut off' | 'apart',
): MemoryHandlers {
  const { name } = build.line
  const benches = {
    ...{
      here,
      isJoined: true,
      asOf: where === 'here' ? null : at,
      cut: where === 'cut off' ? sampleCut : null,
    },
    begunAt: where === 'elsewhere' || where === 'cut off' ? other : null,
    apart:
      where === 'apart' ? problem('build-apart', { name, bench: other.name, entry: 7, own: null }) : null,
  }
  return { ...sampleShop(sampleJoined), 'builds.open': () => done({ ...build.opened, benches }) }
}
