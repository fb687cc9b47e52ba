import type { SerialPort, Session, WebContents } from 'electron'
import { describe, expect, it, vi } from 'vitest'
import { offerSerialLines, type ChooseLine } from '../../../electron/desktop/serial-lines.ts'

vi.mock('electron', () => ({ dialog: {} }))

type Device = NonNullable<Parameters<Session['setDevicePermissionHandler']>[0]>
type Select = (
  event: object,
  lines: SerialPort[],
  contents: WebContents,
  answer: (id: string) => void,
) => void

const gauge = {
  portId: '2',
  portName: 'ttyUSB0',
  displayName: 'Gauge',
  vendorId: '1027',
  serialNumber: 'G7',
} as SerialPort
const wired = { portId: '1', portName: 'ttyS0' } as SerialPort

/** A session that offers lines by one choice. */
function offering(choose: ChooseLine) {
  let select: Select | null = null
  let device: Device | null = null
  offerSerialLines(
    {
      on: (_: string, listener: Select) => void (select = listener),
      setDevicePermissionHandler: (handler: Device) => void (device = handler),
    } as unknown as Session,
    choose,
  )
  return {
    select: (page: string) =>
      new Promise<string>((answer) =>
        select!(
          { preventDefault: () => undefined },
          [wired, gauge],
          { getURL: () => page } as WebContents,
          answer,
        ),
      ),
    mayOpen: (origin: string, named: object, deviceType = 'serial') =>
      device!({ deviceType, origin, device: named } as never),
  }
}

const page = 'bedplate://app/index.html'
const asElectronNamesIt = { name: 'Gauge', vendor_id: 1027, product_id: 24577, serial_number: 'G7' }

describe('a serial line', () => {
  it('is the one that a person chose, and may be opened again while the program runs', async () => {
    const { select, mayOpen } = offering(() => Promise.resolve(gauge))
    expect(mayOpen('bedplate://app', asElectronNamesIt)).toBe(false)
    await expect(select(page)).resolves.toBe('2')
    expect(mayOpen('bedplate://app', asElectronNamesIt)).toBe(true)
    expect(mayOpen('bedplate://app', { ...asElectronNamesIt, serial_number: 'G8' })).toBe(false)
    expect(mayOpen('https://example.com', asElectronNamesIt)).toBe(false)
    expect(mayOpen('bedplate://app', asElectronNamesIt, 'usb')).toBe(false)
  })

  it('is none where a person chose none, where another page asks, and where the question failed', async () => {
    await expect(offering(() => Promise.resolve(null)).select(page)).resolves.toBe('')
    await expect(offering(() => Promise.resolve(gauge)).select('https://example.com/')).resolves.toBe('')
    await expect(offering(() => Promise.reject(new Error('no box'))).select(page)).resolves.toBe('')
  })
})
