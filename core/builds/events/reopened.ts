import { withoutTicksAt } from './part-record.ts'
import type { PlanEvent } from './plan-events.ts'
import { halfKey, type BuildState } from './state.ts'

/** What of a build no longer stands once a step was opened again; what was fitted in it came out. */
export function withoutWorkOf(
  state: BuildState,
  { step, work }: Extract<PlanEvent, { type: 'step-reopened' }>,
): BuildState {
  const { counted, ...parts } = withoutTicksAt(state.parts, step)
  const before = { ...state, parts: { ...parts, counted: withoutMembers(counted, [step]) } }
  switch (work.kind) {
    case 'marks':
      return before
    case 'shells':
      return { ...before, shells: without(state.shells, (key) => key === work.fit) }
    case 'halves': {
      const out = work.halves.map(({ position, half }) => halfKey(position, half))
      return { ...before, fitted: withoutMembers(state.fitted, out) }
    }
    case 'bead':
      return { ...before, beads: without(state.beads, (key) => key === work.bead) }
    case 'own': {
      const isOwn = (key: string) => key === step || key.startsWith(`${step}/`)
      return {
        ...before,
        partsFitted: withoutMembers(state.partsFitted, [step]),
        limits: without(state.limits, isOwn),
        placed: without(state.placed, isOwn),
        rings: without(state.rings, isOwn),
        turnings: without(state.turnings, isOwn),
        checks: without(state.checks, isOwn),
        photosSkipped: without(state.photosSkipped, isOwn),
      }
    }
    default:
      return work satisfies never
  }
}

function without<Value>(
  record: Readonly<Record<string, Value>>,
  isGone: (key: string) => boolean,
): Readonly<Record<string, Value>> {
  return Object.fromEntries(Object.entries(record).filter(([key]) => !isGone(key)))
}

function withoutMembers(set: ReadonlySet<string>, gone: readonly string[]): ReadonlySet<string> {
  return new Set([...set].filter((each) => !gone.includes(each)))
}
