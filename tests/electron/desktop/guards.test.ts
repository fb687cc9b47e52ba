import type { Session, WebContents } from 'electron'
import { describe, expect, it } from 'vitest'
import { refusePermissions } from '../../../electron/desktop/guards.ts'
import { origin } from '../../../electron/desktop/window/window-rules.ts'

type Request = NonNullable<Parameters<Session['setPermissionRequestHandler']>[0]>
type Check = NonNullable<Parameters<Session['setPermissionCheckHandler']>[0]>

/** The handlers that a session was given. */
function handlers() {
  let request: Request | null = null
  let check: Check | null = null
  refusePermissions({
    setPermissionRequestHandler: (handler: Request) => void (request = handler),
    setPermissionCheckHandler: (handler: Check) => void (check = handler),
  } as unknown as Session)
  return { request: request!, check: check! }
}

/** Whether who asks may have it, when it is asked for and when it is looked up. */
function may(
  page: string | null,
  permission: string,
  frame: string,
  isMainFrame: boolean,
  media: { asked?: object; looked?: object } = {},
) {
  const { request, check } = handlers()
  const contents = page === null ? null : ({ getURL: () => page } as WebContents)
  let isAllowed: boolean | null = null
  const details = { requestingUrl: frame, isMainFrame }
  if (contents !== null)
    request(contents, permission as never, (answer) => (isAllowed = answer), {
      ...details,
      ...media.asked,
    })
  return {
    asked: isAllowed,
    looked: check(contents, permission as never, frame, { ...details, ...media.looked }),
  }
}

const page = `${origin}/index.html`

describe('a permission', () => {
  it.each(['fullscreen', 'screen-wake-lock', 'serial'])(
    'that our page uses is granted to it: %s',
    (permission) => {
      expect(may(page, permission, page, true)).toEqual({ asked: true, looked: true })
      expect(may(page, permission, `${origin}/`, true)).toEqual({ asked: true, looked: true })
    },
  )

  it.each([
    ['a frame of another site in our page', page, 'https://example.com/', false],
    ['another site that says it is the page itself', page, 'https://example.com/', true],
    ['a frame of our own in our page', page, page, false],
    ['a page of no origin in our page', page, 'about:srcdoc', false],
    ['a page whose origin is none', page, '', true],
    ['another page', 'https://example.com/', 'https://example.com/', true],
    ['another page for ours', 'https://example.com/', page, true],
  ])('is refused to %s', (_, around, frame, isMainFrame) => {
    expect(may(around, 'fullscreen', frame, isMainFrame)).toEqual({ asked: false, looked: false })
  })

  it('is refused to what has no page', () => {
    expect(may(null, 'fullscreen', page, true).looked).toBe(false)
  })

  it.each(['geolocation', 'media', 'usb', 'clipboard-read', 'openExternal', 'pointerLock'])(
    'that our page does not use is refused to it: %s',
    (permission) => {
      expect(may(page, permission, page, true)).toEqual({ asked: false, looked: false })
    },
  )

  it('for the camera is granted for its picture alone, to our page', () => {
    const securityOrigin = `${origin}/`
    const camera = {
      asked: { mediaTypes: ['video'], securityOrigin },
      looked: { mediaType: 'video', securityOrigin },
    }
    expect(may(page, 'media', page, true, camera)).toEqual({ asked: true, looked: true })
    expect(may('https://example.com/', 'media', 'https://example.com/', true, camera)).toEqual({
      asked: false,
      looked: false,
    })
    expect(may(page, 'media', page, false, camera)).toEqual({ asked: false, looked: false })
  })

  it.each([
    ['the microphone', ['audio'], 'audio', `${origin}/`],
    ['camera and microphone together', ['audio', 'video'], 'audio', `${origin}/`],
    ['nothing named', [], 'unknown', `${origin}/`],
    ['the camera, for another site', ['video'], 'video', 'https://example.com/'],
  ])('for %s is refused', (_, mediaTypes, mediaType, securityOrigin) => {
    const media = { asked: { mediaTypes, securityOrigin }, looked: { mediaType, securityOrigin } }
    expect(may(page, 'media', page, true, media)).toEqual({ asked: false, looked: false })
  })
})
