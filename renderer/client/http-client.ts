import type { Client } from '../../core/contract/index.ts'
import { hostLost, parseAnswer } from './answer.ts'

/** Asks the local host that served this page. A host that has ended is an answer too, not an exception. */
export function httpClient(token: string): Client {
  return {
    async request(name, input) {
      try {
        const response = await fetch(`/request/${name}`, {
          method: 'POST',
          headers: { 'content-type': 'application/json', 'x-bedplate-token': token },
          body: JSON.stringify(input),
        })
        return parseAnswer(name, await response.json())
      } catch {
        return hostLost()
      }
    },
  }
}
