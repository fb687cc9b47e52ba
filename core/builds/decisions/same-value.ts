/** Whether two values of JSON are the same, whatever the order of their keys. */
export function isSameValue(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return Object.is(a, b)
  if (Array.isArray(a) !== Array.isArray(b)) return false
  const [left, right] = [Object.entries(a), Object.entries(b)]
  return (
    left.length === right.length &&
    left.every(([key, value]) => isSameValue(value, (b as Record<string, unknown>)[key]))
  )
}
