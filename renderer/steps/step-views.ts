import type { Component } from 'svelte'
import type { StepKind } from '../../core/engine/index.ts'
import BeadStep from './BeadStep.svelte'
import CheckStep from './CheckStep.svelte'
import CountStep from './CountStep.svelte'
import FitPartStep from './FitPartStep.svelte'
import FitRingsStep from './FitRingsStep.svelte'
import FitShellsStep from './FitShellsStep.svelte'
import MarksStep from './MarksStep.svelte'
import MeasureLimitsStep from './MeasureLimitsStep.svelte'
import PhotoStep from './PhotoStep.svelte'
import PlacedStep from './PlacedStep.svelte'
import RunStep from './RunStep.svelte'
import ShellsStep from './ShellsStep.svelte'
import TurnStep from './TurnStep.svelte'
import type { StepProps } from './step-props.ts'

const views: { readonly [Kind in StepKind]: Component<StepProps<Kind>> } = {
  'note-marks': MarksStep,
  'choose-shells': ShellsStep,
  'fit-shells': FitShellsStep,
  'fit-part': FitPartStep,
  'lay-bead': BeadStep,
  'run-procedure': RunStep,
  check: CheckStep,
  count: CountStep,
  photo: PhotoStep,
  'measure-limits': MeasureLimitsStep,
  'measure-rings': MeasureLimitsStep,
  'fit-rings': FitRingsStep,
  lubricate: PlacedStep,
  clean: PlacedStep,
  orient: PlacedStep,
  align: PlacedStep,
  'fit-places': PlacedStep,
  turn: TurnStep,
  note: PlacedStep,
}

/** The view of each kind of step; a kind without one does not compile. The step handed in must be of that kind. */
export const stepViews = views as { readonly [Kind in StepKind]: Component<StepProps<StepKind>> }
