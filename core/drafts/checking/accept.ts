import { numbersOf } from '../../audit/index.ts'
import type { SpecDocument } from '../../engine/index.ts'
import type { Problem } from '../../problem/index.ts'

/** Who looked into a doubt of the audit, and why it may stand. */
export interface Acceptance {
  readonly reason: string
  readonly by: string
  /** ISO 8601, the day. */
  readonly on: string
}

/** The document with a doubt accepted, in the place of what was said of it before. A fault is for `audit` a fault all the same. */
export function withAccepted(document: SpecDocument, doubt: Problem, why: Acceptance): SpecDocument {
  const numbers = [...numbersOf(doubt)]
  const accepted = { code: doubt.code, path: doubt.path, numbers, ...why }
  return { ...document, accepted: [...others(document, doubt), accepted] }
}

/** The document with the doubt open again. */
export function withoutAccepted(document: SpecDocument, doubt: Problem): SpecDocument {
  const { accepted: _, ...rest } = document
  const left = others(document, doubt)
  return left.length === 0 ? rest : { ...rest, accepted: left }
}

function others({ accepted = [] }: SpecDocument, { code, path }: Problem) {
  return accepted.filter((each) => each.code !== code || each.path !== path)
}
