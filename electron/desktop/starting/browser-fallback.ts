import { app, clipboard, dialog } from 'electron'
import type { BrowserWindow } from 'electron'
import { words } from '../../launch/spoken.ts'
import { newToken } from '../../local/token.ts'
import { startLocalHost } from '../../local/server.ts'
import type { LocalHost } from '../../local/server.ts'
import type { Pages } from '../../pages/index.ts'
import type { AnswerRequest } from '../../requests/index.ts'
import { inBrowser } from './in-browser.ts'
import type { PageFault } from '../window/page-faults.ts'

const { desktop } = words

/** The way on where the page in the window fails again and again: any browser, at this process, on this record. */
export class BrowserFallback {
  readonly #served: { readonly pages: Pages; readonly answer: AnswerRequest }
  #host: Promise<LocalHost> | null = null

  constructor(served: { readonly pages: Pages; readonly answer: AnswerRequest }) {
    this.#served = served
  }

  /** Tells the person, until they choose to load the page again or to end. */
  readonly ask = async (window: BrowserWindow, fault: PageFault): Promise<'load-again' | 'ended'> => {
    const answer = inBrowser(this.#served.answer)
    this.#host ??= startLocalHost({ ...this.#served, answer, token: newToken() })
    const { address } = await this.#host
    for (let copied = false; ;) {
      const { response } = await dialog.showMessageBox(window, {
        type: 'error',
        title: 'Bedplate',
        message: desktop.pageFaultAgain({ fault: desktop.pageFaults[fault] }),
        detail: [
          desktop.confirmedIsKept,
          desktop.inBrowser({ address }),
          ...(copied ? [desktop.addressCopied] : []),
        ].join('\n\n'),
        buttons: [desktop.loadAgain, desktop.copyAddress, desktop.end],
        defaultId: 0,
        cancelId: 0,
        noLink: true,
      })
      if (response === 0) return 'load-again'
      if (response === 2) {
        app.quit()
        return 'ended'
      }
      await clipboard.writeText(address)
      copied = true
    }
  }

  async close(): Promise<void> {
    await (await this.#host)?.close()
  }
}
