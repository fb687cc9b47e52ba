import type { StepNeed } from '../../../core/drafts/index.ts'
import type { EngineSpec } from '../../../core/engine/index.ts'

/** What something that a step works on is called in the spec. */
export function nameIn(spec: EngineSpec, need: StepNeed, id: string): string {
  const lists: { readonly [Need in StepNeed]?: readonly { readonly id: string; readonly name: string }[] } = {
    fit: spec.fits,
    bead: spec.beads,
    procedure: spec.procedures,
    rings: spec.ringSets,
  }
  return lists[need]?.find((each) => each.id === id)?.name ?? id
}
