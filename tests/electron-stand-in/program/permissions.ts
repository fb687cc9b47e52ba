import { answers } from './outside.ts'
import { playedSession } from './session.ts'
import { contentsOf } from './windows.ts'

/**
 * shell/browser/electron_permission_manager.cc: granted where no handler says otherwise. The origin that asks comes as a whole
 * address (`GURL`).
 */
answers['may-have'] = ({ window, permission, how, media = [] }) => {
  const { request, check, device } = playedSession
  const contents = contentsOf(window)
  if (contents === null) return false
  const url = contents.getURL()
  const { protocol, host } = new URL(url)
  const securityOrigin = `${protocol}//${host}/`
  const asked = media.length === 0 ? {} : { mediaTypes: media, securityOrigin }
  const looked = media.length === 0 ? {} : { mediaType: media[0], securityOrigin }
  if (how === 'check')
    return (
      check?.(contents, permission as never, securityOrigin, { isMainFrame: true, ...looked } as never) ??
      true
    )
  if (how === 'device') return device?.({ deviceType: permission, origin: url } as never) ?? false
  if (request === null) return true
  return new Promise<boolean>((resolve) =>
    request(contents, permission as never, resolve, {
      requestingUrl: url,
      isMainFrame: true,
      ...asked,
    }),
  )
}

/** shell/browser/serial/serial_chooser_controller.cc, OnGetDevices: nothing is chosen unless somebody takes the choice over. */
answers['select-serial'] = ({ window, lines }) => {
  const contents = contentsOf(window)
  if (contents === null) return ''
  return new Promise<string>((resolve) => {
    const isTaken = playedSession.send('select-serial-port', {}, lines, contents, resolve)
    if (!isTaken) resolve('')
  })
}

/** shell/browser/electron_permission_manager.cc, CheckDevicePermission: where there is no handler, what was chosen is kept. */
answers['may-open-serial'] = ({ device, origin }) =>
  playedSession.device?.({ deviceType: 'serial', origin, device } as never) ?? true
