import { searchWords } from '../../core/builds/index.ts'
import type { Standing } from '../../core/builds/index.ts'
import type { BuildLine } from '../../core/contract/index.ts'
import { namesInSpec, type SpecNames } from '../../core/engine/index.ts'
import { languages, type Language } from '../../core/words/index.ts'
import { sha256, type BuildRow, type Store } from '../store/index.ts'
import { lineOf } from './open-build.ts'

/** The names of engines and steps in the lists of builds, in the language of the window that asks. */
export class ListedNames {
  readonly #store: Pick<Store, 'specText' | 'specHashes'>
  /** By the hash of the spec, which is never changed. */
  readonly #known = new Map<string, { readonly [Each in Language]: SpecNames | null }>()

  constructor(store: Pick<Store, 'specText' | 'specHashes'>) {
    this.#store = store
  }

  /** A row of a list as a line, which names engine and step as the spec does in this language. */
  lineIn(language: Language, row: BuildRow, standing: Standing | null): BuildLine {
    const line = lineOf(row, standing)
    const names = this.#of(row.spec_sha256)[language]
    if (names === null || line.fault !== null) return line
    const step = line.standing?.step
    const name = step ? names.steps[step.place - 1] : undefined
    return {
      ...line,
      engine: names.engine,
      standing:
        line.standing && step && name !== undefined
          ? { ...line.standing, step: { ...step, name } }
          : line.standing,
    }
  }

  /** Whether nothing is known of the spec: what its lines say is then as the bench that listed them said it. */
  lacks(hash: string): boolean {
    return !this.#known.has(hash) && this.#store.specText(hash) === null
  }

  /** The text of a spec that is not in the record. */
  learn(text: string): void {
    this.#known.set(sha256(text), namesIn(text))
  }

  /** The specs whose engine has a name with a word that begins so, in whatever language. */
  called(word: string): readonly string[] {
    return this.#store.specHashes().filter((hash) => {
      const names = this.#of(hash)
      return languages.some((language) =>
        searchWords(names[language]?.engine ?? '').some((each) => each.startsWith(word)),
      )
    })
  }

  #of(hash: string): { readonly [Each in Language]: SpecNames | null } {
    const known = this.#known.get(hash)
    if (known !== undefined) return known
    const text = this.#store.specText(hash)
    if (text === null) return noNames
    const names = namesIn(text)
    this.#known.set(hash, names)
    return names
  }
}

const noNames = { en: null, de: null, es: null }

function namesIn(text: string): { readonly [Each in Language]: SpecNames | null } {
  const inOf = (language: Language) => namesInSpec(text, language)
  return { en: inOf('en'), de: inOf('de'), es: inOf('es') }
}
