import type { Client } from '../../core/contract/index.ts'
import { bridgeClient } from './bridge-client.ts'
import { httpClient } from './http-client.ts'
import { takeToken } from './token.ts'

/** The way to the host this window was opened by: the desktop host's bridge, else the local host's port. */
export function connect(): Client {
  const bridge = globalThis.window.bedplate
  return bridge ? bridgeClient(bridge) : httpClient(takeToken())
}
