/** `1 entry`, `2 entries`: for languages that have these two forms. */
export function countingIn(locale: string): (count: number, one: string, more: string) => string {
  const rules = new Intl.PluralRules(locale)
  return (count, one, more) => `${count} ${rules.select(count) === 'one' ? one : more}`
}
