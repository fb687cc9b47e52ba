import { readSpec, type EngineSpec } from '../../core/engine/index.ts'

/** What this worker has read, by its text: many builds are begun from one spec. */
const known = new Map<string, EngineSpec>()

export function specOf(text: string): EngineSpec {
  const before = known.get(text)
  if (before !== undefined) return before
  const read = readSpec(text)
  if (!read.ok) throw new Error('the spec cannot be read')
  known.set(text, read.spec)
  return read.spec
}
