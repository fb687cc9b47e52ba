import { isPlacedStep, type EngineSpec, type PlacedKind } from '../../engine/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'

/** One place that was oiled, cleaned, set the right way, aligned or noted. */
export interface SheetPlace extends Stamp {
  readonly step: string
  readonly kind: PlacedKind
  /** Where on the engine. */
  readonly where: string
  readonly say: string
  readonly round: 1 | 2
  readonly note: string | null
  /** Why it does not count any more; null where it does. */
  readonly undone: string | null
}

export function placedOn(spec: EngineSpec, entries: readonly RecordedEvent[]): readonly SheetPlace[] {
  const rows: (SheetPlace & { readonly id: string })[] = []
  for (const entry of entries) {
    const { event } = entry
    if (event.type === 'step-reopened')
      rows.forEach((row, index) => {
        if (row.id.startsWith(`${event.step}/`) && row.undone === null)
          rows[index] = { ...row, undone: event.reason }
      })
    if (event.type !== 'place-done' && event.type !== 'place-undone') continue
    const step = spec.steps.find(({ id }) => id === event.step)
    const place = step && isPlacedStep(step) ? step.places.find(({ id }) => id === event.place) : undefined
    if (step === undefined || !isPlacedStep(step) || place === undefined) continue
    if (event.type === 'place-done') {
      const { round, note } = event
      const { at: where, say } = place
      const row = { id: `${step.id}/${place.id}`, step: step.name, kind: step.kind, where, say, round, note }
      rows.push({ ...stampOf(entry), ...row, undone: null })
    } else {
      rows.forEach((row, index) => {
        if (row.id === `${step.id}/${place.id}` && row.round >= event.round && row.undone === null)
          rows[index] = { ...row, undone: event.reason }
      })
    }
  }
  return rows.map(({ id: _, ...row }) => row)
}
