import { expect, it } from 'vitest'
import { loadWords } from '../../../core/words/index.ts'

/** ANSI Z535.6 and ISO 3864-2 for English; what signs in use in the other two say, from memory, no source. */
it.each([
  ['en', 'DANGER', 'WARNING', 'CAUTION', 'NOTICE'],
  ['de', 'GEFAHR', 'WARNUNG', 'VORSICHT', 'ACHTUNG'],
  ['es', 'PELIGRO', 'ADVERTENCIA', 'PRECAUCIÓN', 'AVISO'],
] as const)('a caution in %s begins with %s, %s, %s or %s', async (language, ...signalWords) => {
  const { signals } = await loadWords(language)
  expect([signals.DANGER, signals.WARNING, signals.CAUTION, signals.NOTICE]).toEqual(signalWords)
})
