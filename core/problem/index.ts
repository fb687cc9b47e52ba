import { en, type ReasonText, type Words } from '../words/index.ts'
import { isolated } from './isolated.ts'

export { isolated }

type Sentences = Words['problems']

/** What can go wrong in an expected way. A code exists because it has words: see `core/words/en/problems`. */
export type ProblemCode = keyof Sentences

/** The numbers and names that the sentence of a code needs, and the problem that is its reason where it has one. */
export type Facts<Code extends ProblemCode> = FactsFor<Parameters<Sentences[Code]>[0]>
type FactsFor<Texts> = {
  readonly [Name in keyof Texts]: Texts[Name] extends ReasonText ? Problem : Texts[Name]
}

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

export function isProblemCode(code: string): code is ProblemCode {
  return Object.hasOwn(en.problems, code)
}

/** A text of one table on its way to where it is read: which one, and its facts. */
export type Message<Table> = {
  readonly [Code in keyof Table]: Table[Code] extends (facts: infer Texts) => string
    ? { readonly code: Code; readonly facts: FactsFor<Texts> }
    : never
}[keyof Table]

/** The text that a message asks for, from the table of these words. */
export function textIn<Table extends object>(words: Words, table: Table, message: Message<Table>): string {
  const { code, facts } = message as { readonly code: keyof Table; readonly facts: object }
  const text = table[code] as (facts: object) => string
  const said = Object.entries(facts).map(([name, fact]: [string, unknown]) => [name, textOf(words, fact)])
  return text(Object.fromEntries(said) as object)
}

/** What happened, to which part, and what to do next, in a sentence or two of these words. */
export function sentenceIn(words: Words, problem: Problem): string {
  return textIn(words, words.problems, problem as Message<Sentences>)
}

/** The same in English: for a terminal, a log, and a part that has no choice of language. */
export function sentenceOf(problem: Problem): string {
  return sentenceIn(en, problem)
}

/** A name is set apart from the sentence around it; a reason becomes one. Numbers and lists stay what they are. */
function textOf(words: Words, fact: unknown): unknown {
  if (typeof fact === 'string') return isolated(fact)
  if (isProblem(fact)) return sentenceIn(words, fact)
  if (typeof fact !== 'object' || fact === null || Array.isArray(fact)) return fact
  return Object.fromEntries(Object.entries(fact).map(([name, part]) => [name, textOf(words, part)]))
}

function isProblem(fact: unknown): fact is Problem {
  return typeof fact === 'object' && fact !== null && 'code' in fact && 'facts' in fact && 'path' in fact
}
