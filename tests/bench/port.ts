import { tokenHeader } from '../../electron/local/request-guard.ts'
import type { AnswerRequest } from '../../electron/requests/index.ts'

/** The requests of a local host, asked through its port as the window asks them. */
export function answersAt(address: string): AnswerRequest {
  const { origin, hash } = new URL(address)
  return async (name, input) => {
    const response = await fetch(`${origin}/request/${name}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin, [tokenHeader]: hash.slice(1) },
      body: JSON.stringify(input),
    })
    return (await response.json()) as Awaited<ReturnType<AnswerRequest>>
  }
}
