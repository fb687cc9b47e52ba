const longest = 60

/** What was typed, for a sentence about it: the beginning of what is too long to be a value. */
export function asTyped(text: string): string {
  const typed = text.trim()
  return typed.length > longest ? `${typed.slice(0, longest)}…` : typed
}
