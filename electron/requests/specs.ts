import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { done, problem, refused, type Outcome, type Problem } from '../../core/problem/index.ts'
import { type EngineSpec, readSpec } from '../../core/engine/index.ts'
import { audit } from '../../core/audit/index.ts'

/** An engine that can be built, with the text it was read from. */
export interface SoundEngine {
  readonly kind: 'sound'
  readonly id: string
  readonly text: string
  readonly spec: EngineSpec
  readonly doubts: readonly Problem[]
}

/** An engine whose spec has faults: listed with them, and nothing is built from it. */
export interface FaultyEngine {
  readonly kind: 'faulty'
  readonly id: string
  /** Null when the text cannot be read as a spec at all. */
  readonly spec: EngineSpec | null
  readonly text: string
  readonly faults: readonly Problem[]
}

export type Engine = SoundEngine | FaultyEngine

/** Reads every spec of a folder, in the order of their file names. */
export function readEngines(folder: string): readonly Engine[] {
  const files = readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
  const taken = new Set<string>()
  return files.map((file) => {
    const engine = engineOf(file, readFileSync(join(folder, file), 'utf8'))
    if (!taken.has(engine.id)) {
      taken.add(engine.id)
      return engine
    }
    const fault = problem('engine-named-twice', { engine: engine.id, file }, 'id')
    return { kind: 'faulty', id: file, spec: engine.spec, text: engine.text, faults: [fault] }
  })
}

/**
 * Adds the engine of a spec from elsewhere, until the program ends. One that is there already, text for text, is left as it
 * is; refused with `engine-named-twice` where another one has its id.
 */
export function takeSpec(
  engines: Engine[],
  fileName: string,
  text: string,
): Outcome<{ id: string; name: string }> {
  const engine = engineOf(fileName, text)
  const same = engines.find(({ id }) => id === engine.id)
  if (same !== undefined && same.text !== text)
    return refused('engine-named-twice', { engine: engine.id, file: fileName }, 'id')
  if (same === undefined) engines.push(engine)
  return done({ id: engine.id, name: engine.spec?.name ?? engine.id })
}

function engineOf(file: string, text: string): Engine {
  const read = readSpec(text)
  if (!read.ok)
    return { kind: 'faulty', id: file.replace(/\.json$/, ''), spec: null, text, faults: read.problems }
  const { spec } = read
  const findings = audit(spec)
  const of = (weight: 'fault' | 'doubt') =>
    findings.filter((it) => it.weight === weight).map((it) => it.problem)
  const faults = of('fault')
  return faults.length > 0
    ? { kind: 'faulty', id: spec.id, spec, text, faults }
    : { kind: 'sound', id: spec.id, spec, text, doubts: of('doubt') }
}
