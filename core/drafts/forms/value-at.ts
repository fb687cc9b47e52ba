/** Where a value stands in a document: `['procedures', 0, 'passes', 2, 'target']`. */
export type ValuePath = readonly (string | number)[]

/** The value at a path; undefined where there is none. */
export function valueIn(inside: unknown, path: ValuePath): unknown {
  return path.reduce<unknown>((at, key) => {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, key)) return undefined
    return (at as Record<string | number, unknown>)[key]
  }, inside)
}

/** The same with another value at a path; undefined takes the value out. What lies beside the path stays the same object. */
export function withValueAt<Whole>(whole: Whole, path: ValuePath, value: unknown): Whole {
  const [key, ...rest] = path
  if (key === undefined) return value as Whole
  const inside: unknown = whole ?? (typeof key === 'number' ? [] : {})
  const next = withValueAt((inside as Record<string | number, unknown>)[key], rest, value)
  if (Array.isArray(inside)) {
    const list: readonly unknown[] = inside
    const index = Number(key)
    if (next === undefined) return list.filter((_, at) => at !== index) as Whole
    return (index < list.length ? list.with(index, next) : [...list, next]) as Whole
  }
  if (next !== undefined) return { ...(inside as object), [key]: next } as Whole
  const { [key]: _, ...others } = inside as Record<string | number, unknown>
  return others as Whole
}

/** A path as findings have it: `procedures[0].passes[2].target`. */
export function pathOf(path: ValuePath): string {
  return path.reduce<string>(
    (text, key) => (typeof key === 'number' ? `${text}[${key}]` : text === '' ? key : `${text}.${key}`),
    '',
  )
}

/** Whether what is said of one place is said of something at or inside another. */
export function isAtOrIn(path: string, place: string): boolean {
  return path === place || path.startsWith(`${place}.`) || path.startsWith(`${place}[`)
}
