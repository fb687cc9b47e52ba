import {
  contract,
  type Client,
  type Output,
  type ParsedInput,
  type RequestName,
} from '../../core/contract/index.ts'
import { refused, type Outcome } from '../../core/problem/index.ts'
import { parseAnswer } from '../client/answer.ts'
import { holdAsData } from './sample-data.ts'

/** What answers in memory; a request without a line here is refused as one that the host does not know. */
export type MemoryHandlers = {
  readonly [Name in RequestName]?: (input: ParsedInput<Name>) => Outcome<Output<Name>>
}

/** A client without a host: what goes in and what comes out is parsed as it is on the way to a real one. */
export function memoryClient(handlers: MemoryHandlers): Client {
  return {
    request(name, input) {
      const outcome = answered(handlers, name, input)
      const { ok } = outcome
      if (ok) holdAsData(outcome.value)
      const wire = ok ? outcome : { ok, problem: outcome.problem }
      return Promise.resolve(parseAnswer(name, JSON.parse(JSON.stringify(wire))))
    },
  }
}

function answered<Name extends RequestName>(
  handlers: MemoryHandlers,
  name: Name,
  input: unknown,
): Outcome<Output<Name>> {
  const handler = handlers[name]
  if (handler === undefined) return refused('request-unknown', { name })
  const parsed = contract[name].input.safeParse(input)
  if (parsed.success) return handler(parsed.data as ParsedInput<Name>)
  const [issue] = parsed.error.issues
  return refused('request-unreadable', { fault: issue?.message ?? '' }, (issue?.path ?? []).join('.'))
}
