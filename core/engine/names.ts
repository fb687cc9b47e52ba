import { z } from 'zod'
import { languages, type Language } from '../words/index.ts'
import { shownName } from './text.ts'
import { anyText, inLanguage } from './translations.ts'

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

/** What things of a spec are called: once for each language that its file has. */
export interface NamesOf {
  /** By its id in a list; none where it is not in it. */
  readonly byId: (list: 'steps' | 'parts' | 'fastenerGroups', id: string) => readonly string[]
  /** By the `key` of a `recordedName`, as an entry has it; the key alone where the file has no such name. */
  readonly byKey: (key: string) => readonly string[]
}

/** Of a spec that is not looked at: everything is called as entries have it. */
export const noNames: NamesOf = { byId: () => [], byKey: (key) => [key] }

const things = z.array(z.object({ id: z.string(), name: shownName })).default([])
const withThings = z.object({ steps: things, parts: things, fastenerGroups: things })

/** Names in every language, out of the text of a spec, which is read when one is asked for. */
export function namesInAllLanguages(text: string): NamesOf {
  let found: readonly z.infer<typeof withThings>[] | null = null
  let recorded: ReadonlyMap<string, ReadonlySet<string>> | null = null
  return {
    byId: (list, id) => {
      if (found === null) {
        const { data } = withThings.safeParse(parsed(text))
        found = data === undefined ? [] : languages.map((language) => inLanguage(language, data))
      }
      return [...new Set(found.flatMap((inOne) => inOne[list].find((each) => each.id === id)?.name ?? []))]
    },
    byKey: (key) => [...((recorded ??= translationsIn(parsed(text))).get(key) ?? [key])],
  }
}

/** The texts of a file that it has in several languages, by the first of them, wherever they stand. */
function translationsIn(file: unknown): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, Set<string>>()
  const look = (value: unknown) => {
    if (typeof value !== 'object' || value === null) return
    const key = anyText(value)?.trim()
    if (key === undefined) return Object.values(value).forEach(look)
    const texts = languages.flatMap((language) => anyText(value, language)?.trim() ?? [])
    found.set(key, new Set([...(found.get(key) ?? [key]), ...texts]))
  }
  look(file)
  return found
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}
