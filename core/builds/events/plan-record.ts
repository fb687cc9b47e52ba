import type { PlanEvent } from './plan-events.ts'

/** That a step is done again. */
export interface StepReopened {
  /** The last entry that says it. */
  readonly seq: number
  readonly reason: string
  /** The step that a person does again: itself, or one that it stands on. */
  readonly redone: string
}

/** What became of the plan of a build; records are by step id. */
export interface PlanRecord {
  /** Steps that were opened again, whether or not they are done by now. */
  readonly reopened: Readonly<Record<string, StepReopened>>
  readonly skipped: Readonly<Record<string, { readonly seq: number; readonly reason: string }>>
  /** Steps whose marks are to be read again: the old ones stand until then. */
  readonly marksAgain: ReadonlySet<string>
}

export const asPlanned: PlanRecord = { reopened: {}, skipped: {}, marksAgain: new Set() }

/** The record after one more entry about the plan. */
export function evolvePlan(record: PlanRecord, seq: number, event: PlanEvent): PlanRecord {
  const { step } = event
  switch (event.type) {
    case 'step-reopened': {
      const { reason, redone, work } = event
      const { reopened, skipped, marksAgain } = record
      return {
        reopened: { ...reopened, [step]: { seq, reason, redone } },
        skipped: without(skipped, step),
        marksAgain: work.kind === 'marks' ? new Set([...marksAgain, step]) : marksAgain,
      }
    }
    case 'step-skipped':
      return { ...record, skipped: { ...record.skipped, [step]: { seq, reason: event.reason } } }
    case 'skip-taken-back':
      return { ...record, skipped: without(record.skipped, step) }
    default:
      return event satisfies never
  }
}

/** The record once the marks of a step were read. */
export function withMarksRead(record: PlanRecord, step: string): PlanRecord {
  if (!record.marksAgain.has(step)) return record
  return { ...record, marksAgain: new Set([...record.marksAgain].filter((each) => each !== step)) }
}

function without<Value>(
  record: Readonly<Record<string, Value>>,
  key: string,
): Readonly<Record<string, Value>> {
  return Object.fromEntries(Object.entries(record).filter(([each]) => each !== key))
}
