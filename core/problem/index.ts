import { en, type Words } from '../words/index.ts'
import { isolated } from './isolated.ts'

export { isolated }

type Sentences = Words['problems']

/** What can go wrong in an expected way. A code exists because it has words: see `core/words/en/problems`. */
export type ProblemCode = keyof Sentences

/** The numbers and names that the sentence of a code needs. */
export type Facts<Code extends ProblemCode> = Parameters<Sentences[Code]>[0]

/** One expected fault: its code, the facts its sentence is made of, and where in the input it lies (`''` for the whole). */
export type Problem = {
  [Code in ProblemCode]: { readonly code: Code; readonly facts: Facts<Code>; readonly path: string }
}[ProblemCode]

/** The answer of anything that can fail in an expected way. A bug throws instead; never both for one thing. */
export type Outcome<Value> =
  { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly problem: Problem }

export function done<Value>(value: Value): Outcome<Value> {
  return { ok: true, value }
}

export function problem<Code extends ProblemCode>(code: Code, facts: Facts<Code>, path = ''): Problem {
  return { code, facts, path } as unknown as Problem
}

export function refused<Code extends ProblemCode>(code: Code, facts: Facts<Code>, path = ''): Outcome<never> {
  return { ok: false, problem: problem(code, facts, path) }
}

/** What happened, to which part, and what to do next, in a sentence or two for the person at the bench. */
export function sentenceOf(problem: Problem): string {
  const sentence = en.problems[problem.code] as (facts: Problem['facts']) => string
  const facts = Object.entries(problem.facts).map(([name, fact]: [string, unknown]) => [
    name,
    typeof fact === 'string' ? isolated(fact) : fact,
  ])
  return sentence(Object.fromEntries(facts) as Problem['facts'])
}
