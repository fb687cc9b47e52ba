import type { Client } from '../../core/contract/index.ts'
import { hostLost, parseAnswer } from './answer.ts'

/** The one function that the desktop host's preload gives the window; input and answer are JSON text. */
export interface Bridge {
  request(name: string, inputText: string): Promise<unknown>
}

declare global {
  interface Window {
    readonly bedplate?: Bridge
  }
}

/** Asks the desktop host, with the same text as the local host is sent, so that what one takes the other takes too. */
export function bridgeClient(bridge: Bridge): Client {
  return {
    async request(name, input) {
      try {
        return parseAnswer(name, JSON.parse(String(await bridge.request(name, JSON.stringify(input)))))
      } catch {
        return hostLost()
      }
    },
  }
}
