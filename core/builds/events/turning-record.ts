import type { TurningEvent } from './turning-events.ts'

type Turned = Extract<TurningEvent, { type: 'crank-turned' }>

/** The last time that the crank was turned in a step. */
export interface CrankTurned extends Pick<Turned, 'reading' | 'rise_Nm' | 'verdict' | 'note'> {
  readonly seq: number
  /** Why it is accepted although it is outside its limits; null where nobody did. */
  readonly accepted: string | null
}

/** By step id. */
export type TurningsRecord = Readonly<Record<string, CrankTurned>>

/** The record after one more entry about turning. */
export function evolveTurnings(record: TurningsRecord, seq: number, event: TurningEvent): TurningsRecord {
  const { step } = event
  switch (event.type) {
    case 'crank-turned': {
      const { reading, rise_Nm, verdict, note } = event
      return { ...record, [step]: { seq, reading, rise_Nm, verdict, note, accepted: null } }
    }
    case 'turning-accepted': {
      const before = record[step]
      return before === undefined ? record : { ...record, [step]: { ...before, accepted: event.reason } }
    }
    case 'turning-voided':
      return Object.fromEntries(Object.entries(record).filter(([key]) => key !== step))
    default:
      return event satisfies never
  }
}
