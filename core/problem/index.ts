import { en } from '../words/index.ts'
import type { Amount, AmountText, PhraseText, ReasonText, Span, Words } from '../words/index.ts'
import { isolated } from './isolated.ts'

export { isolated }

type Sentences = Words['problems']

/** What can go wrong in an expected way. A code exists because it has words: see `core/words/en/problems`. */
export type ProblemCode = keyof Sentences

/** The amounts and names that the sentence of a code needs, and the problem that is its reason where it has one. */
export type Facts<Code extends ProblemCode> = FactsFor<Parameters<Sentences[Code]>[0]>
type FactsFor<Texts> = { readonly [Name in keyof Texts]: FactFor<Texts[Name]> }
type FactFor<Text> = Text extends ReasonText
  ? Problem
  : Text extends AmountText
    ? Amount | Span
    : Text extends PhraseText
      ? Phrase
      : Text extends string | number | boolean | null
        ? Text
        : FactsFor<Text>

/** One expected fault: its code, the facts its sentence is made of, and where in the input it lies (`''` for the whole). */
export type Problem = {
  [Code in ProblemCode]: { readonly code: Code; readonly facts: Facts<Code>; readonly path: string }
}[ProblemCode]

/** The answer of anything that can fail in an expected way. A bug throws instead; never both for one thing. */
export type Outcome<Value> = Success<Value> | Failure

interface Success<Value> {
  readonly ok: true
  readonly value: Value
}

interface Failure {
  readonly ok: false
  readonly problem: Problem
}

export function done<Value>(value: Value): Outcome<Value> {
  return { ok: true, value }
}

export function problem<Code extends ProblemCode>(code: Code, facts: Facts<Code>, path = ''): Problem {
  return { code, facts, path } as unknown as Problem
}

export function refused<Code extends ProblemCode>(code: Code, facts: Facts<Code>, path = ''): Outcome<never> {
  return { ok: false, problem: problem(code, facts, path) }
}

/** A text of one table on its way to where it is read: which one, and its facts. */
export type Message<Table> = {
  readonly [Code in keyof Table]: Table[Code] extends (facts: infer Texts) => string
    ? { readonly code: Code; readonly facts: FactsFor<Texts> }
    : never
}[keyof Table]

/** A part of a sentence, as it stands in the facts of that sentence. */
export type Phrase = Message<Words['phrases']>

/** The text that a message asks for, from the table of these words. */
export function textIn<Table extends object>(words: Words, table: Table, message: Message<Table>): string {
  const { code, facts } = message as { readonly code: keyof Table; readonly facts: object }
  const text = table[code] as (facts: object) => string
  const texts = Object.entries(facts).map(([name, fact]: [string, unknown]) => [name, textOf(words, fact)])
  return text(Object.fromEntries(texts) as object)
}

/** What happened, to which part, and what to do next, in a sentence or two of these words. */
export function sentenceIn(words: Words, problem: Problem): string {
  const { problems } = words
  // What a host of another version found is not known here: reported as a fault of the program, as any other that it has.
  if (!Object.hasOwn(problems, problem.code)) return problems['program-fault']({})
  return textIn(words, problems, problem as Message<Sentences>)
}

/** The same in English: for a log, and a part that has no choice of language. The window uses it nowhere, and so loads no English for it. */
export function sentenceOf(problem: Problem): string {
  return sentenceIn(en, problem)
}

/** A name is set apart from the sentence around it; a reason becomes one, and an amount a text with its unit. */
function textOf(words: Words, fact: unknown): unknown {
  if (typeof fact === 'string') return isolated(fact)
  if (typeof fact !== 'object' || fact === null) return fact
  if (Array.isArray(fact))
    return fact.map((each: unknown) => (typeof each === 'string' ? each : textOf(words, each)))
  if (isProblem(fact)) return sentenceIn(words, fact)
  if (isPhrase(fact)) return textIn(words, words.phrases, fact)
  if (isAmount(fact)) return words.amounts.amount(fact)
  if (isSpan(fact)) return words.amounts.span(fact)
  return Object.fromEntries(Object.entries(fact).map(([name, part]) => [name, textOf(words, part)]))
}

function isProblem(fact: object): fact is Problem {
  return 'code' in fact && 'facts' in fact && 'path' in fact
}

/** A problem has a path besides, and is asked for first. */
function isPhrase(fact: object): fact is Phrase {
  return 'code' in fact && 'facts' in fact
}

function isAmount(fact: unknown): fact is Amount {
  return typeof fact === 'object' && fact !== null && 'amount' in fact && 'decimals' in fact
}

function isSpan(fact: object): fact is Span {
  return 'upTo' in fact && isAmount(fact.upTo)
}
