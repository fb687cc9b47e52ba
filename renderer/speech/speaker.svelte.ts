import { languageOf, type Language } from '../../core/words/index.ts'

/** A voice of this machine: `SpeechSynthesisVoice`, as far as it is used. */
export type Voice = Pick<SpeechSynthesisVoice, 'name' | 'lang' | 'default' | 'localService'>

/** `speechSynthesis`, or one that plays it. */
export interface Speech {
  getVoices(): readonly Voice[]
  speak(text: string, voice: Voice, rate: number): void
  cancel(): void
  addEventListener(event: 'voiceschanged', heard: () => void): void
}

export interface SpeakerSettings {
  readonly speaks: boolean
  readonly rate: number
  /** By name; null where the program chooses. */
  readonly voice: string | null
  /** What prompts are said in. */
  readonly language: Language
}

/** How much slower than usual a prompt is said again. */
const slower = 0.6

/** Says prompts aloud, where a person switched it on: a new one cancels the one before, and none is said twice by itself. */
export class Speaker {
  readonly #speech: Speech | null
  readonly #settings: () => SpeakerSettings
  #all = $state.raw<readonly Voice[]>([])
  #lastText = ''
  /** The voice that is used; null where there is none that may be. */
  readonly #voices: readonly Voice[] = $derived.by(() => voicesOf(this.#all, this.#settings().language))
  readonly voice: Voice | null = $derived.by(() => voiceFor(this.#voices, this.#settings().voice))

  constructor(speech: Speech | null, settings: () => SpeakerSettings) {
    this.#speech = speech
    this.#settings = settings
    this.#look()
    speech?.addEventListener('voiceschanged', () => this.#look())
  }

  /** Whether this browser can speak at all. */
  get canSpeak(): boolean {
    return this.#speech !== null
  }
  /** Whether it does: it can, there is a voice, and a person switched it on. */
  get speaks(): boolean {
    return this.#settings().speaks && this.voice !== null
  }
  /** Voices that say the program's language, those first that need no network. */
  get voices(): readonly Voice[] {
    return this.#voices
  }
  /** What was said last, or would have been. */
  get said(): string {
    return this.#lastText
  }

  /** A prompt; what is still being said of the last one is cut off. Nothing where it is the same as the last. */
  prompt(text: string): void {
    if (text === this.#lastText) return
    this.#lastText = text
    if (text === '') this.#speech?.cancel()
    else this.#say(1)
  }

  again(): void {
    this.#say(1)
  }
  slower(): void {
    this.#say(slower)
  }
  /** An example, for a person who chooses a voice; also while prompts are off. */
  example(text: string): void {
    this.#speak(text, 1)
  }
  quiet(): void {
    this.#lastText = ''
    this.#speech?.cancel()
  }

  #say(share: number): void {
    if (this.#settings().speaks && this.#lastText !== '') this.#speak(this.#lastText, share)
  }

  #speak(text: string, share: number): void {
    this.#speech?.cancel()
    if (this.voice !== null) this.#speech?.speak(text, this.voice, this.#settings().rate * share)
  }

  #look(): void {
    this.#all = [...(this.#speech?.getVoices() ?? [])]
  }
}

/** Those that say a language, first the ones that need no network. */
function voicesOf(voices: readonly Voice[], language: Language): readonly Voice[] {
  return voices
    .filter(({ lang }) => languageOf([lang]) === language)
    .toSorted((one, other) => Number(other.localService) - Number(one.localService))
}

/**
 * The voice that a person chose, where it is still there; else one that needs no network, the system's own first. A voice
 * that sends what it says to somebody else is never taken unless it was chosen.
 */
export function voiceFor(voices: readonly Voice[], chosen: string | null): Voice | null {
  const local = voices.filter(({ localService }) => localService)
  return (
    voices.find(({ name }) => name === chosen) ?? local.find((voice) => voice.default) ?? local[0] ?? null
  )
}

/** Null in a browser that cannot speak. */
export function speechOfThisMachine(): Speech | null {
  if (typeof window !== 'object' || !('speechSynthesis' in window)) return null
  const { speechSynthesis } = window
  return {
    getVoices: () => speechSynthesis.getVoices(),
    speak: (text, voice, rate) => {
      const utterance = new SpeechSynthesisUtterance(text)
      utterance.voice = voice as SpeechSynthesisVoice
      utterance.lang = voice.lang
      utterance.rate = rate
      speechSynthesis.speak(utterance)
    },
    cancel: () => speechSynthesis.cancel(),
    addEventListener: (event, heard) => speechSynthesis.addEventListener(event, heard),
  }
}
