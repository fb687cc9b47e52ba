/** What a measure found. Every number carries its unit in its name: `p95Ms`, `ratio`, `writes`. */
export type Found = {
  readonly values: Readonly<Record<string, number>>
  /**
   * Whether the bar holds, for counts, ratios and the time of a scene, which nothing but the processor has a part in. Other times are
   * only reported: they are those of the machine.
   */
  readonly holds?: boolean
}

/** One measure. A file `tests/bench/*.bench.ts` exports some of them as `measures`. */
export type Measure = {
  readonly name: string
  /** The bar in words, if there is one. */
  readonly bar?: string
  readonly take: () => Found | Promise<Found>
}
