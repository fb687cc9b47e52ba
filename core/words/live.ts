import type { Words } from './words.ts'

/**
 * Words that are always those of now: each text is looked up when it is shown, so that a part which took them, or one of their
 * tables, when it came on the screen follows a change of the language, and what is typed there stays.
 */
export function liveWords(now: () => Words): Words {
  return live(now(), now)
}

/** `shape` is a table of any language: all have the same messages. */
function live<Table extends object>(shape: Table, now: () => Table): Table {
  const parts = new Map<PropertyKey, unknown>()
  return new Proxy(shape, {
    get(_, key) {
      const part: unknown = Reflect.get(now(), key)
      if (typeof part !== 'object' || part === null || Array.isArray(part)) return part
      if (!parts.has(key))
        parts.set(
          key,
          live(part, () => Reflect.get(now(), key) as object),
        )
      return parts.get(key)
    },
  })
}
