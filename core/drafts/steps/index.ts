export { choicesFor, newStep, stepKinds, stepNeeds } from './new-step.ts'
export type { StepInDocument, StepNeed, TypedStep } from './new-step.ts'
export { withoutBead, withoutFit } from './with-its-steps.ts'
export { toggled, withoutStep, withStep, withStepMoved } from './step-edits.ts'
