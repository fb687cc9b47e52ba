import { ipcMain } from 'electron'
import type { IpcMainInvokeEvent } from 'electron'
import { mostBytesOf } from '../../core/contract/index.ts'
import { problem } from '../../core/problem/index.ts'
import { isRequestName } from '../requests/index.ts'
import type { AnswerRequest } from '../requests/index.ts'
import { channel } from './channel.ts'
import { isOurs } from './window/window-rules.ts'

/** Answers the window. Nothing else of the program touches `ipcMain`: who asks is checked here, for all requests. */
export function answerWindow(answer: AnswerRequest): void {
  ipcMain.handle(channel, async (event, name: unknown, text: unknown) =>
    JSON.stringify(await (isOurWindow(event) ? answerText(answer, name, text) : unknown(''))),
  )
}

/**
 * Answers a request as it comes over the bridge: as JSON text, like the local host's, so that what goes through one host goes
 * through the other. The bridge by itself refuses a `Proxy`, which every `$state` of Svelte's is
 * (shell/renderer/api/electron_api_context_bridge.cc, `IsProxy`), and keeps `undefined`, which JSON leaves out.
 */
export async function answerText(
  answer: AnswerRequest,
  name: unknown,
  text: unknown,
): Promise<Awaited<ReturnType<AnswerRequest>>> {
  if (typeof name !== 'string') return unknown('')
  if (typeof text !== 'string') return unknown(name.slice(0, 40))
  // As the local host does with a body: what is longer than the request can be is not parsed.
  if (isRequestName(name) && text.length > mostBytesOf(name))
    return { ok: false, problem: problem('request-too-large', {}) }
  let input: unknown
  try {
    input = JSON.parse(text)
  } catch {
    return { ok: false, problem: problem('request-unreadable', { fault: 'it is not JSON' }) }
  }
  return answer(name, input)
}

function unknown(name: string): Awaited<ReturnType<AnswerRequest>> {
  return { ok: false, problem: problem('request-unknown', { name }) }
}

/** The window's own page, and not a frame within it or a page it was led to. */
function isOurWindow({ senderFrame }: IpcMainInvokeEvent): boolean {
  return senderFrame !== null && senderFrame.parent === null && isOurs(senderFrame.url)
}
