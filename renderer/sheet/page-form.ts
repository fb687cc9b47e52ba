import type { Words } from '../../core/words/index.ts'

export const papers = ['A4', 'Letter'] as const
export type Paper = (typeof papers)[number]

/** What stands in the margins of each page. */
export interface PageMargins {
  readonly foot: string
  /** Before the number of the page, and between it and how many there are. */
  readonly numbered: Words['sheet']['page']['numbered']
  /** At the head, where the page must not pass for a sound one. */
  readonly reason: string | null
}

/** Characters that would end or break a CSS string, as CSS escapes. */
function cssString(text: string): string {
  return `"${text.replace(/["\\\p{Cc}]/gu, (character) => `\\${character.codePointAt(0)!.toString(16)} `)}"`
}

/**
 * The form of the printed pages: paper, margins, and a foot on each page that says which build it is of, its head code,
 * and `page n of m`. Given to the browser as a constructed style sheet, because a page's margin boxes take no element
 * and the content policy takes no inline style.
 */
export function pageForm(paper: Paper, margins: PageMargins): CSSStyleSheet {
  const form = new CSSStyleSheet()
  form.replaceSync(pageRules(paper, margins))
  return form
}

/** The text of that style sheet. */
export function pageRules(paper: Paper, { foot, numbered, reason }: PageMargins): string {
  const head =
    reason === null
      ? ''
      : `@top-left { content: ${cssString(reason)}; width: 100%; text-align: left; white-space: normal; font: bold 9pt sans-serif; }`
  return `@page {
    size: ${paper === 'A4' ? 'A4' : 'letter'};
    margin: ${reason === null ? 14 : 24}mm 14mm 18mm;
    ${head}
    @bottom-left { content: ${cssString(foot)}; font: 8pt sans-serif; }
    @bottom-right { content: ${cssString(numbered[0])} counter(page) ${cssString(numbered[1])} counter(pages); font: 8pt sans-serif; }
  }`
}
