import type { Words } from '../core/words/index.ts'

const betweenNumberAndUnit =
  /(?<=[\d½]) (?=(?:N·m|lbf·ft|lbf·in|kgf·m|kN|N|MPa|GPa|µm|mm|cm|m|in|thou|°C|°|s|min|h|%)(?![\p{L}\p{N}·]))/gu

/** A line does not begin with the sign that more is asked: `Begin again …`. */
const beforeEllipsis = / (?=…)/g

/** A text in which no number is parted from its unit, and no word from the … after it, by the end of a line. */
export function withNoBreakSpaces(text: string): string {
  return text.replace(betweenNumberAndUnit, '\u00a0').replace(beforeEllipsis, '\u00a0')
}

/** Made once for each language: there are some thousand texts. What was made stays as it is. */
const made = new WeakMap<Words, Words>()

/** The same texts for a window, where lines end wherever their column does: each is `withNoBreakSpaces`. */
export function wordsWithNoBreakSpaces(words: Words): Words {
  const before = made.get(words)
  if (before !== undefined) return before
  const after = noBreakIn(words) as Words
  made.set(words, after).set(after, after)
  return after
}

function noBreakIn(part: unknown): unknown {
  if (typeof part === 'string') return withNoBreakSpaces(part)
  if (Array.isArray(part)) return part.map(noBreakIn)
  if (typeof part === 'function') return (...facts: unknown[]) => noBreakIn(Reflect.apply(part, null, facts))
  if (part === null || typeof part !== 'object') return part
  return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, noBreakIn(value)]))
}
