import { mkdirSync } from 'node:fs'
import { homedir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { app, BrowserWindow, dialog, Menu, protocol, session } from 'electron'
import { sentenceOf } from '../../core/problem/index.ts'
import { dataFolder } from '../launch/data-folder.ts'
import { readPages } from '../pages/index.ts'
import { openRequests } from '../requests/index.ts'
import { putPolicyOnAll, refuseLeaving, refusePermissions } from './guards.ts'
import { answerWindow } from './ipc.ts'
import { savePdf } from './pdf.ts'
import { servePages } from './scheme.ts'
import { origin, pageRules, scheme, schemeRights } from './window-rules.ts'

// The desktop host. What must be settled before the first page can exist comes first.
app.enableSandbox()
protocol.registerSchemesAsPrivileged([{ scheme, privileges: schemeRights }])
refuseLeaving(app)

const root = join(import.meta.dirname, '../..')
const { values } = parseArgs({
  args: process.argv.slice(1),
  options: { data: { type: 'string' } },
  strict: false,
})
const data = dataFolder(typeof values.data === 'string' ? values.data : undefined, {
  platform: process.platform,
  env: process.env,
  home: homedir(),
  cwd: process.cwd(),
})
mkdirSync(data, { recursive: true, mode: 0o700 }) // before Chromium makes it with wider rights
app.setPath('userData', join(data, 'window'))

if (app.requestSingleInstanceLock()) {
  app.on('second-instance', showWindow)
  app.on('window-all-closed', () => app.quit())
  // Not awaited: Electron becomes ready only when this module has been evaluated (lib/browser/init.ts, appCodeLoaded),
  // so that a module that waits for it at its top level waits for ever.
  void app.whenReady().then(open).catch(giveUp)
} else {
  app.quit()
}

/** Ends with a word: what is rejected and not caught would leave a process without a window that never ends. */
function giveUp(error: unknown): void {
  console.error(error)
  dialog.showErrorBox('Bedplate', `Bedplate could not open its window: ${String(error)}`)
  app.exit(1)
}

async function open(): Promise<void> {
  process.umask(0o077)
  const why = 'Electron is there'
  const facts = { host: 'desktop', why, version: app.getVersion(), dataFolder: data } as const
  const opened = await openRequests(facts, join(root, 'specs'), (line) => console.error(line), savePdf)
  if (!opened.ok) {
    dialog.showErrorBox('Bedplate', sentenceOf(opened.problem))
    app.exit(1)
    return
  }
  const { close } = opened.value
  app.once('will-quit', (event) => {
    event.preventDefault() // until the record is closed; then it is quit for good
    void close().then(() => app.quit())
  })
  refusePermissions(session.defaultSession)
  putPolicyOnAll(session.defaultSession)
  servePages(readPages(join(root, 'dist/renderer')))
  answerWindow(opened.value.answer)
  Menu.setApplicationMenu(
    process.platform === 'darwin' ? Menu.buildFromTemplate([{ role: 'appMenu' }]) : null,
  )
  await openWindow()
}

async function openWindow(): Promise<void> {
  const window = new BrowserWindow({
    width: 1280,
    height: 840,
    minWidth: 720,
    minHeight: 520,
    show: false,
    webPreferences: { ...pageRules, preload: join(root, 'dist/desktop/preload.cjs') },
  })
  window.once('ready-to-show', () => window.show())
  await window.loadURL(`${origin}/index.html`)
}

function showWindow(): void {
  const [window] = BrowserWindow.getAllWindows()
  if (window?.isMinimized()) window.restore()
  window?.focus()
}
