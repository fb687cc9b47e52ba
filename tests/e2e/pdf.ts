import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { en } from '../../core/words/index.ts'

/** What stands at the foot of a page. */
export function pageOf(page: number, pages: number): string {
  const [before, between] = en.sheet.page.numbered
  return `${before}${page}${between}${pages}`
}

/** The text of each page of a PDF, runs of white space folded. */
export async function pagesOf(pdf: Buffer): Promise<string[]> {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise
  const pages: string[] = []
  for (let number = 1; number <= document.numPages; number++) {
    const content = await (await document.getPage(number)).getTextContent()
    pages.push(
      content.items
        .map((item) => ('str' in item ? item.str : ''))
        .join(' ')
        .replace(/\s+/g, ' '),
    )
  }
  return pages
}
