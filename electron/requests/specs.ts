import { lstatSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { basename, resolve } from 'node:path'
import { readSpecFile, specFileEnding } from '../../core/drafts/index.ts'
import { done, problem, refused, type Facts, type Outcome, type Problem } from '../../core/problem/index.ts'
import { type EngineSpec, readSpec } from '../../core/engine/index.ts'
import { audit } from '../../core/audit/index.ts'
import type { Language } from '../../core/words/index.ts'
import { codeOf, sha256 } from '../store/index.ts'

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
  readonly doubts: readonly Problem[]
}

export type Engine = SoundEngine | FaultyEngine

/** Longer than any spec: a file that is longer is not read. */
const mostBytes = 4_000_000

/**
 * Reads every spec of a folder, in the order of their file names. What cannot be read is in the list as a fault, with the
 * reason: one bad file does not take the others with it.
 */
export function readEngines(folder: string): readonly Engine[] {
  let names: readonly string[]
  try {
    names = readdirSync(folder)
  } catch (error) {
    return [unread(folder, 'folder', codeOf(error))]
  }
  const usedIds = new Set<string>()
  const files = names.filter((name) => name.endsWith('.json')).sort()
  return files.map((file) => {
    const engine = readEngine(folder, file)
    if (!usedIds.has(engine.id)) {
      usedIds.add(engine.id)
      return engine
    }
    const fault = problem('engine-named-twice', { engine: engine.id, file }, 'id')
    return { kind: 'faulty', id: file, spec: engine.spec, text: engine.text, faults: [fault], doubts: [] }
  })
}

/** What was read already, by its text: to read and audit one takes a tenth of a second. */
const known = new Map<string, Engine>()

/** Reads one spec and audits it, also one that was saved as a file for another bench; `file` is its name within `folder`, or its absolute path. */
export function readEngine(folder: string, file: string): Engine {
  const text = textOf(resolve(folder, file))
  if ('reason' in text) return unread(file, text.reason, text.code)
  const engine =
    known.get(text.text) ?? (isSaved(file) ? savedSpec(file, text.text) : engineOf(file, text.text))
  if (engine.spec !== null) known.set(text.text, engine) // what is no spec is called by its file
  return engine
}

const isSaved = (file: string) => file.toLowerCase().endsWith(specFileEnding)

function savedSpec(file: string, text: string): Engine {
  const saved = readSpecFile(text, sha256)
  if (saved.ok) return engineOf(file, saved.value.text)
  const id = basename(file, specFileEnding)
  return { kind: 'faulty', id, spec: null, text, faults: [saved.problem], doubts: [] }
}

type Reason = Facts<'spec-file-unread'>['reason']

/** Looked at before it is opened: to open a pipe waits until somebody writes into it. */
function textOf(file: string): { text: string } | { reason: Reason; code: string } {
  try {
    const found = statSync(file)
    if (found.isDirectory()) return { reason: 'is-folder', code: '' }
    if (!found.isFile()) return { reason: 'not-a-file', code: '' }
    if (found.size > mostBytes) return { reason: 'too-large', code: '' }
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(file)) }
  } catch (error) {
    const code = codeOf(error)
    return {
      reason: code === 'ENOENT' ? whyNotThere(file) : code.startsWith('ERR_') ? 'not-text' : 'closed',
      code,
    }
  }
}

/** A link is there although what it leads to is not. */
function whyNotThere(file: string): Reason {
  return lstatSync(file, { throwIfNoEntry: false }) === undefined ? 'missing' : 'dangling'
}

function unread(file: string, reason: Reason, code: string): FaultyEngine {
  const faults = [problem('spec-file-unread', { file, reason, code })]
  return { kind: 'faulty', id: file.replace(/\.json$/, ''), spec: null, text: '', faults, doubts: [] }
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

/** Read and audited once for each language that is asked for. */
const inLanguages = new WeakMap<SoundEngine, Map<Language, Engine>>()

/** A sound engine with the texts of its spec in another language, and with what the audit says of it; any other as it is. */
export function engineIn(language: Language, engine: Engine): Engine {
  if (language === 'en' || engine.kind === 'faulty') return engine
  const known = inLanguages.get(engine) ?? new Map<Language, Engine>()
  inLanguages.set(engine, known)
  const found = known.get(language) ?? engineOf(engine.id, engine.text, language)
  known.set(language, found)
  return found
}

/** Reads and audits the text of a spec; `file` is what it is called where it cannot be read. */
export function readText(file: string, text: string): Engine {
  return engineOf(file, text)
}

function engineOf(file: string, text: string, language: Language = 'en'): Engine {
  const read = readSpec(text, language)
  if (!read.ok)
    return {
      kind: 'faulty',
      id: file.replace(/\.json$/, ''),
      spec: null,
      text,
      faults: read.problems,
      doubts: [],
    }
  const { spec } = read
  const findings = audit(spec)
  const of = (weight: 'fault' | 'doubt') =>
    findings.filter((it) => it.weight === weight && it.accepted === undefined).map((it) => it.problem)
  const faults = of('fault')
  const doubts = of('doubt')
  return faults.length > 0
    ? { kind: 'faulty', id: spec.id, spec, text, faults, doubts }
    : { kind: 'sound', id: spec.id, spec, text, doubts }
}
