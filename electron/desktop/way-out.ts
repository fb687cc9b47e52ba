import { app, clipboard, dialog } from 'electron'
import type { BrowserWindow } from 'electron'
import { newToken } from '../local/token.ts'
import { startLocalHost } from '../local/server.ts'
import type { LocalHost } from '../local/server.ts'
import type { Pages } from '../pages/index.ts'
import type { Answering } from '../requests/index.ts'
import { inBrowser } from './in-browser.ts'
import { pageFaults } from './page-faults.ts'
import type { PageFault } from './page-faults.ts'

/** The way on where the page in the window fails again and again: any browser, at this process, on this record. */
export class WayOut {
  readonly #served: { readonly pages: Pages; readonly answer: Answering }
  #host: Promise<LocalHost> | null = null

  constructor(served: { readonly pages: Pages; readonly answer: Answering }) {
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
        message: `${pageFaults[fault]} It was loaded again once, and that did not help.`,
        detail: [
          'What was confirmed is on disk.',
          `You can continue in a browser on this machine as long as this message is open, at ${address}`,
          ...(copied ? ['The address is copied: paste it into a browser.'] : []),
        ].join('\n\n'),
        buttons: ['Load the page again', 'Copy the address', 'End Bedplate'],
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
