import type { EngineSpec, Part } from '../../engine/index.ts'
import type { LeftOver, PartTick } from '../events/part-record.ts'
import type { RecordedEvent } from '../events/events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import type { BuildState } from '../events/state.ts'
import { partUses } from '../parts/part-uses.ts'

/** One part of the list and what became of it. */
export interface SheetPart {
  readonly name: string
  readonly place: string
  readonly count: number
  readonly reuse: Part['reuse']
  /** What counts as fitted, in order. */
  readonly ticks: readonly SheetTick[]
  /** What was counted and is not in the engine. */
  readonly leftOver: readonly (Omit<LeftOver, 'seq'> & {
    readonly step: string
    readonly stamp: Stamp | null
  })[]
  /** How many are neither fitted nor accounted for. */
  readonly open: number
}

export interface SheetTick extends Omit<PartTick, 'seq' | 'step'> {
  readonly step: string
  readonly stamp: Stamp | null
}

export function partsOn(
  spec: EngineSpec,
  state: BuildState,
  entries: readonly RecordedEvent[],
): readonly SheetPart[] {
  const stampAt = (seq: number) => {
    const entry = entries.find((each) => each.seq === seq)
    return entry === undefined ? null : stampOf(entry)
  }
  const uses = partUses(spec, state)
  return spec.parts.map((part) => {
    const own = uses.filter((use) => use.part === part)
    const { name, place, count, reuse } = part
    return {
      ...{ name, place, count, reuse },
      ticks: own.flatMap(({ step, ticks }) =>
        ticks.map(({ seq, ...tick }) => ({ ...tick, step: step.name, stamp: stampAt(seq) })),
      ),
      leftOver: own.flatMap(({ step, leftOver }) => {
        if (leftOver === null) return []
        const { seq, ...left } = leftOver
        return [{ ...left, step: step.name, stamp: stampAt(seq) }]
      }),
      open: own.reduce((sum, { left, leftOver }) => sum + (leftOver === null ? left : 0), 0),
    }
  })
}
