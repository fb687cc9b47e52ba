/**
 * Where the program is in its life. `looping` begins after `ready`: until then there is no message loop, and what would
 * end the program either ends the process at once (`app.exit`) or waits for it (`app.quit`).
 * electron/electron: shell/browser/browser.cc, shell/browser/electron_browser_main_parts.cc
 */
export const life = {
  isReady: false,
  isQuitting: false,
  isExiting: false,
  isShutDown: false,
  isLooping: false,
  exitCode: 0,
}

/** What a window list needs of windows to close them all. */
export interface Closing {
  close(): void
  destroy(): void
}

export const openWindows = new Map<number, Closing>()
