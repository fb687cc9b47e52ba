import { expect, type Page } from '@playwright/test'
import { languages, loadWords, type Language, type Words } from '../../core/words/index.ts'
import type { Bench } from './bench.ts'
import { pagesOf } from './pdf.ts'

/** What stands in the sentences of one language and of no other. */
const signs: { readonly [Each in Language]: RegExp } = {
  en: /(?<![\p{L}\p{N}])(the|and|of|with|from|each|page|entries|read|order|bolts|shells|marks)(?![\p{L}\p{N}])/u,
  de: /(?<![\p{L}\p{N}])(der|die|und|von|mit|Seite|Einträge|abgelesen|Schrauben|Lagerschalen|Kennzeichen)(?![\p{L}\p{N}])/u,
  es: /(?<![\p{L}\p{N}])(el|del|de|con|página|entradas|lectura|pedido|tornillos|semicojinetes|marcas)(?![\p{L}\p{N}])/u,
}

/** How a day is written where the page is printed in it. */
const dayIn = { de: /\d\d\.\d\d\.\d{4}/g, es: /\d{1,2}\s\p{Ll}{3,4}\s\d{4}/gu } as const

/** As another window of the bench would say it: the language changes here too, and nothing is loaded again. */
async function showIn(page: Page, language: Language): Promise<void> {
  await page.evaluate((chosen) => {
    const channel = new BroadcastChannel('language')
    channel.postMessage(chosen)
    channel.close()
  }, language)
  await expect(page.locator('html')).toHaveAttribute('lang', language)
}

/**
 * Prints the page that is shown in German and in Spanish, without loading it again, and reads it back: in that language alone, with its
 * decimal mark and with no day as programs write it, whole. `entered` stands there as a person typed it; whatever else it is to say
 * is for `look` to see.
 */
export async function printedInOthers(
  bench: Bench,
  entered: readonly string[],
  look: (says: (sentence: string) => boolean, words: Words) => void,
): Promise<void> {
  for (const language of ['de', 'es'] as const) {
    await showIn(bench.page, language)
    const printed = (await pagesOf(await bench.pdf())).join(' ')
    const text = entered.reduce((left, typed) => left.replaceAll(typed, ''), printed)
    expect(printed.replaceAll(/\s/g, '')).toContain(entered[0]!.replaceAll(/\s/g, ''))
    expect(text, language).toMatch(signs[language])
    for (const other of languages)
      if (other !== language) expect(signs[other].exec(text)?.[0], `${other} in ${language}`).toBeUndefined()
    const withoutDays = text.replaceAll(dayIn[language], '')
    expect(withoutDays).not.toMatch(/\d{4}-\d{2}-\d{2}/)
    expect(/\S*\d\.\d\S*/.exec(withoutDays)?.[0], language).toBeUndefined()
    expect(text).not.toContain('…')
    // Kerning parts letters in what is read back, so a sentence is looked for without its spaces.
    const bare = text.replaceAll(/\s/g, '')
    look((sentence) => bare.includes(sentence.replaceAll(/\s/g, '')), await loadWords(language))
  }
  await showIn(bench.page, 'en')
}
