import { done, refused, type Outcome } from '../problem/index.ts'

/** White space, then one token of JSON (RFC 8259); the token is the first group. */
const nextToken =
  /[ \t\n\r]*("(?:[ !#-[\]-\u{10FFFF}]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null|[{}[\],:])/uy

const deepestNesting = 40

type ExpectedToken =
  | 'value'
  | 'value-or-end'
  | 'key'
  | 'key-or-end'
  | 'colon'
  | 'comma-or-bracket'
  | 'comma-or-brace'
  | 'nothing'

/**
 * The value of a JSON text. `JSON.parse` says where a text breaks off in words that differ from case to case, and takes
 * the last of two equal keys without a word; so the tokens are walked here first.
 *
 * Refuses `spec-not-json`, `spec-key-twice`, `spec-too-deep`, each with its line.
 */
export function readJson(text: string): Outcome<unknown> {
  const open: (Set<string> | null)[] = []
  let expected: ExpectedToken = 'value'
  nextToken.lastIndex = 0
  for (let from = 0; ; from = nextToken.lastIndex) {
    const token = nextToken.exec(text)?.[1]
    if (token === undefined && expected === 'nothing' && text.slice(from).trim() === '')
      return done(JSON.parse(text))
    const at = token === undefined ? startOfNext(text, from) : nextToken.lastIndex - token.length
    const after: ReturnType<typeof step> = token === undefined ? null : step(token, expected, open)
    if (after === null) return refused('spec-not-json', { ...placeIn(text, at), wanted: expected })
    if (after === 'key-twice') return refused('spec-key-twice', { ...placeIn(text, at), key: token ?? '' })
    if (open.length > deepestNesting)
      return refused('spec-too-deep', { ...placeIn(text, at), levels: deepestNesting })
    expected = after
  }
}

/** What may follow a token; null when the token may not stand here. `open` holds the keys of each open object, null for a list. */
function step(
  token: string,
  expected: ExpectedToken,
  open: (Set<string> | null)[],
): ExpectedToken | 'key-twice' | null {
  const closes = (expected === 'key-or-end' || expected === 'comma-or-brace') && token === '}'
  const closesList = (expected === 'value-or-end' || expected === 'comma-or-bracket') && token === ']'
  if (closes || closesList) {
    open.pop()
    return afterValue(open)
  }
  switch (expected) {
    case 'value':
    case 'value-or-end':
      if (token === '{' || token === '[') {
        open.push(token === '{' ? new Set() : null)
        return token === '{' ? 'key-or-end' : 'value-or-end'
      }
      return /^[}\],:]$/.test(token) ? null : afterValue(open)
    case 'key':
    case 'key-or-end': {
      if (!token.startsWith('"')) return null
      const keys = open.at(-1)
      if (keys?.has(token)) return 'key-twice'
      keys?.add(token)
      return 'colon'
    }
    case 'colon':
      return token === ':' ? 'value' : null
    case 'comma-or-brace':
      return token === ',' ? 'key' : null
    case 'comma-or-bracket':
      return token === ',' ? 'value' : null
    case 'nothing':
      return null
    default:
      return expected satisfies never
  }
}

function afterValue(open: readonly (Set<string> | null)[]): ExpectedToken {
  if (open.length === 0) return 'nothing'
  return open.at(-1) === null ? 'comma-or-bracket' : 'comma-or-brace'
}

function startOfNext(text: string, from: number): number {
  const blanks = /[ \t\n\r]*/y
  blanks.lastIndex = from
  return from + (blanks.exec(text)?.[0].length ?? 0)
}

/** Line and column, both from 1, and what stands there; '' at the end of the text. */
function placeIn(text: string, at: number): { line: number; column: number; found: string } {
  const before = text.slice(0, at)
  const found = /^(?:"[^"\n]{0,20}"?|[\w.+-]{1,20}|.)/u.exec(text.slice(at, at + 40))?.[0] ?? ''
  return { line: before.split('\n').length, column: at - before.lastIndexOf('\n'), found }
}
