import { z } from 'zod'
import type { Language } from '../words/index.ts'
import { shownName } from './text.ts'
import { inLanguage } from './translations.ts'

/** What a list says of a spec. */
export interface SpecNames {
  readonly engine: string
  /** In the order of the spec. */
  readonly steps: readonly string[]
}

/** The rest of a spec is not looked at: it was read when the build began. */
const named = z.object({ name: shownName, steps: z.array(z.object({ name: shownName })) })

/** The names of an engine and its steps in a language, from the text of its spec; null where that is none. */
export function namesInSpec(text: string, language: Language): SpecNames | null {
  let json: unknown
  try {
    json = JSON.parse(text)
  } catch {
    return null
  }
  const read = named.safeParse(json)
  if (!read.success) return null
  const { name, steps } = inLanguage(language, read.data)
  return { engine: name, steps: steps.map((step) => step.name) }
}
