import { parseArgs } from 'node:util'
import type { Phrase } from '../../core/problem/index.ts'
import { isLanguage, type Language } from '../../core/words/index.ts'

export interface LocalOptions {
  /** As typed; the platform's own place when absent. */
  readonly data: string | undefined
  /** Where the engine specs lie; those of the program when absent. */
  readonly specs: string | undefined
  readonly window: boolean
  /** What the bench speaks from now on; as it was when absent. */
  readonly language: Language | undefined
  /** Files to open, as typed. */
  readonly files: readonly string[]
  /** Why it is this host. */
  readonly why: Phrase
}

/** The command line of the local host; what it does not know it throws at, since only `npm start` calls it. */
export function localOptions(words: readonly string[]): LocalOptions {
  const { values, positionals } = parseArgs({
    args: [...words],
    allowPositionals: true,
    options: {
      data: { type: 'string' },
      specs: { type: 'string' },
      language: { type: 'string' },
      'no-window': { type: 'boolean' },
      local: { type: 'boolean' },
      because: { type: 'string' },
    },
  })
  return {
    data: values.data,
    specs: values.specs,
    language: values.language !== undefined && isLanguage(values.language) ? values.language : undefined,
    window: values['no-window'] !== true,
    files: positionals,
    why:
      values.because === undefined
        ? { code: 'hostByItself', facts: {} }
        : (JSON.parse(values.because) as Phrase),
  }
}
