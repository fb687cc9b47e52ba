import type { Language } from './language.ts'

/** What a build is found by where something was not as it should be, as its sheet says it: in all languages, since a search is made in any. */
export const flagWords = {
  outside: { en: 'outside', de: 'außerhalb', es: 'fuera' },
  replaced: { en: 'replaced', de: 'ersetzt', es: 'cambiado' },
  'used-again': { en: 'used again', de: 'wiederverwendet', es: 'reutilizado' },
  problem: { en: 'problem', de: 'Problem', es: 'problema' },
  'not-good': { en: 'not good', de: 'nicht in Ordnung', es: 'no está bien' },
  skipped: { en: 'skipped', de: 'übersprungen', es: 'omitido' },
  under: { en: 'under', de: 'zu wenig', es: 'insuficiente' },
  over: { en: 'over', de: 'zu viel', es: 'demasiado' },
  moved: { en: 'moved', de: 'bewegt', es: 'girado' },
  binds: { en: 'binds', de: 'dreht nicht frei', es: 'no gira libre' },
} as const satisfies Readonly<Record<string, { readonly [Each in Language]: string }>>

export type FlagWord = keyof typeof flagWords
