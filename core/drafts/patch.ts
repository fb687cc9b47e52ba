import { z } from 'zod'

export type Json =
  | null
  | boolean
  | number
  | string
  | readonly Json[]
  | { readonly [key: string]: Json | undefined }

/** A place in a document, as JSON Pointer (RFC 6901) writes it: `/procedures/0/passes/2/target`. */
const pointer = z
  .string()
  .max(1000)
  .regex(/^(\/([^~/]|~[01])*)+$/)

const value = z.json() as z.ZodType<Json>

/** One change of a document, as JSON Patch (RFC 6902) writes it. Its `move`, `copy` and `test` are not used. */
export const patch = z.discriminatedUnion('op', [
  z.strictObject({ op: z.literal('add'), path: pointer, value }),
  z.strictObject({ op: z.literal('replace'), path: pointer, value }),
  z.strictObject({ op: z.literal('remove'), path: pointer }),
])
export type Patch = z.output<typeof patch>

/** The keys that a pointer leads along. */
export function keysOf(path: string): readonly string[] {
  return path
    .split('/')
    .slice(1)
    .map((key) => key.replaceAll('~1', '/').replaceAll('~0', '~'))
}

export function pointerOf(keys: readonly (string | number)[]): string {
  return keys.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
}

/** The document after the patches, in order; null where one of them does not fit it. What they leave alone stays the same object. */
export function patched(document: Json, patches: readonly Patch[]): Json | null {
  let now: Json | undefined = document
  for (const each of patches) {
    now = changed(now, keysOf(each.path), each)
    if (now === undefined) return null
  }
  return now
}

const index = /^(0|[1-9]\d*)$/

/** Undefined where the patch does not fit. */
function changed(inside: Json, [key, ...rest]: readonly string[], change: Patch): Json | undefined {
  if (typeof inside !== 'object' || inside === null || key === undefined) return undefined
  if (isList(inside)) {
    const at = index.test(key) ? Number(key) : Infinity
    if (rest.length === 0 && change.op === 'add')
      return at <= inside.length ? inside.toSpliced(at, 0, change.value) : undefined
    const entry = inside[at]
    if (entry === undefined) return undefined
    if (rest.length === 0 && change.op === 'remove') return inside.toSpliced(at, 1)
    const after = rest.length === 0 && 'value' in change ? change.value : changed(entry, rest, change)
    return after === undefined ? undefined : inside.with(at, after)
  }
  const part = Object.hasOwn(inside, key) ? inside[key] : undefined
  if (rest.length === 0 && change.op === 'add') return { ...inside, [key]: change.value }
  if (part === undefined) return undefined
  if (rest.length === 0 && change.op === 'remove')
    return Object.fromEntries(Object.entries(inside).filter(([name]) => name !== key))
  const after = rest.length === 0 && 'value' in change ? change.value : changed(part, rest, change)
  return after === undefined ? undefined : { ...inside, [key]: after }
}

export function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value)
}
