import type { Words } from '../../core/words/index.ts'

export const papers = ['A4', 'Letter'] as const
export type Paper = (typeof papers)[number]

/** Characters that would end or break a CSS string, as CSS escapes. */
function cssString(text: string): string {
  return `"${text.replace(/["\\\p{Cc}]/gu, (character) => `\\${character.codePointAt(0)!.toString(16)} `)}"`
}

/**
 * The form of the printed pages: paper, margins, and a foot on each page that says which build it is of, its head code,
 * and `page n of m`. Given to the browser as a constructed style sheet, because a page's margin boxes take no element
 * and the content policy takes no inline style.
 */
export function pageForm(
  paper: Paper,
  foot: string,
  numbered: Words['sheet']['page']['numbered'],
): CSSStyleSheet {
  const form = new CSSStyleSheet()
  form.replaceSync(`@page {
    size: ${paper === 'A4' ? 'A4' : 'letter'};
    margin: 14mm 14mm 18mm;
    @bottom-left { content: ${cssString(foot)}; font: 8pt sans-serif; }
    @bottom-right { content: ${cssString(numbered[0])} counter(page) ${cssString(numbered[1])} counter(pages); font: 8pt sans-serif; }
  }`)
  return form
}
