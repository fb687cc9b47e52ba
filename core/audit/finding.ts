import type { AcceptedDoubt } from '../engine/index.ts'
import { problem, type Facts, type Problem, type ProblemCode } from '../problem/index.ts'

/**
 * Something the audit has to say about a spec that can be read. A `fault`: an engine built by this spec would come out
 * wrong, so no build may begin from it. A `doubt`: it is unusual, and a person should look at it once.
 */
export interface Finding {
  readonly weight: 'fault' | 'doubt'
  readonly problem: Problem
  /** Of a doubt that somebody looked into and accepted, as long as it says what it said then. */
  readonly accepted?: AcceptedDoubt
}

export function fault<Code extends ProblemCode>(code: Code, facts: Facts<Code>, path: string): Finding {
  return { weight: 'fault', problem: problem(code, facts, path) }
}

export function doubt<Code extends ProblemCode>(code: Code, facts: Facts<Code>, path: string): Finding {
  return { weight: 'doubt', problem: problem(code, facts, path) }
}
