import { readSpec, type EngineSpec } from '../../core/engine/index.ts'
import type { Language } from '../../core/words/index.ts'

/** An engine that comes with the program, with the text it was read from. */
export interface Engine {
  readonly text: string
  readonly spec: EngineSpec
}

const texts = import.meta.glob<string>('../../specs/*.json', {
  query: '?raw',
  import: 'default',
  eager: true,
})

/** The demo engines, by the names of their files. */
export const engines: readonly Engine[] = Object.entries(texts)
  .sort(([one], [other]) => one.localeCompare(other))
  .map(([file, text]) => {
    const read = readSpec(text)
    if (!read.ok) throw new Error(`${file} cannot be read`)
    return { text, spec: read.spec }
  })

/** An engine that comes with the program, with its texts in that language. */
export function specIn({ text, spec }: Engine, language: Language): EngineSpec {
  const read = language === 'en' ? null : readSpec(text, language)
  return read?.ok ? read.spec : spec
}

/** Throws unless an engine of this id comes with the program. */
export function engineOf(id: string): Engine {
  const found = engines.find(({ spec }) => spec.id === id)
  if (found === undefined) throw new Error(`there is no demo engine ${id}`)
  return found
}
