import type { Step, StepKind } from '../../core/engine/index.ts'
import type { Bench } from '../bench/bench.svelte.ts'
import type { DrawingTable } from '../bench/drawing-table.svelte.ts'
import type { OpenBuild } from '../bench/open-build.svelte.ts'

/** What a step's view is given. It fills the panel beside the drawing and the bar under it. */
export interface StepProps<Kind extends StepKind> {
  readonly bench: Bench
  readonly openBuild: OpenBuild
  readonly table: DrawingTable
  readonly step: Extract<Step, { kind: Kind }>
}
