import {
  contract,
  type Answer,
  type Output,
  type ParsedInput,
  type RequestName,
  type ToldProblem,
} from '../../core/contract/index.ts'
import { problem, refused, sentenceOf, type Outcome, type Problem } from '../../core/problem/index.ts'
import type { Handler, Handlers } from './handlers.ts'

/** Answers any request by name; whatever arrives, an answer comes back and nothing is thrown. */
export type Answering = (name: string, input: unknown) => Promise<Answer<RequestName>>

/**
 * Puts the parsing of what comes in and goes out around the handlers. What a handler throws is a bug, of which `report` is
 * told, unless `expected` knows it: a page of the file that cannot be read may turn up at any look.
 */
export function answering(
  handlers: Handlers,
  report: (name: RequestName, error: unknown) => void,
  expected: (error: unknown) => Problem | null = () => null,
): Answering {
  async function answer<Name extends RequestName>(name: Name, input: unknown): Promise<Answer<Name>> {
    try {
      const outcome = await handled(name, handlers[name], input)
      return outcome.ok ? outcome : { ok: false, problem: told(outcome.problem) }
    } catch (error) {
      const known = expected(error)
      if (known !== null) return { ok: false, problem: told(known) }
      report(name, error)
      return { ok: false, problem: told(problem('program-fault', {})) }
    }
  }
  return async (name, input) =>
    isRequestName(name)
      ? answer(name, input)
      : { ok: false, problem: told(problem('request-unknown', { name: name.slice(0, 40) })) }
}

export function isRequestName(name: string): name is RequestName {
  return Object.hasOwn(contract, name)
}

/** A problem as it goes to the person: with its sentence. */
export function told(problem: Problem): ToldProblem {
  return { code: problem.code, path: problem.path, sentence: sentenceOf(problem) }
}

async function handled<Name extends RequestName>(
  name: Name,
  handler: Handler<Name>,
  input: unknown,
): Promise<Outcome<Output<Name>>> {
  const parsed = contract[name].input.safeParse(input)
  if (!parsed.success) {
    const [issue] = parsed.error.issues
    return refused('request-unreadable', { fault: issue?.message ?? '' }, (issue?.path ?? []).join('.'))
  }
  const broken = brokenText(parsed.data, '')
  if (broken !== null) return refused('text-broken', {}, broken)
  const outcome = await handler(parsed.data as ParsedInput<Name>)
  return outcome.ok
    ? { ok: true, value: contract[name].output.parse(outcome.value) as Output<Name> }
    : outcome
}

/** Where a text with half a surrogate pair lies: such a text has no canonical form and could not be recorded. */
function brokenText(value: unknown, path: string): string | null {
  if (typeof value === 'string') return value.isWellFormed() ? null : path
  if (typeof value !== 'object' || value === null) return null
  for (const [key, inside] of Object.entries(value)) {
    const found = brokenText(inside, path === '' ? key : `${path}.${key}`)
    if (found !== null) return found
  }
  return null
}
