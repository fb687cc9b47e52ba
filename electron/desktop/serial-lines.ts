import { dialog } from 'electron'
import type { BrowserWindow, SerialPort, Session } from 'electron'
import { words } from '../launch/spoken.ts'
import { isOurs } from './window/window-rules.ts'

const { serial } = words.desktop

/** A person's choice among the lines of the machine; null for none of them. */
export type ChooseLine = (lines: readonly SerialPort[]) => Promise<SerialPort | null>

/**
 * Lets our own page read the serial lines that a person chose since the program started, and no other. Electron gives none
 * unless the choice is taken over, and a handler for devices is asked again at each opening
 * (shell/browser/serial/serial_chooser_controller.cc, OnGetDevices; serial_chooser_context.cc, HasPortPermission).
 */
export function offerSerialLines(session: Session, choose: ChooseLine): void {
  const chosen = new Set<string>()
  session.on('select-serial-port', (event, lines, contents, answer) => {
    event.preventDefault()
    if (!isOurs(contents.getURL())) {
      answer('')
      return
    }
    void choose(lines).then(
      (line) => {
        if (line)
          chosen.add(keyOf(line.displayName ?? line.portName, line.serialNumber ?? line.deviceInstanceId))
        answer(line?.portId ?? '')
      },
      () => answer(''),
    )
  })
  session.setDevicePermissionHandler(({ deviceType, origin, device }) => {
    if (deviceType !== 'serial' || !isOurs(origin)) return false
    // As PortInfoToValue makes it, whatever the type says (shell/browser/serial/serial_chooser_context.cc).
    const { name, serial_number, device_instance_id } = device as unknown as Readonly<Record<string, unknown>>
    return chosen.has(keyOf(name, serial_number ?? device_instance_id))
  })
}

/** What a line is known by for as long as the program runs. */
function keyOf(name: unknown, number: unknown): string {
  return JSON.stringify([name, number ?? null])
}

/** So many lines are offered at once: each has a button of its own. */
const mostAtOnce = 6

/** Asks in a box of the system, those on USB first: a computer has lines of its own that lead nowhere. */
export function chooseByBox(window: () => BrowserWindow | undefined): ChooseLine {
  return async (lines) => {
    const onUsbFirst = lines.toSorted((one, other) => Number(!one.vendorId) - Number(!other.vendorId))
    for (let from = 0; ; from = from + mostAtOnce < lines.length ? from + mostAtOnce : 0) {
      const offered = onUsbFirst.slice(from, from + mostAtOnce)
      const isMore = lines.length > mostAtOnce
      const buttons = [...offered.map(nameOf), ...(isMore ? [serial.others] : []), serial.cancel]
      const options = {
        type: 'question' as const,
        title: 'Bedplate',
        message: lines.length === 0 ? serial.none : serial.which,
        buttons,
        defaultId: buttons.length - 1,
        cancelId: buttons.length - 1,
        noLink: true,
      }
      const over = window()
      const { response } = await (over
        ? dialog.showMessageBox(over, options)
        : dialog.showMessageBox(options))
      const line = offered[response]
      if (line !== undefined) return line
      if (!isMore || response !== offered.length) return null
    }
  }
}

function nameOf({ displayName, portName }: SerialPort): string {
  return displayName ? `${displayName} (${portName})` : portName
}
