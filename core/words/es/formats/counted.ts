/** `1 entry`, `2 entries`. */
export function counted(count: number, one: string, more: string): string {
  return `${count} ${count === 1 ? one : more}`
}
