import { readFileSync } from 'node:fs'
import { readSpec, type EngineSpec } from '../../core/engine/index.ts'
import { engineFile } from '../engine-files.ts'

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

/** What a step is called, as the file of its engine has it. */
export function stepName(engine: string, id: string): string {
  const step = specOf(readFileSync(engineFile(engine), 'utf8')).steps.find((each) => each.id === id)
  if (step === undefined) throw new Error(`${engine} has no step ${id}`)
  return step.name
}
