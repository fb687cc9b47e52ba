import type { z } from 'zod'

/** What `safeParse` is given where parts that were read before are not read again. */
export interface RereadContext extends z.core.ParseContext<z.core.$ZodIssue> {
  readonly isRemembering?: true
}

/**
 * The same schema, which keeps what a part was read as by the very object that was read, where it is asked to (`RereadContext`): a document
 * shares with the one before it what an edit left alone. For documents that are never changed in place. A part with a fault is not
 * kept. What makes another schema of this one (`.max()`, `.meta()`) comes before.
 */
export function remembered<Schema extends z.ZodType>(schema: Schema): Schema {
  const known = new WeakMap<object, unknown>()
  const { _zod: inner } = schema
  const run = inner.run.bind(inner)
  inner.run = (payload, context) => {
    const written: unknown = payload.value
    const isKept = 'isRemembering' in context && typeof written === 'object' && written !== null
    if (!isKept) return run(payload, context)
    if (known.has(written)) {
      payload.value = known.get(written)
      return payload
    }
    const result = run(payload, context)
    if (!(result instanceof Promise) && result.issues.length === 0) known.set(written, result.value)
    return result
  }
  return schema
}
