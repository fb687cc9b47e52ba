import type { App, Session, WebContents } from 'electron'
import { contentPolicy } from '../pages/index.ts'
import { isOurs } from './window/window-rules.ts'

/**
 * What our own page may ask for: the whole screen for the bench view, that the screen stays on while bolts are pulled, and a
 * serial line, which a person then chooses.
 */
const granted: readonly string[] = ['fullscreen', 'screen-wake-lock', 'serial']

/** Who asks for what, as both handlers are given it. */
interface PermissionRequest {
  readonly contents: WebContents | null
  readonly permission: string
  readonly frame: string
  readonly isMainFrame: boolean
  /** Of `media` alone: camera and microphone go by one name. */
  readonly media?: readonly string[]
  readonly mediaOrigin?: string | undefined
}

/**
 * Refuses every other permission but those for single devices, which `offerSerialLines` looks after: Electron grants all that are asked for unless both handlers say otherwise. Who asks is
 * known by the frame that asks, not by the page around it: that is ours although a frame in it is not. The camera is granted
 * for its picture alone: with a sound, or with what is not named, the whole request is refused
 * (shell/browser/web_contents_permission_helper.cc, RequestMediaAccessPermission).
 */
export function refusePermissions(session: Session): void {
  session.setPermissionRequestHandler((contents, permission, answer, details) => {
    const { requestingUrl: frame, isMainFrame } = details
    const asked =
      'mediaTypes' in details ? { media: details.mediaTypes ?? [], mediaOrigin: details.securityOrigin } : {}
    answer(isGranted({ contents, permission, frame, isMainFrame, ...asked }))
  })
  session.setPermissionCheckHandler((contents, permission, frame, details) => {
    const { isMainFrame, mediaType, securityOrigin } = details
    const asked = mediaType === undefined ? {} : { media: [mediaType], mediaOrigin: securityOrigin }
    return isGranted({ contents, permission, frame, isMainFrame, ...asked })
  })
}

function isGranted({
  contents,
  permission,
  frame,
  isMainFrame,
  media = [],
  mediaOrigin,
}: PermissionRequest): boolean {
  const isCamera =
    media.length === 1 && media[0] === 'video' && (mediaOrigin === undefined || isOurs(mediaOrigin))
  return (
    (granted.includes(permission) || (permission === 'media' && isCamera)) &&
    contents !== null &&
    isOurs(contents.getURL()) &&
    isMainFrame &&
    isOurs(frame)
  )
}

/**
 * Refuses every download: the page would not hear how it ended, and the person would be asked under the address of a blob
 * (shell/browser/electron_download_manager_delegate.cc). What the page saves it asks for by a request.
 */
export function refuseDownloads(session: Session): void {
  session.on('will-download', (event) => event.preventDefault())
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
