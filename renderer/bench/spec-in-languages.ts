import { readSpec, type EngineSpec } from '../../core/engine/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'

type ReadInLanguages =
  | { readonly ok: true; readonly value: SpecInLanguages }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** One spec, read once in each language that it is shown in: what is the same spec stays the same object. */
export class SpecInLanguages {
  readonly #text: string
  readonly #first: EngineSpec
  readonly #read = new Map<Language, EngineSpec>()

  private constructor(text: string, language: Language, first: EngineSpec) {
    this.#text = text
    this.#first = first
    this.#read.set(language, first)
  }

  /** Problems: those of `readSpec`. */
  static read(text: string, language: Language): ReadInLanguages {
    const read = readSpec(text, language)
    return read.ok ? { ok: true, value: new SpecInLanguages(text, language, read.spec) } : read
  }

  in(language: Language): EngineSpec {
    const known = this.#read.get(language)
    if (known !== undefined) return known
    const read = readSpec(this.#text, language)
    const spec = read.ok ? read.spec : this.#first
    this.#read.set(language, spec)
    return spec
  }
}
