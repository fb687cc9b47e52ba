/** What a fault run found. Every number says in its name what it counts. */
export type Found =
  | {
      readonly holds: boolean
      readonly counts: Readonly<Record<string, number>>
      readonly wrong?: readonly string[]
    }
  | { readonly skipped: string }

/** One thing that goes wrong in a workshop, done on purpose. A file `*.fault.ts` exports some of them as `faults`. */
export interface Fault {
  readonly name: string
  /** What must hold, in words. */
  readonly must: string
  /** The same seed does the same again, as far as the machine lets it: when a process is killed is also up to the machine. */
  readonly run: (seed: number) => Promise<Found>
}

/** Holds where nothing is wrong; at most five wrongs are told, since one is enough to look for the cause. */
export function found(counts: Readonly<Record<string, number>>, wrong: readonly string[]): Found {
  return wrong.length === 0 ? { holds: true, counts } : { holds: false, counts, wrong: wrong.slice(0, 5) }
}
