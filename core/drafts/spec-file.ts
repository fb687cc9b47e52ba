import { z } from 'zod'
import { done, problem, refused, type Outcome } from '../problem/index.ts'
import { readSpec, type EngineSpec } from '../engine/index.ts'

/** The version of the form of a spec in its text; of the file around it, this program's `bedplateSpecFile` is 1. */
const specVersion = 1

/** How the name of such a file ends. */
export const specFileEnding = '.bedplate-spec'

/** Characters; the text of a spec and as much again, as JSON within JSON takes more. */
export const mostSpecFileCharacters = 10_000_000

const specFile = z.strictObject({
  bedplateSpecFile: z.literal(1),
  /** Of the spec in it, which says it as well. */
  schema: z.int().min(1),
  /** Of the bytes of `spec` in UTF-8, in hexadecimal. */
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  /** The text of the spec, to the byte. */
  spec: z.string(),
})

/** A spec as it goes from shop to shop: its text to the byte, and its hash. */
export function specFileOf(spec: string, sha256: (text: string) => string): string {
  return `${JSON.stringify({ bedplateSpecFile: 1, schema: specVersion, sha256: sha256(spec), spec }, null, 2)}\n`
}

/**
 * The spec in a file, as `specFileOf` wrote it. Refuses `spec-file-foreign` for any other file, `spec-file-newer` and
 * `spec-file-older` for one of another form, `spec-file-altered` where the text is not what the hash is of, and
 * `spec-file-not-a-spec` with the first of what `readSpec` refuses.
 */
export function readSpecFile(
  text: string,
  sha256: (text: string) => string,
): Outcome<{ readonly text: string; readonly spec: EngineSpec }> {
  if (text.length > mostSpecFileCharacters) return refused('spec-file-foreign', {})
  const around = jsonIn(text.replace(/^\uFEFF/, ''))
  const version = versionIn(around)
  if (version === null) return refused('spec-file-foreign', {})
  if (version > specVersion) return refused('spec-file-newer', { version, known: specVersion })
  if (version < specVersion) return refused('spec-file-older', { version, known: specVersion })
  const read = specFile.safeParse(around)
  if (!read.success) return refused('spec-file-foreign', {})
  if (sha256(read.data.spec) !== read.data.sha256) return refused('spec-file-altered', {})
  const spec = readSpec(read.data.spec)
  if (spec.ok) return done({ text: read.data.spec, spec: spec.spec })
  const [first] = spec.problems
  return refused('spec-file-not-a-spec', { why: first ?? problem('spec-file-foreign', {}) })
}

/** The later of the two versions that a file of this kind says; null for another file. */
function versionIn(around: unknown): number | null {
  const versions = z.looseObject({ bedplateSpecFile: z.int(), schema: z.int() }).safeParse(around)
  if (!versions.success) return null
  const { bedplateSpecFile, schema } = versions.data
  return bedplateSpecFile === 1 ? schema : bedplateSpecFile
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text) as unknown
  } catch {
    return null
  }
}
