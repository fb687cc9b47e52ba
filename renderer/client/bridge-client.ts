import type { Client } from '../../core/contract/index.ts'
import { hostLost, parseAnswer } from './answer.ts'

/** The one function that the desktop host's preload gives the window. */
export interface Bridge {
  request(name: string, input: unknown): Promise<unknown>
}

declare global {
  interface Window {
    readonly bedplate?: Bridge
  }
}

/** Asks the desktop host. */
export function bridgeClient(bridge: Bridge): Client {
  return {
    async request(name, input) {
      try {
        return parseAnswer(name, await bridge.request(name, input))
      } catch {
        return hostLost()
      }
    },
  }
}
