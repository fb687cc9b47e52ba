import type { AcceptedDoubt, EngineSpec } from '../engine/index.ts'
import type { Problem } from '../problem/index.ts'
import type { Finding } from './finding.ts'

/** A doubt of the audit with who accepted it and why. */
export interface AcceptedFinding extends AcceptedDoubt {
  readonly doubt: Problem
}

/**
 * The findings, each doubt with its acceptance where somebody accepted just that: the same doubt at the same place with the same
 * numbers. A fault is never accepted.
 */
export function withAcceptances(spec: EngineSpec, findings: readonly Finding[]): readonly Finding[] {
  const { accepted = [] } = spec
  if (accepted.length === 0) return findings
  return findings.map((finding) => {
    const { weight, problem } = finding
    const found = accepted.find((each) => each.code === problem.code && each.path === problem.path)
    return weight === 'doubt' && found !== undefined && isOfThese(found, problem)
      ? { ...finding, accepted: found }
      : finding
  })
}

/** An acceptance that a person wrote into a file may leave the numbers out, and then holds for any. */
function isOfThese({ numbers }: AcceptedDoubt, doubt: Problem): boolean {
  if (numbers === undefined) return true
  const now = numbersOf(doubt)
  return now.length === numbers.length && now.every((each, at) => each === numbers[at])
}

/** The numbers that a finding says, in the order of its facts. Its words are left out: they follow the language of the window. */
export function numbersOf({ facts }: Problem): readonly number[] {
  return numbersIn(facts)
}

function numbersIn(fact: unknown): readonly number[] {
  if (typeof fact === 'number') return Number.isFinite(fact) ? [fact] : []
  if (typeof fact !== 'object' || fact === null) return []
  return Object.values(fact).flatMap(numbersIn)
}
