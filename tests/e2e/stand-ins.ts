import type { Page } from '@playwright/test'

/** What a page is given in the place of a serial port and of a voice; it keeps their laws as far as the program meets them. */
export interface StandIns {
  /** One write of the instrument, once the page has its line open: a chunk as the line happens to bring it. */
  send(text: string): Promise<void>
  /** The plug is pulled: the stream breaks, and the port has no other. */
  unplug(): Promise<void>
  plugIn(): void
  /** All that was said aloud, with the rate at which it was. */
  readonly said: { readonly text: string; readonly rate: number }[]
}

/** The plug of the instrument on the line, by which a bench knows it again. */
export const standInPlug = { vendor: 4660, product: 1 }

/** To be called before the page is loaded. */
export async function withStandIns(page: Page): Promise<void> {
  await page.addInitScript((plug) => {
    type Line = ReadableStreamDefaultController<Uint8Array>
    let line = Promise.withResolvers<Line>()
    const heard: ((event: unknown) => void)[] = []
    const port = {
      readable: null as ReadableStream<Uint8Array> | null,
      open: () => {
        port.readable = new ReadableStream({ start: (controller) => line.resolve(controller) })
        return Promise.resolve()
      },
      close: () => {
        port.readable = null
        return Promise.resolve()
      },
      getInfo: () => ({ usbVendorId: plug.vendor, usbProductId: plug.product }),
    }
    const serial = {
      getPorts: () => Promise.resolve([port]),
      requestPort: () => Promise.resolve(port),
      addEventListener: (event: string, listener: (event: unknown) => void) => {
        if (event === 'connect') heard.push(listener)
      },
      removeEventListener: () => undefined,
    }
    const said: { text: string; rate: number }[] = []
    const voice = { name: 'Stand-in', lang: 'en-GB', default: true, localService: true }
    const speechSynthesis = {
      getVoices: () => [voice],
      speak: ({ text, rate }: { text: string; rate: number }) => void said.push({ text, rate }),
      cancel: () => undefined,
      addEventListener: () => undefined,
    }
    class SpeechSynthesisUtterance {
      readonly text: string
      rate = 1
      constructor(text: string) {
        this.text = text
      }
    }
    Object.defineProperty(navigator, 'serial', { value: serial })
    Object.defineProperty(window, 'speechSynthesis', { value: speechSynthesis })
    const standIns = {
      said,
      send: async (text: string) =>
        (await line.promise).enqueue(Uint8Array.from(text, (each) => each.charCodeAt(0))),
      unplug: async () => {
        port.readable = null
        const lost = await line.promise
        line = Promise.withResolvers<Line>()
        lost.error(new Error('the device has been lost'))
      },
      plugIn: () => heard.forEach((each) => each({ target: port })),
    }
    Object.assign(window, { SpeechSynthesisUtterance, standIns })
  }, standInPlug)
}

export function send(page: Page, text: string): Promise<void> {
  return page.evaluate((sent) => (window as unknown as { standIns: StandIns }).standIns.send(sent), text)
}

/** A line that never ends, made in the page: a megabyte does not go through the wire. */
export function sendMegabyte(page: Page): Promise<void> {
  return page.evaluate(() => (window as unknown as { standIns: StandIns }).standIns.send('1'.repeat(1e6)))
}

export function plug(page: Page, way: 'unplug' | 'plugIn'): Promise<void> {
  return page.evaluate((each) => (window as unknown as { standIns: StandIns }).standIns[each](), way)
}

/** What was said since the last time this was asked. */
export function saidSince(page: Page): Promise<StandIns['said']> {
  return page.evaluate(() => (window as unknown as { standIns: StandIns }).standIns.said.splice(0))
}
