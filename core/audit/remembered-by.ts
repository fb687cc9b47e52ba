import type { EngineSpec } from '../engine/index.ts'

type Parts = Readonly<Record<string, unknown>>

/** A part of the spec, or of its case, that was looked at, and what it was. */
interface Look {
  readonly of: 'spec' | 'case'
  readonly key: string
  readonly part: unknown
}

/**
 * A function of a spec that gives again what it gave last, as long as each part that it looked at then is the same object or value.
 * Which parts these are is noted while it runs, so nobody has to keep a list. It must depend on the spec alone.
 */
export function rememberedBy<Result>(look: (spec: EngineSpec) => Result): (spec: EngineSpec) => Result {
  let last: { readonly looks: readonly Look[]; readonly isOfAll: boolean; readonly result: Result } | null =
    null
  return (spec) => {
    if (last !== null && !last.isOfAll && last.looks.every((each) => isStill(each, spec))) return last.result
    const looks: Look[] = []
    let isOfAll = false
    const watched = <Of extends object>(
      of: Look['of'],
      parts: Of,
      deeper: Readonly<Record<string, object>>,
    ) =>
      new Proxy(parts, {
        get(_, key) {
          if (typeof key !== 'string') return Reflect.get(parts, key) as unknown
          const deep = deeper[key]
          if (deep !== undefined) return deep
          const part = (parts as Parts)[key]
          looks.push({ of, key, part })
          return part
        },
        // Who asks which parts there are hangs on all of them.
        has(_, key) {
          isOfAll = true
          return Reflect.has(parts, key)
        },
        ownKeys() {
          isOfAll = true
          return Reflect.ownKeys(parts)
        },
      })
    const result = look(watched('spec', spec, { case: watched('case', spec.case, {}) }))
    last = { looks, isOfAll, result }
    return result
  }
}

function isStill({ of, key, part }: Look, spec: EngineSpec): boolean {
  const now = ((of === 'case' ? spec.case : spec) as unknown as Parts)[key]
  // What the document leaves out is read as a new empty list each time.
  return now === part || (isEmpty(now) && isEmpty(part))
}

function isEmpty(part: unknown): boolean {
  return Array.isArray(part) && part.length === 0
}
