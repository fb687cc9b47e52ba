import type { Phrase } from '../../core/problem/index.ts'

/** How a code is read that stood in a sentence; a signal has none. */
const codeIn = (text = ''): number | null => (/^\d+$/.test(text) ? Number(text) : null)

/** The sentences in notes of earlier versions, each with what it says. */
const sentences: readonly (readonly [RegExp, (first?: string, second?: string) => Phrase])[] = [
  [
    /^nothing arrived for (\d+) s$/,
    (seconds) => ({ code: 'nothingArrived', facts: { seconds: Number(seconds) } }),
  ],
  [
    /^(\S+) answered (\d+)$/,
    (host = '', status) => ({ code: 'serverAnswered', facts: { host, status: Number(status) } }),
  ],
  [
    /^(\S+) cannot be reached: (.*)$/s,
    (host = '', cause = '') => ({ code: 'serverNotReached', facts: { host, cause } }),
  ],
  [
    /^its installer ended with (\d+|a signal) and left no program behind$/,
    (code) => ({ code: 'installerLeftNothing', facts: { code: codeIn(code) } }),
  ],
]

/** Why Electron could not be fetched, as a note has it: code and facts, or a sentence where an earlier version wrote it. */
export function asPhrase(noted: unknown): Phrase {
  if (typeof noted !== 'string') return noted as Phrase
  for (const [sentence, phraseOf] of sentences) {
    const found = sentence.exec(noted)
    if (found !== null) return phraseOf(found[1], found[2])
  }
  return { code: 'installerPrinted', facts: { line: noted } }
}
