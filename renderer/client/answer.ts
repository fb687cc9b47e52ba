import { z } from 'zod'
import {
  contract,
  problemMessage,
  type Answer,
  type Output,
  type RequestName,
} from '../../core/contract/index.ts'
import { refused } from '../../core/problem/index.ts'

const envelope = z.union([
  z.strictObject({ ok: z.literal(true), value: z.unknown() }),
  z.strictObject({ ok: z.literal(false), problem: problemMessage }),
])

/** What a host sent, checked against the contract: a host of another version is failed apart from a good answer. */
export function parseAnswer<Name extends RequestName>(name: Name, raw: unknown): Answer<Name> {
  const answer = envelope.safeParse(raw)
  if (!answer.success) return hostMisunderstood()
  if (!answer.data.ok) return answer.data
  const value = contract[name].output.safeParse(answer.data.value)
  return value.success ? { ok: true, value: value.data as Output<Name> } : hostMisunderstood()
}

export const hostLost = () => refused('host-lost', {})
const hostMisunderstood = () => refused('host-misunderstood', {})
