import type { PartEvent } from './part-events.ts'

type PartsTicked = Extract<PartEvent, { type: 'parts-ticked' }>

/** So many of a part, fitted at a step. */
export interface PartTick extends Omit<PartsTicked, 'type' | 'version' | 'part'> {
  /** The entry that says it. */
  readonly seq: number
}

/** What is left over of a part at a step, and where it is. */
export interface LeftOver {
  readonly seq: number
  readonly count: number
  readonly reason: string
}

/** What became of the parts of the list. */
export interface PartsRecord {
  /** By part id. */
  readonly ticks: Readonly<Record<string, readonly PartTick[]>>
  /** By `useKey`. */
  readonly leftOver: Readonly<Record<string, LeftOver>>
  /** Steps in which the parts were counted, since nothing of them has changed. */
  readonly counted: ReadonlySet<string>
}

export const noParts: PartsRecord = { ticks: {}, leftOver: {}, counted: new Set() }

/** One part at one of the steps that use it. */
export function useKey(part: string, step: string): string {
  return `${part}/${step}`
}

/** The record after one more entry about parts. */
export function evolveParts(record: PartsRecord, seq: number, event: PartEvent): PartsRecord {
  const { ticks, leftOver, counted } = record
  switch (event.type) {
    case 'parts-ticked': {
      const { type: _, version: __, part, ...tick } = event
      return {
        ticks: { ...ticks, [part]: [...(ticks[part] ?? []), { ...tick, seq }] },
        leftOver: withoutUse(leftOver, useKey(part, event.step)),
        counted: new Set(),
      }
    }
    case 'ticks-removed': {
      const left = (ticks[event.part] ?? []).filter(({ step }) => step !== event.step)
      return {
        ticks: { ...ticks, [event.part]: left },
        leftOver: withoutUse(leftOver, useKey(event.part, event.step)),
        counted: new Set(),
      }
    }
    case 'part-left-over': {
      const { part, usedIn, count, reason } = event
      return { ...record, leftOver: { ...leftOver, [useKey(part, usedIn)]: { seq, count, reason } } }
    }
    case 'parts-counted':
      return { ...record, counted: new Set([...counted, event.step]) }
    default:
      return event satisfies never
  }
}

/** What was fitted at a step came out again with it: a new one, or the same with its reason, is asked for again. */
export function withoutTicksAt(record: PartsRecord, step: string): PartsRecord {
  const hasTicks = Object.values(record.ticks).some((ticks) => ticks.some((tick) => tick.step === step))
  if (!hasTicks) return record
  return {
    ...record,
    ticks: Object.fromEntries(
      Object.entries(record.ticks).map(([part, ticks]) => [part, ticks.filter((tick) => tick.step !== step)]),
    ),
    counted: new Set(),
  }
}

function withoutUse(leftOver: PartsRecord['leftOver'], key: string): PartsRecord['leftOver'] {
  return Object.fromEntries(Object.entries(leftOver).filter(([each]) => each !== key))
}
