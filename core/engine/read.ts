import { problem, type Problem } from '../problem/index.ts'
import type { Language } from '../words/index.ts'
import { repeatedIds } from './ids.ts'
import { readJson } from './json.ts'
import { danglingReferences } from './references.ts'
import type { RereadContext } from './remembered.ts'
import { engineSpec, type EngineSpec, type SpecDocument } from './schema.ts'
import { adviceOn, issuesOfUnion, shapeProblem } from './shape.ts'
import { inLanguage, type TextsByPart } from './translations.ts'

/** A spec that can be worked with, or everything that keeps it from being one. */
export type SpecReading =
  | { readonly ok: true; readonly spec: EngineSpec }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** Characters; a spec of two thousand fasteners has some 300 000. */
const mostCharacters = 5_000_000

/** A file that is not a spec at all would give thousands; nobody reads more than this. */
const mostProblems = 100

/**
 * Reads the text of a spec file. All faults of the shape come at once; when the shape is good, all ids that are there
 * twice and all references to what is not there. Whether the numbers make sense is for `audit`. A text that stands there in
 * several languages is read in the one that is asked for, or in the first there is; what a build rests on is the file itself.
 *
 * Problems: `spec-too-large`, those of `readJson`, `spec-part-missing`, `spec-part-wrong`, `spec-keys-unknown`,
 * `spec-id-twice`, `spec-reference-dangling`, and `spec-more-problems` when some were left out.
 */
export function readSpec(text: string, language: Language = 'en'): SpecReading {
  const { texts } = inLanguages[language]
  const read = texts.get(text) ?? readText(text, language)
  if (!read.ok || text.length > mostRemembered) return read
  // The last ones stay: what was asked for again goes behind the others.
  texts.delete(text)
  texts.set(text, read)
  if (texts.size > textsRemembered) texts.delete(texts.keys().next().value!)
  return read
}

function readText(text: string, language: Language): SpecReading {
  if (text.length > mostCharacters) return faulty([problem('spec-too-large', { mostCharacters })])
  // Editors on some systems put a byte order mark in front of what they save.
  const json = readJson(text.replace(/^\uFEFF/, ''))
  if (!json.ok) return faulty([json.problem])
  return readWritten(json.value, language, null)
}

/**
 * The same of a document, which is never changed in place: what it shares with one that was read before is not read again. It refuses
 * what `readSpec` refuses of its text.
 */
export function readDocument(document: SpecDocument, language: Language = 'en'): SpecReading {
  const { taken, readings } = inLanguages[language]
  const before = readings.get(document)
  if (before !== undefined) return before
  const read =
    JSON.stringify(document).length > mostCharacters
      ? faulty([problem('spec-too-large', { mostCharacters })])
      : readWritten(document, language, taken)
  readings.set(document, read)
  return read
}

/** What the last texts were read as: a bench has a few engines, and every build of one rests on the same text. */
type LastTexts = Map<string, SpecReading>
const textsRemembered = 16
/** Characters. */
const mostRemembered = 300_000

/** What documents and texts were read as in a language, and which of its texts were taken in parts of them. */
interface ReadBefore {
  readonly taken: TextsByPart
  readonly readings: WeakMap<SpecDocument, SpecReading>
  readonly texts: LastTexts
}
const nothingYet = (): ReadBefore => ({ taken: new WeakMap(), readings: new WeakMap(), texts: new Map() })
const inLanguages: Readonly<Record<Language, ReadBefore>> = {
  en: nothingYet(),
  de: nothingYet(),
  es: nothingYet(),
}

function readWritten(written: unknown, language: Language, taken: TextsByPart | null): SpecReading {
  const asked: RereadContext = { error: adviceOn, ...(taken !== null && { isRemembering: true }) }
  const parsed = engineSpec.safeParse(written, asked)
  if (!parsed.success) {
    const issues = parsed.error.issues.flatMap(issuesOfUnion)
    // What says of itself that it is another version, or no spec, is not measured against this one.
    const version = issues.filter(({ path }) => path[0] === 'bedplateSpec')
    return faulty((version.length > 0 ? version : issues).map((issue) => shapeProblem(written, issue)))
  }
  const spec = inLanguage(language, parsed.data, taken)
  const unclear = [...repeatedIds(spec), ...danglingReferences(spec)]
  return unclear.length > 0 ? faulty(unclear) : { ok: true, spec }
}

function faulty(problems: readonly Problem[]): SpecReading {
  if (problems.length <= mostProblems) return { ok: false, problems }
  const more = problem('spec-more-problems', { count: problems.length - mostProblems })
  return { ok: false, problems: [...problems.slice(0, mostProblems), more] }
}
