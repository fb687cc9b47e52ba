import type { BuildState } from '../../core/builds/index.ts'
import type { EngineSpec, Face, Step } from '../../core/engine/index.ts'
import type { DrawingFacts } from '../../core/layout/index.ts'
import type { OnStage } from './shown.ts'

/** A joint face as it is to be drawn. */
export interface DrawnFace {
  readonly spec: EngineSpec
  readonly face: Face
  readonly facts: DrawingFacts
  /** Where a build stands and what is done in it, for the protractor; null for the bare case. */
  readonly at: { readonly state: BuildState; readonly step: Step } | null
  readonly shown: OnStage
}
