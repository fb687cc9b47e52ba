import type { EngineSpec, RingPiston, RingSet, SetGap } from '../../engine/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'

/** The rings of one piston as they were fitted. */
export interface SheetRings extends Stamp {
  readonly step: string
  readonly set: RingSet
  readonly piston: RingPiston
  readonly gaps: readonly SetGap[]
  /** Why they came off again; null where they are on. */
  readonly takenOff: string | null
}

export function ringsOn(spec: EngineSpec, entries: readonly RecordedEvent[]): readonly SheetRings[] {
  const rows: SheetRings[] = []
  for (const entry of entries) {
    const { event } = entry
    if (event.type === 'step-reopened') {
      const name = spec.steps.find(({ id }) => id === event.step)?.name
      rows.forEach((row, index) => {
        if (row.step === name && row.takenOff === null) rows[index] = { ...row, takenOff: event.reason }
      })
    }
    if (event.type !== 'rings-fitted' && event.type !== 'rings-taken-off') continue
    const step = spec.steps.find(({ id }) => id === event.step)
    const set = step?.kind === 'fit-rings' ? spec.ringSets.find(({ id }) => id === step.rings) : undefined
    const piston = set?.pistons.find(({ cylinder }) => cylinder === event.cylinder)
    if (step === undefined || set === undefined || piston === undefined) continue
    if (event.type === 'rings-fitted') {
      rows.push({ ...stampOf(entry), step: step.name, set, piston, gaps: event.gaps, takenOff: null })
      continue
    }
    const last = rows.findLastIndex((row) => row.step === step.name && row.piston === piston)
    const before = rows[last]
    if (before !== undefined) rows[last] = { ...before, takenOff: event.reason }
  }
  return rows
}
