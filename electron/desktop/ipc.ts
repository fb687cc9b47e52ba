import { ipcMain } from 'electron'
import type { IpcMainInvokeEvent } from 'electron'
import { problem } from '../../core/problem/index.ts'
import { told } from '../requests/index.ts'
import type { Answering } from '../requests/index.ts'
import { channel } from './channel.ts'
import { isOurs } from './window-rules.ts'

/** Answers the window. Nothing else of the program touches `ipcMain`: who asks is checked here, for all requests. */
export function answerWindow(answer: Answering): void {
  ipcMain.handle(channel, async (event, name: unknown, input: unknown) => {
    if (!isOurWindow(event) || typeof name !== 'string')
      return { ok: false, problem: told(problem('request-unknown', { name: '' })) }
    return answer(name, input)
  })
}

/** The window's own page, and not a frame within it or a page it was led to. */
function isOurWindow({ senderFrame }: IpcMainInvokeEvent): boolean {
  return senderFrame !== null && senderFrame.parent === null && isOurs(senderFrame.url)
}
