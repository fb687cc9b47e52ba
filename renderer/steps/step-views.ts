import type { Component } from 'svelte'
import type { Step, StepKind } from '../../core/engine/index.ts'
import type { Bench } from '../bench/bench.svelte.ts'
import type { BuildInHand } from '../bench/open-build.svelte.ts'
import type { DrawingTable } from '../bench/drawing-table.svelte.ts'
import BeadStep from './BeadStep.svelte'
import CheckStep from './CheckStep.svelte'
import FitPartStep from './FitPartStep.svelte'
import FitShellsStep from './FitShellsStep.svelte'
import MarksStep from './MarksStep.svelte'
import RunStep from './RunStep.svelte'
import ShellsStep from './ShellsStep.svelte'

/** What a step's view is given. It fills the panel beside the drawing and the bar under it. */
export interface StepProps<Kind extends StepKind> {
  readonly bench: Bench
  readonly inHand: BuildInHand
  readonly table: DrawingTable
  readonly step: Extract<Step, { kind: Kind }>
}

const views: { readonly [Kind in StepKind]: Component<StepProps<Kind>> } = {
  'note-marks': MarksStep,
  'choose-shells': ShellsStep,
  'fit-shells': FitShellsStep,
  'fit-part': FitPartStep,
  'lay-bead': BeadStep,
  'run-procedure': RunStep,
  check: CheckStep,
}

/** The view of each kind of step; a kind without one does not compile. The step handed in must be of that kind. */
export const stepViews = views as { readonly [Kind in StepKind]: Component<StepProps<StepKind>> }
