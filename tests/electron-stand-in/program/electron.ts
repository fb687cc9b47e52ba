import type Electron from 'electron'
import { app } from './app.ts'
import { dialog } from './dialog.ts'
import './downloads.ts'
import './permissions.ts'
import { ipcMain } from './ipc.ts'
import {
  clipboard,
  nativeTheme,
  powerMonitor,
  powerSaveBlocker,
  safeStorage,
  screen,
  shell,
} from './machine.ts'
import { Menu } from './menu.ts'
import { registerSchemesAsPrivileged, type sessionProtocol } from './scheme.ts'
import { session } from './session.ts'
import { strict } from './strict.ts'
import { BrowserWindow } from './windows.ts'

// The module `electron` of the main process, as far as the desktop host uses it, with the laws of Electron 45. What is
// not played throws when it is touched; a name that is not exported here is an error when main is loaded.

/** lib/browser/api/protocol.ts: all but the first two go to the default session, which is there after ready. */
const protocol = strict('protocol', {
  registerSchemesAsPrivileged,
  handle: (...values: Parameters<typeof sessionProtocol.handle>) => ofDefaultSession().handle(...values),
  unhandle: (...values: Parameters<typeof sessionProtocol.unhandle>) =>
    ofDefaultSession().unhandle(...values),
  isProtocolHandled: (scheme: string) => ofDefaultSession().isProtocolHandled(scheme),
})

function ofDefaultSession(): typeof sessionProtocol {
  return session.defaultSession.protocol
}

const played = {
  app,
  BrowserWindow,
  clipboard,
  dialog,
  ipcMain,
  Menu,
  nativeTheme,
  powerMonitor,
  powerSaveBlocker,
  protocol,
  safeStorage,
  screen,
  session,
  shell,
} satisfies Partial<Record<keyof typeof Electron, object>>

export default played
export {
  app,
  BrowserWindow,
  clipboard,
  dialog,
  ipcMain,
  Menu,
  nativeTheme,
  powerMonitor,
  powerSaveBlocker,
  protocol,
  safeStorage,
  screen,
  session,
  shell,
}
