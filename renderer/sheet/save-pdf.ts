import type { Client, ProblemMessage } from '../../core/contract/index.ts'
import type { Paper } from './page-form.ts'

/**
 * Has the page in the window put into a PDF: by the host, or by `print` where there is a browser around the window that
 * makes its own. Null when that was done, or when nobody chose a place for it.
 */
export async function savePdf(
  client: Client,
  print: () => void,
  page: { readonly paper: Paper; readonly fileName: string },
): Promise<ProblemMessage | null> {
  const answer = await client.request('sheet.pdf', page)
  if (answer.ok) return null
  if (answer.problem.code !== 'pdf-by-browser') return answer.problem
  print()
  return null
}
