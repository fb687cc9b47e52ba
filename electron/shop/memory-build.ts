import type { Consignment, Fork, ShopBuild, ShopEntry, ShopSearch } from './archive.ts'
import { foundBy } from './found-by.ts'
import type { Root } from './placing.ts'

/** A build in an archive in memory. */
export interface MemoryBuild {
  row: ShopBuild
  readonly entries: ShopEntry[]
  readonly mentions: ReturnType<typeof foundBy>[number][]
  readonly forks: Map<
    string,
    { readonly root: Root; readonly entries: ShopEntry[]; settled: Fork['settled'] }
  >
}

export function hasFork({ forks }: MemoryBuild): boolean {
  return [...forks.values()].some(({ settled }) => settled === null)
}

/** Whether the list says something else of the build now. */
export function list(build: MemoryBuild, consignment: Consignment): boolean {
  const before = build.row
  build.row = { ...before, ...consignment.listed }
  build.mentions.push(...foundBy(consignment))
  return JSON.stringify(build.row) !== JSON.stringify(before)
}

export function isFound({ row, mentions }: MemoryBuild, search: ShopSearch): boolean {
  const { words = [], kind, called, from, to, state, before, holder } = search
  const isCalled = (word: string) =>
    (kind === undefined || kind === 'engine') && (called?.(word) ?? []).includes(row.specSha256)
  const inState = {
    open: !row.finished && !row.voided,
    finished: row.finished && !row.voided,
    voided: row.voided,
    flagged: row.flagged,
    forked: row.forked,
  }
  return (
    (before === undefined || row.id < before) &&
    (from === undefined || row.startedAtUtc >= from) &&
    (to === undefined || row.startedAtUtc < to) &&
    (holder === undefined || row.holder === holder) &&
    (state === undefined || inState[state]) &&
    words.every(
      (word) =>
        isCalled(word) ||
        mentions.some((each) => each.word.startsWith(word) && (kind === undefined || each.kind === kind)),
    )
  )
}
