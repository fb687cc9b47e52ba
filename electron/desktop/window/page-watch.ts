import { app } from 'electron'
import type { BrowserWindow } from 'electron'
import { en } from '../../../core/words/index.ts'
import { isLostLoad, onPageFault } from './page-faults.ts'
import type { FaultState, PageFault } from './page-faults.ts'
import { firstPage, show } from './window.ts'

/** How long a page that no longer answers may still come back by itself, in milliseconds: it may only be at work. */
const patienceMs = 10_000

/**
 * Watches over the page: a crashed or hung one stays a blank window otherwise. Each fault goes into the log; the page is
 * loaded again once; then `ask` is asked, and answers when the page is to be loaded again or the program has ended.
 */
export function watchPage(
  window: BrowserWindow,
  log: (line: string) => void,
  ask: (fault: PageFault) => Promise<'load-again' | 'ended'>,
): void {
  const contents = window.webContents
  let state: FaultState = { kind: 'well' }
  let hanging: NodeJS.Timeout | undefined
  let cause: PageFault = 'gone'

  const load = (): void => {
    if (!window.isDestroyed()) window.loadURL(firstPage).catch(() => undefined) // did-fail-load says what failed
  }
  const happened = (fault: PageFault, found: string): void => {
    log(`${en.desktop.pageFaults[fault]} ${found}`)
    if (window.isDestroyed()) return
    const next = onPageFault(state, performance.now())
    state = next.state
    if (next.act === 'load-again') load()
    if (next.act === 'ask') {
      show(window)
      void ask(fault).then((answer) => {
        if (answer === 'ended') return
        state = { kind: 'well' }
        load()
      })
    }
  }

  contents.on('render-process-gone', (_event, { reason, exitCode }) => {
    clearTimeout(hanging)
    if (reason === 'clean-exit') return
    const fault = cause
    cause = 'gone'
    happened(fault, `(${reason}, ${exitCode})`)
  })
  window.on('unresponsive', () => {
    log('The page in the window does not answer.')
    clearTimeout(hanging)
    hanging = setTimeout(() => {
      if (window.isDestroyed()) return
      cause = 'hung'
      contents.forcefullyCrashRenderer() // then it is gone, which the handler above says
    }, patienceMs)
  })
  window.on('responsive', () => {
    log('The page in the window answers again.')
    clearTimeout(hanging)
  })
  window.on('closed', () => clearTimeout(hanging))
  contents.on('did-fail-load', (_event, code, description, _url, isMainFrame) => {
    if (isLostLoad(code, isMainFrame)) happened('not-loaded', `(${description}, ${code})`)
  })
  contents.on('preload-error', (_event, _path, error) => happened('no-bridge', `(${error.message})`))
  app.on('child-process-gone', (_event, { type, reason, exitCode, name }) => {
    if (reason === 'clean-exit') return
    if (type === 'GPU') happened('no-graphics', `(${reason}, ${exitCode})`)
    else log(`A process of the program ended: ${type} ${name ?? ''} (${reason}, ${exitCode}).`)
  })
  load()
}
