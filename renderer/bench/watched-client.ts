import type { Client } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'

/** The same client; `lost` hears when the record was taken away under the host, whatever was asked. */
export function watchedClient(client: Client, lost: (problem: Problem) => void): Client {
  return {
    async request(name, input) {
      const answer = await client.request(name, input)
      if (!answer.ok && answer.problem.code === 'record-not-in-place') lost(answer.problem)
      return answer
    },
  }
}
