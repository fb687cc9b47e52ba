import type { ShopSearch } from '../archive.ts'

const lastCharacter = '\u{10FFFF}'

const inState: { readonly [State in NonNullable<ShopSearch['state']>]: string } = {
  open: 'NOT finished AND NOT voided',
  finished: 'finished AND NOT voided',
  voided: 'voided',
  flagged: 'flagged',
  forked: 'forked',
}

/** The lines of the list, as SQL; `ids` chooses them by SQL of its own. */
export function linesOf(ids: string): string {
  return `
    SELECT b.*, s.engine, s.demo FROM (${ids}) AS page
    JOIN build AS b ON b.id = page.id JOIN spec AS s ON s.sha256 = b.spec_sha256
    ORDER BY b.id DESC`
}

/** The ids that a search finds, the latest first, as SQL and its values. */
export function pageOf({
  words = [],
  kind,
  called,
  from,
  to,
  state,
  before,
  holder,
  most = -1,
}: ShopSearch): {
  readonly sql: string
  readonly values: readonly (string | string[])[]
} {
  const conditions = ['entries > 0']
  const values: (string | string[])[] = []
  const value = (each: string | string[]) => `$${values.push(each)}`
  if (before !== undefined) conditions.push(`id < ${value(before)}::uuid`)
  if (from !== undefined) conditions.push(`started_at >= ${value(from)}::timestamptz`)
  if (to !== undefined) conditions.push(`started_at < ${value(to)}::timestamptz`)
  if (holder !== undefined) conditions.push(`holder = ${value(holder)}`)
  if (state !== undefined) conditions.push(inState[state])
  // The longest word narrows most: its builds are looked up, and each is asked for the other words.
  const [longest, ...others] = words.toSorted((a, b) => b.length - a.length)
  const matches = (word: string) =>
    `word >= ${value(word)} AND word < ${value(word + lastCharacter)}${kind === undefined ? '' : ` AND kind = ${value(kind)}`}`
  const orCalled = (word: string) => {
    const specs = kind === undefined || kind === 'engine' ? (called?.(word) ?? []) : []
    const each = specs.map((sha256) => `decode(${value(sha256)}, 'hex')`)
    return each.length === 0 ? '' : ` OR spec_sha256 IN (${each.join(', ')})`
  }
  if (longest !== undefined)
    conditions.push(`(id IN (SELECT build FROM mention WHERE ${matches(longest)})${orCalled(longest)})`)
  for (const word of others)
    conditions.push(
      `(EXISTS (SELECT FROM mention WHERE mention.build = build.id AND ${matches(word)})${orCalled(word)})`,
    )
  const limit = most < 0 ? '' : ` LIMIT ${Math.trunc(most)}`
  return { sql: `SELECT id FROM build WHERE ${conditions.join(' AND ')} ORDER BY id DESC${limit}`, values }
}
