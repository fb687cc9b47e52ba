import type { Problem } from '../core/problem/index.ts'

/** A problem in one line, as `code path: facts`. Where it is of one file, its place is left out: the path says it. */
export function lineOf(problem: Problem): string {
  const facts = factsIn('', problem.facts).join(', ')
  const { code, path } = problem
  return [path === '' ? code : `${code} ${path}`, ...(facts === '' ? [] : [facts])].join(': ')
}

/** What a problem says, each fact by its name: `least=30 µm`. */
function factsIn(name: string, fact: unknown): readonly string[] {
  if (fact === null || fact === undefined || fact === '' || fact === false) return []
  if (name === 'place' && typeof fact === 'object') return []
  if (typeof fact !== 'object') return [`${name}=${textOf(fact)}`]
  if (Array.isArray(fact)) return fact.length === 0 ? [] : [`${name}=${fact.flatMap(valuesIn).join(' ')}`]
  if ('amount' in fact && 'unit' in fact)
    return [`${name}=${`${textOf(fact.amount)} ${textOf(fact.unit)}`.trim()}`]
  return Object.entries(fact).flatMap(([key, each]) => factsIn(key === 'code' ? name : key, each))
}

const valuesIn = (entry: unknown): readonly string[] =>
  typeof entry === 'object' ? factsIn('', entry) : [textOf(entry)]

const textOf = (value: unknown): string => (typeof value === 'string' ? value : JSON.stringify(value))
