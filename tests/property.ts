import fc from 'fast-check'
import { expect, TestRunner } from 'vitest'

type Hooked<Property> = Property & {
  beforeEach(hook: () => void): unknown
  afterEach(hook: () => void): unknown
}

export type PropertyOptions<Values> = fc.Parameters<Values> & {
  /** More than this share of the runs must get to an `expect`: from 0 to 1, a fifth unless said. */
  readonly leastShare?: number
}

declare module 'vitest' {
  interface TaskMeta {
    /** For each property of the test: how many runs got to an `expect`, and how many runs there were. */
    reached?: { readonly reached: number; readonly runs: number }[]
  }
}

/**
 * Runs a property and fails too when few of its runs, or none, came to an `expect`: inputs that take the early way out
 * prove nothing. Runs that `fc.pre` turned away count as runs.
 */
export function checkProperty<Values>(
  property: Hooked<fc.IProperty<Values>>,
  options: PropertyOptions<Values> = {},
): void {
  const count = counting(property)
  fc.assert(property, options)
  count.check(options.leastShare)
}

/** As {@link checkProperty}, for a property that waits. */
export async function checkAsyncProperty<Values>(
  property: Hooked<fc.IAsyncProperty<Values>>,
  options: PropertyOptions<Values> = {},
): Promise<void> {
  const count = counting(property)
  await fc.assert(property, options)
  count.check(options.leastShare)
}

/** Well below what chance makes of a property that gets there every other time, and well above never. */
const usualShare = 0.2

function counting(property: Hooked<object>): { check(leastShare: number | undefined): void } {
  let [reached, runs, before] = [0, 0, 0]
  property.beforeEach(() => void (before = expectsSoFar()))
  property.afterEach(() => {
    runs++
    if (expectsSoFar() > before) reached++
  })
  return {
    check(leastShare = usualShare) {
      const meta = TestRunner.getCurrentTest()?.meta
      if (meta) meta.reached = [...(meta.reached ?? []), { reached, runs }]
      expect(reached / runs, `share of ${runs} runs that reached an assertion`).toBeGreaterThan(leastShare)
    },
  }
}

function expectsSoFar(): number {
  return expect.getState().assertionCalls
}
