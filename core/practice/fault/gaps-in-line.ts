import type { RecordedEvent } from '../../builds/index.ts'
import { clockFaults, gapsBySpec, neighbours, type EngineSpec, type RingSet } from '../../engine/index.ts'

/** Two neighbouring rings of which the second can be turned until its gap is in line with the first, and nothing else is wrong. */
export interface LinedUp {
  readonly step: string
  readonly set: RingSet
  readonly rings: readonly [string, string]
  /** Where both gaps then stand. */
  readonly degrees: number
}

/** All of an engine, in its order. */
export function linedUp({ steps, ringSets }: EngineSpec): readonly LinedUp[] {
  return steps.flatMap((step) => {
    const set = step.kind === 'fit-rings' ? ringSets.find(({ id }) => id === step.rings) : undefined
    if (set === undefined) return []
    return neighbours(set).flatMap(([first, second]): readonly LinedUp[] => {
      const gaps = gapsBySpec(set).map((gap) =>
        gap.ring === second.id ? { ...gap, degrees: first.gapAt } : gap,
      )
      const rings = [first.id, second.id] as const
      return clockFaults(set, gaps).length === 1 ? [{ step: step.id, set, rings, degrees: first.gapAt }] : []
    })
  })
}

/** The entries with the gap of one ring on one piston elsewhere. */
export function withGapAt(
  entries: readonly RecordedEvent[],
  { step, rings: [, turned], degrees }: LinedUp,
  cylinder: number,
): readonly RecordedEvent[] {
  return entries.map((entry) => {
    const { event } = entry
    if (event.type !== 'rings-fitted' || event.step !== step || event.cylinder !== cylinder) return entry
    const gaps = event.gaps.map((gap) => (gap.ring === turned ? { ...gap, degrees } : gap))
    return { ...entry, event: { ...event, gaps } }
  })
}
