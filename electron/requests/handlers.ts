import type { Output, ParsedInput, RequestName } from '../../core/contract/index.ts'
import type { Outcome } from '../../core/problem/index.ts'

/** What answers one request, given an input that its schema has passed. */
export type Handler<Name extends RequestName> = (
  input: ParsedInput<Name>,
) => Outcome<Output<Name>> | Promise<Outcome<Output<Name>>>

/** One handler for each request of the contract: one that is missing does not compile. */
export type Handlers = { readonly [Name in RequestName]: Handler<Name> }

/** The handlers of one subject: those whose names begin with it. */
export type HandlersOf<Subject extends string> = Pick<Handlers, Extract<RequestName, `${Subject}.${string}`>>
