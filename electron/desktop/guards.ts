import type { App, Session } from 'electron'
import { contentPolicy } from '../pages/index.ts'
import { isOurs } from './window-rules.ts'

/** Refuses every permission: Electron grants all that are asked for unless both handlers say otherwise. */
export function refusePermissions(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false))
  session.setPermissionCheckHandler(() => false)
  session.setDevicePermissionHandler(() => false)
}

/** Puts the policy on whatever a page loads, from wherever, as a second line behind the pages' own headers. */
export function putPolicyOnAll(session: Session): void {
  session.webRequest.onHeadersReceived(({ responseHeaders }, answer) => {
    answer({ responseHeaders: { ...responseHeaders, 'content-security-policy': [contentPolicy] } })
  })
}

/** Keeps every page where it is: no other address, no second window, no page within the page. */
export function refuseLeaving(app: App): void {
  app.on('web-contents-created', (_event, contents) => {
    contents.on('will-navigate', (event) => {
      if (!isOurs(event.url)) event.preventDefault()
    })
    contents.on('will-redirect', (event) => event.preventDefault())
    contents.on('will-frame-navigate', (event) => {
      if (!event.isMainFrame) event.preventDefault()
    })
    contents.on('will-attach-webview', (event) => event.preventDefault())
    contents.setWindowOpenHandler(() => ({ action: 'deny' }))
  })
}
