import type { Client } from '../../core/contract/index.ts'
import { pathOrNone, type SaveOutcome } from '../parts/save-file.ts'
import type { Paper } from './page-form.ts'

/**
 * Has the page in the window put into a PDF: by the host, or by `print` where there is a browser around the window that
 * makes its own, of which the window hears nothing: null then.
 */
export async function savePdf(
  client: Client,
  print: () => void,
  page: { readonly paper: Paper; readonly fileName: string },
): Promise<SaveOutcome | null> {
  const answer = await client.request('sheet.pdf', page)
  if (answer.ok) return pathOrNone(answer.value.path)
  if (answer.problem.code !== 'pdf-by-browser') return { kind: 'refused', problem: answer.problem }
  print()
  return null
}
