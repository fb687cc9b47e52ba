import { changesBetween, type Json } from '../../core/drafts/index.ts'
import { languages } from '../../core/words/index.ts'
import { specJsonSchema } from '../core/engine/json-schema.ts'

interface Node {
  readonly $ref?: string
  readonly properties?: Readonly<Record<string, Node & { readonly const?: unknown }>>
  readonly items?: Node
  readonly prefixItems?: readonly Node[]
  readonly anyOf?: readonly Node[]
  readonly oneOf?: readonly Node[]
  readonly $defs?: Readonly<Record<string, Node>>
}

/**
 * Every part of a spec that holds one value, as the schema has it: `procedures[].passes[](torque).target`. Where entries of a list are
 * of kinds with parts of their own, the kind stands in brackets.
 */
export const partsOfASpec: ReadonlySet<string> = partsIn(specJsonSchema(), '')

function partsIn(node: Node, at: string): ReadonlySet<string> {
  // A text in one language or in several is one value.
  if (node.$ref !== undefined) return new Set([at])
  const either = node.anyOf ?? node.oneOf
  if (either !== undefined) return union(either.map((one) => partsIn(one, `${at}${kindIn(one, either)}`)))
  if (node.properties !== undefined)
    return union(
      Object.entries(node.properties).map(([key, part]) => partsIn(part, at === '' ? key : `${at}.${key}`)),
    )
  if (node.prefixItems !== undefined) return union(node.prefixItems.map((one) => partsIn(one, `${at}[]`)))
  return node.items === undefined ? new Set([at]) : partsIn(node.items, `${at}[]`)
}

function kindIn(one: Node, either: readonly Node[]): string {
  const kind = one.properties?.kind?.const
  const isOfKinds = either.every(({ properties }) => typeof properties?.kind?.const === 'string')
  return isOfKinds ? `(${String(kind)})` : ''
}

function union(sets: readonly ReadonlySet<string>[]): ReadonlySet<string> {
  return new Set(sets.flatMap((each) => [...each]))
}

/** The parts of which one document says something else than the other. */
export function partsChanged(before: unknown, after: unknown): readonly string[] {
  return changesBetween(before as Json, after as Json).flatMap((patch) => {
    const keys = patch.path.slice(1).split('/')
    const whole = patch.op === 'remove' ? before : after
    return placesIn(valueAt(whole, keys)).map((inside) => partAt(whole, [...keys, ...inside]))
  })
}

function valueAt(whole: unknown, keys: readonly string[]): unknown {
  return keys.reduce<unknown>((at, key) => (at as Readonly<Record<string, unknown>>)[key], whole)
}

/** Where in a value something stands that holds nothing else. */
function placesIn(value: unknown): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [[]]
  return Object.entries(value).flatMap(([key, inside]) => placesIn(inside).map((rest) => [key, ...rest]))
}

/** The part of a spec that a place in a document is of. */
function partAt(whole: unknown, keys: readonly string[]): string {
  let part = ''
  let value = whole
  for (const key of keys) {
    const next: unknown = (value as Readonly<Record<string, unknown>>)[key]
    if (Array.isArray(value)) part += '[]'
    else if (!(languages as readonly string[]).includes(key)) part += part === '' ? key : `.${key}`
    value = next
    const kind = typeof value === 'object' && value !== null && 'kind' in value ? String(value.kind) : null
    if (kind !== null && isOfKinds(`${part}(${kind})`)) part += `(${kind})`
  }
  if (!partsOfASpec.has(part)) throw new Error(`the schema has no ${part}`)
  return part
}

function isOfKinds(start: string): boolean {
  return [...partsOfASpec].some((part) => part.startsWith(start))
}
