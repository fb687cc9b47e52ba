import { join } from 'node:path'
import { BrowserWindow, Menu, nativeTheme, screen } from 'electron'
import { groundColour } from './ground-colour.ts'
import { applicationMenu, contextMenu } from './menus.ts'
import { least, placeFor } from './window-place.ts'
import type { Rectangle, WindowPlace } from './window-place.ts'
import type { WindowMemory } from './window-memory.ts'
import { origin, pageRules } from './window-rules.ts'

export const firstPage = `${origin}/index.html`

/** How long a page may take to its first paint where nobody waits for it, in milliseconds. */
const lateMs = 20_000

/**
 * Makes the one window, hidden, where it was left, on the ground that its page will have. It is shown when the page is painted.
 * One that never is would leave a program that nobody sees: where no launcher waits for the window, and ends what shows none,
 * it is shown all the same after a while. Electron must be ready.
 */
export function makeWindow(
  root: string,
  memory: WindowMemory,
  { isWaitedFor }: { readonly isWaitedFor: boolean },
): BrowserWindow {
  nativeTheme.themeSource = themeSource(memory.now.theme)
  dressMenu()
  const place = placeFor(memory.now.place, workAreas())
  const window = new BrowserWindow({
    ...place.bounds,
    minWidth: least.width,
    minHeight: least.height,
    show: false,
    title: 'Bedplate',
    icon: join(root, 'assets/icon.png'),
    backgroundColor: groundColour(memory.now.theme, nativeTheme.shouldUseDarkColors),
    autoHideMenuBar: true,
    webPreferences: { ...pageRules, preload: join(root, 'dist/desktop/preload.cjs') },
  })
  window.once('ready-to-show', () => show(window, place.state))
  if (!isWaitedFor) setTimeout(() => show(window, place.state), lateMs).unref()
  window.on('close', () => memory.keep({ place: placeOf(window) }))
  window.webContents.on('context-menu', (_event, params) => {
    const items = contextMenu(params)
    if (items.length > 0) Menu.buildFromTemplate(items).popup({ window })
  })
  return window
}

/** The menu in the language of the time. */
export function dressMenu(): void {
  Menu.setApplicationMenu(Menu.buildFromTemplate(applicationMenu(process.platform)))
}

/** Also where the page never came to a first paint: a fault is shown over a window that can be seen. */
export function show(window: BrowserWindow, state: WindowPlace['state'] = 'normal'): void {
  if (window.isDestroyed() || window.isVisible()) return
  if (state === 'maximized') window.maximize()
  window.show()
  if (state === 'full-screen') window.setFullScreen(true)
}

/** What the bench chose goes to the system's own parts of the window too, and is there at the next start before the page is. */
export function dressWindow(
  window: BrowserWindow,
  memory: WindowMemory,
  theme: WindowMemory['now']['theme'],
): void {
  memory.keep({ theme })
  nativeTheme.themeSource = themeSource(theme)
  if (!window.isDestroyed()) window.setBackgroundColor(groundColour(theme, nativeTheme.shouldUseDarkColors))
}

export function bringToFront(): void {
  const [window] = BrowserWindow.getAllWindows()
  if (window === undefined) return
  if (window.isMinimized()) window.restore()
  window.show()
  window.focus()
}

function placeOf(window: BrowserWindow): WindowPlace {
  const state = window.isFullScreen() ? 'full-screen' : window.isMaximized() ? 'maximized' : 'normal'
  return { bounds: window.getNormalBounds(), state }
}

function workAreas(): [Rectangle, ...Rectangle[]] {
  const main = screen.getPrimaryDisplay()
  const others = screen.getAllDisplays().filter(({ id }) => id !== main.id)
  return [main.workArea, ...others.map(({ workArea }) => workArea)]
}

function themeSource(theme: WindowMemory['now']['theme']): 'system' | 'light' | 'dark' {
  return theme === 'as-the-system' ? 'system' : theme
}
