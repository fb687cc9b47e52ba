import type { Step, StepKind } from '../../core/engine/index.ts'

/** What a step's view is given. It fills the panel beside the drawing and the bar under it. */
export interface StepProps<Kind extends StepKind> {
  readonly step: Extract<Step, { kind: Kind }>
}
