import { contract, mostBytesOf, mostComparedBytes } from '../../core/contract/index.ts'
import type { Answer, Output, ParsedInput, RequestName } from '../../core/contract/index.ts'
import { adviceIn } from '../../core/engine/index.ts'
import { problem, refused } from '../../core/problem/index.ts'
import type { Outcome, Problem } from '../../core/problem/index.ts'
import type { Handler, Handlers } from './handlers.ts'

/** Answers any request by name; whatever arrives, an answer comes back and nothing is thrown. */
export type AnswerRequest = (name: string, input: unknown) => Promise<Answer<RequestName>>

/**
 * Puts the parsing of what comes in and goes out around the handlers. What a handler throws is a bug, of which `report` is
 * reported, unless `expected` knows it: a page of the file that cannot be read may turn up at any look.
 */
export function answering(
  handlers: Handlers,
  report: (name: RequestName, error: unknown) => void,
  expected: (error: unknown) => Problem | null = () => null,
): AnswerRequest {
  async function answer<Name extends RequestName>(name: Name, input: unknown): Promise<Answer<Name>> {
    try {
      return await handleRequest(name, handlers[name], input)
    } catch (error) {
      const known = expected(error)
      if (known !== null) return { ok: false, problem: known }
      report(name, error)
      return { ok: false, problem: problem('program-fault', {}) }
    }
  }
  return async (name, input) =>
    isRequestName(name)
      ? answer(name, input)
      : { ok: false, problem: problem('request-unknown', { name: name.slice(0, 40) }) }
}

export function isRequestName(name: string): name is RequestName {
  return Object.hasOwn(contract, name)
}

async function handleRequest<Name extends RequestName>(
  name: Name,
  handler: Handler<Name>,
  input: unknown,
): Promise<Outcome<Output<Name>>> {
  if (isTooLarge(name, input)) return refused('request-too-large', {})
  const parsed = contract[name].input.safeParse(input)
  if (!parsed.success) {
    const [issue] = parsed.error.issues
    const message = issue?.message ?? ''
    return refused(
      'request-unreadable',
      { fault: adviceIn(message) ?? message },
      (issue?.path ?? []).join('.'),
    )
  }
  const broken = brokenText(parsed.data, '')
  if (broken !== null) return refused('text-broken', {}, broken)
  const outcome = await handler(parsed.data as ParsedInput<Name>)
  return outcome.ok
    ? { ok: true, value: contract[name].output.parse(outcome.value) as Output<Name> }
    : outcome
}

/** What a request may bring, by its texts and the number of its values; those that bring a file have more room. */
const mostAsked = { characters: 1024 * 1024, values: 100_000 } as const
const mostCharacters: { readonly [Name in RequestName]?: number } = {
  'builds.import': Infinity, // it is one text, and its length is looked at first
  'drafts.act': mostBytesOf('drafts.act'),
  'library.import': mostBytesOf('library.import'),
  'photos.add': mostBytesOf('photos.add'),
  'pictures.put': mostBytesOf('pictures.put'),
  'verification.compare': Math.ceil((mostComparedBytes * 4) / 3) + 1024,
}

/** Looked at before it is parsed, and the same whichever way it came: from a window by IPC, or over HTTP. */
function isTooLarge(name: RequestName, input: unknown): boolean {
  let characters: number = mostCharacters[name] ?? mostAsked.characters
  let values: number = mostAsked.values
  const left: unknown[] = [input]
  while (left.length > 0) {
    const value = left.pop()
    values -= 1
    if (typeof value === 'string') characters -= value.length
    else if (ArrayBuffer.isView(value) || value instanceof ArrayBuffer) characters -= value.byteLength
    else if (typeof value === 'object' && value !== null) {
      if (Array.isArray(value) && value.length > values) return true
      for (const [key, inside] of Object.entries(value)) {
        if (!Array.isArray(value)) characters -= key.length
        left.push(inside)
      }
    }
    if (characters < 0 || values < 0) return true
  }
  return false
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
