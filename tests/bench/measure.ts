/** What a measure found. Every number carries its unit in its name: `p95Ms`, `ratio`, `writes`. */
export type Found = {
  readonly values: Readonly<Record<string, number>>
  /** Whether the bar holds: `npm run bench` ends with 1 where it does not. A time that is said in the bar is looked at too. */
  readonly holds?: boolean
}

/** One measure. A file `tests/bench/*.bench.ts` exports some of them as `measures`. */
export type Measure = {
  readonly name: string
  /** The bar in words, if there is one. */
  readonly bar?: string
  readonly take: () => Found | Promise<Found>
}
