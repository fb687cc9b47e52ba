import type { EngineSpec, TurningTorque } from '../../engine/index.ts'
import type { ReadWith } from '../../instrument/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import type { CrankTurned } from '../events/turning-record.ts'

/** One time that the crank was turned, in a step or in a procedure. */
export interface SheetTurning
  extends Stamp, Pick<CrankTurned, 'reading' | 'rise_Nm' | 'verdict' | 'note' | 'accepted'> {
  /** The step's name, or the procedure's. */
  readonly step: string
  /** Null where it is not known, and by hand. */
  readonly readWith: ReadWith | null
  /** The cap that was tightened before; null where the procedure does not go cap by cap. */
  readonly cap: string | null
  /** Null where it turns by hand. */
  readonly limits: TurningTorque | null
  /** Why it does not count any more; null where it does, or was turned again. */
  readonly voided: string | null
  /** False when it was turned again later, or does not count. */
  readonly counts: boolean
}

/** What the crank took to turn in the steps of that kind, in the order of the entries. */
export function turningsOn(spec: EngineSpec, entries: readonly RecordedEvent[]): readonly SheetTurning[] {
  const rows: SheetTurning[] = []
  for (const entry of entries) {
    const { event } = entry
    const isAbout =
      event.type === 'crank-turned' ||
      event.type === 'turning-accepted' ||
      event.type === 'turning-voided' ||
      event.type === 'step-reopened'
    if (!isAbout) continue
    const step = spec.steps.find(({ id }) => id === event.step)
    if (step?.kind !== 'turn') continue
    const last = rows.findLastIndex((row) => row.step === step.name)
    const before = rows[last]
    if (event.type === 'crank-turned') {
      if (before !== undefined) rows[last] = { ...before, counts: false }
      const { reading, readWith = null, rise_Nm, verdict, note } = event
      const turned = { reading, readWith, rise_Nm, verdict, note, accepted: null, voided: null }
      rows.push({
        ...stampOf(entry),
        ...{ step: step.name, cap: null, limits: step.turning ?? null, ...turned, counts: true },
      })
    } else if (before?.counts === true)
      rows[last] =
        event.type === 'turning-accepted'
          ? { ...before, accepted: event.reason }
          : { ...before, voided: event.reason, counts: false }
  }
  return rows
}
