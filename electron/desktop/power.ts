import { app, powerMonitor } from 'electron'
import type { BrowserWindow } from 'electron'

/**
 * Has the record flushed before the machine sleeps, and closed before it is switched off or the person is logged off. What
 * was confirmed is on disk anyway. On Linux and macOS a shutdown waits for the program where that asks for it
 * (docs/api/power-monitor.md, `shutdown`); Windows asks the window first and then ends the program as soon as it has heard
 * of it (shell/browser/native_window_views_win.cc, `WM_ENDSESSION`), so that all is done at the question.
 */
export function watchPower(window: BrowserWindow, flush: () => void): void {
  powerMonitor.on('suspend', flush)
  powerMonitor.on('shutdown', (event?: { preventDefault(): void }) => {
    event?.preventDefault()
    app.quit()
  })
  window.on('query-session-end', flush)
  window.on('session-end', () => app.quit())
}
