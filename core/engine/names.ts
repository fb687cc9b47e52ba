import { z } from 'zod'
import { languages, type Language } from '../words/index.ts'
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
  const read = named.safeParse(parsed(text))
  if (!read.success) return null
  const { name, steps } = inLanguage(language, read.data)
  return { engine: name, steps: steps.map((step) => step.name) }
}

/** What a thing of a spec is called: once for each language that its file has, none where it is not in the list. */
export type NamesOf = (list: 'steps' | 'parts' | 'fastenerGroups', id: string) => readonly string[]

const things = z.array(z.object({ id: z.string(), name: shownName })).default([])
const withThings = z.object({ steps: things, parts: things, fastenerGroups: things })

/** The names of steps, parts and kinds of fasteners in every language, from the text of a spec, which is read when one is asked for. */
export function namesInAllLanguages(text: string): NamesOf {
  let found: readonly z.infer<typeof withThings>[] | null = null
  return (list, id) => {
    if (found === null) {
      const { data } = withThings.safeParse(parsed(text))
      found = data === undefined ? [] : languages.map((language) => inLanguage(language, data))
    }
    return [...new Set(found.flatMap((inOne) => inOne[list].find((each) => each.id === id)?.name ?? []))]
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}
