import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { homedir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Phrase } from '../../core/problem/index.ts'
import { browserAmong, browserPlaces } from './browser.ts'
import { hasDisplay, isRoot } from './display.ts'
import { writeRedirectPage } from './redirect-page.ts'

export type WindowAnswer = { readonly opened: true } | { readonly opened: false; readonly why: Phrase }

/** A browser that has not ended by then shows the window, in milliseconds. */
const failureMs = 1_500

/**
 * Opens the address in a browser window without tabs or address bar, with a profile of its own in the data folder, which
 * must be there and be the user's alone. The address holds the token of this launch, and everybody on the machine can
 * read a command line: the browser is therefore pointed at a page in the data folder that leads on to the address.
 */
export async function openWindow(address: string, dataFolder: string): Promise<WindowAnswer> {
  const not = (why: Phrase): WindowAnswer => ({ opened: false, why })
  if (isRoot()) return not({ code: 'browserAsRoot', facts: {} })
  if (!hasDisplay(process.platform, process.env)) return not({ code: 'noDisplay', facts: {} })
  const browser = browserAmong(browserPlaces(process.platform, process.env, homedir()))
  if (browser === undefined) return not({ code: 'noBrowser', facts: {} })
  const profile = join(dataFolder, 'browser')
  // Later the browser itself opens the window where and as large as it was left; a size on the command line would undo that.
  const isFirst = !existsSync(profile)
  const page = writeRedirectPage(address, dataFolder, isFirst)
  return start(browser, [
    `--app=${appAddress(page)}`,
    `--user-data-dir=${profile}`,
    ...(isFirst ? ['--window-size=1280,800'] : []),
    '--no-first-run',
    '--no-default-browser-check',
    '--disable-sync',
  ])
}

/**
 * The address of a file for an app window. Chromium keeps such a window's place under its address, cut into parts at every
 * dot, and does not find it again there: seen in its `Preferences`, and that the window then opens as if for the first time.
 * Written as `%2E` a dot leads to the same file and is no cut.
 */
export function appAddress(file: string): string {
  return pathToFileURL(file).href.replaceAll('.', '%2E')
}

/** A browser that runs already takes the window over and its messenger ends well, so only a bad end is a failure. */
function start(browser: string, words: readonly string[]): Promise<WindowAnswer> {
  const child = spawn(browser, words, { stdio: 'ignore' })
  child.unref()
  process.once('exit', () => child.kill()) // no window stays behind that nothing answers
  return new Promise((resolve) => {
    const fail = (why: Phrase): void => resolve({ opened: false, why })
    child.on('error', (error) =>
      fail({ code: 'browserNotStarted', facts: { browser, message: error.message } }),
    )
    child.on('exit', (code) =>
      code === 0 ? resolve({ opened: true }) : fail({ code: 'browserEnded', facts: { browser, code } }),
    )
    setTimeout(() => resolve({ opened: true }), failureMs)
  })
}
