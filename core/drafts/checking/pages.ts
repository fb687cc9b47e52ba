import type { SpecDocument } from '../../engine/index.ts'
import { isAtOrIn } from '../forms/index.ts'
import type { Checker } from './check.ts'

type Page = NonNullable<SpecDocument['pages']>[number]

/** Where the manual prints a part of the spec: what is said of it, or of what it is a part of; null where nothing is. */
export function pageOf({ pages = [] }: SpecDocument, path: string): Page | null {
  const around = pages.filter((page) => isAtOrIn(path, page.path))
  return around.toSorted((one, other) => other.path.length - one.path.length)[0] ?? null
}

/** The document with the page of a part, entered by a person; without it where neither page nor document is typed. */
export function withPage(
  document: SpecDocument,
  path: string,
  typed: { readonly page: string; readonly document: string },
  { by, on }: Checker,
): SpecDocument {
  const { pages = [], ...rest } = document
  const others = pages.filter((page) => page.path !== path)
  const [page, title] = [typed.page.trim(), typed.document.trim()]
  if (page === '') return others.length === 0 ? rest : { ...rest, pages: others }
  return { ...rest, pages: [...others, { path, page, ...(title !== '' && { document: title }), by, on }] }
}
