/** `A`, `A y B`, `A, B y C`; `e` before the sound of an i. */
export function listed(texts: readonly string[]): string {
  const before = texts.slice(0, -1)
  const last = texts.at(-1) ?? ''
  if (before.length === 0) return last
  return `${before.join(', ')} ${/^h?i(?![aeou])/i.test(last) ? 'e' : 'y'} ${last}`
}
