import { languageOf, liveWords, loadWords, type Language, type Words } from '../core/words/index.ts'
import { wordsWithNoBreakSpaces } from './no-break-spaces.ts'

/** The way to the other windows of this bench, which are to speak the same language. */
export interface LanguageChannel {
  announce(language: Language | null): void
  hear(listen: (language: Language | null) => void): void
}

interface LanguageOptions {
  /** The person's languages by the system, the best first. */
  readonly system?: readonly string[]
  readonly load?: (language: Language) => Promise<Words>
  readonly channel?: LanguageChannel
}

/** The language that the window is shown in, and its words, which change with it. */
export class ShownLanguage {
  readonly #ofTheSystem: Language
  readonly #load: (language: Language) => Promise<Words>
  readonly #channel: LanguageChannel | undefined
  #now = $state.raw<{ readonly language: Language; readonly words: Words }>()!
  #asked: Language
  readonly words: Words

  private constructor(first: { language: Language; words: Words }, options: LanguageOptions) {
    this.#ofTheSystem = languageOf(options.system ?? []) ?? 'en'
    this.#load = options.load ?? loadWords
    this.#channel = options.channel
    this.#now = first
    this.#asked = first.language
    this.words = liveWords(() => this.#now.words)
    this.#channel?.hear((chosen) => void this.show(chosen))
  }

  /** In the language of the system, as long as nobody has chosen one. */
  static async first(options: LanguageOptions = {}): Promise<ShownLanguage> {
    const language = languageOf(options.system ?? []) ?? 'en'
    const words = wordsWithNoBreakSpaces(await (options.load ?? loadWords)(language))
    return new ShownLanguage({ language, words }, options)
  }

  get language(): Language {
    return this.#now.language
  }

  /** Shows the language that was chosen, null for that of the system, once its words are there. One that cannot be loaded is left. */
  async show(chosen: Language | null): Promise<void> {
    const language = chosen ?? this.#ofTheSystem
    this.#asked = language
    if (language === this.#now.language) return
    const words = await this.#load(language).catch(() => null)
    if (words !== null && this.#asked === language)
      this.#now = { language, words: wordsWithNoBreakSpaces(words) }
  }

  /** Chosen in this window: it is announced to the others. */
  async choose(chosen: Language | null): Promise<void> {
    this.#channel?.announce(chosen)
    await this.show(chosen)
  }
}

/** The windows of one browser that this host opened. */
export function languageOfWindows(): LanguageChannel {
  const channel = new BroadcastChannel('language')
  return {
    announce: (language) => channel.postMessage(language),
    hear: (listen) => {
      channel.onmessage = ({ data }: MessageEvent<Language | null>) => listen(data)
    },
  }
}
