import type { Mutation } from './mutations.ts'

/** A change that no test can notice, or that none needs to. */
interface Survivor {
  readonly file: string
  /** Text that the changed line has, and what is changed in it. */
  readonly line: string
  readonly change: string
  readonly reason: string
}

const survivors: readonly Survivor[] = []

/** Why a change is not noticed; null where that is not known, and a test is missing. */
export function reasonFor({ file, original, changed, text }: Mutation): string | null {
  const change = `${original} → ${changed}`
  return (
    survivors.find((each) => each.file === file && text.includes(each.line) && each.change === change)
      ?.reason ?? null
  )
}
