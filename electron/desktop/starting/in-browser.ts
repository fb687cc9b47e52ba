import { problem } from '../../../core/problem/index.ts'
import type { AnswerRequest } from '../../requests/index.ts'

/** The desktop host's answers for a browser, which makes PDFs and saves files itself: it finds what it would find at the local host. */
export function inBrowser(answer: AnswerRequest): AnswerRequest {
  return async (name, input) => {
    if (name === 'sheet.pdf') return { ok: false, problem: problem('pdf-by-browser', {}) }
    if (name === 'files.save') return { ok: false, problem: problem('save-by-browser', {}) }
    const answered = await answer(name, input)
    if (name !== 'host.read' || !answered.ok) return answered
    return { ok: true, value: { ...(answered.value as object), host: 'local' } as typeof answered.value }
  }
}
