export { bearingFace, hexBearingFace, type BearingFace } from './bearing-face.ts'
export {
  boltResilience,
  elasticModuliMpa,
  seriesResilience,
  type Anchor,
  type Bolt,
  type Section,
} from './bolt-resilience.ts'
export { clampedResilience, type Layer } from './clamped-resilience.ts'
export {
  proofLoad,
  propertyClasses,
  strengthOf,
  type PropertyClass,
  type Strength,
} from './property-class.ts'
export { preloadFromTorque, torqueSplit, type Friction, type Screw, type TorqueSplit } from './screw.ts'
export { assemblyPreload, tighteningStress, type TighteningStress } from './stress.ts'
export { formatThread, threadOf, type Thread } from './thread.ts'
export {
  torqueAgainstProof,
  type TorqueAgainstProof,
  type TorqueRange,
  type TorqueVerdict,
} from './torque-against-proof.ts'
export { preloadAfterTurn, preloadGain, turnForPreload, type PreloadAfterTurn } from './turn.ts'
export {
  fastenedJoint,
  frictionOf,
  plausibleFriction,
  softestBoltMmPerN,
  type FastenedJoint,
  type FrictionRange,
  type ThreadState,
} from './fastened.ts'
export { clampingTorque, prevailingUpTo, runsFree, type PrevailingRange } from './clamping-torque.ts'
export {
  torqueEffect,
  usualScrew,
  yieldLoadAt,
  type OpenSpread,
  type Spread,
  type TorqueEffect,
} from './torque-effect.ts'
export { turnEffect, type TurnEffect, type TurnWindow } from './turn-effect.ts'
export { turnPlot, type TurnPlot, type TurnPoint } from './turn-plot.ts'
export { torqueInputs, turnInputs, type Input } from './pull-inputs.ts'
export * from './cross-talk/index.ts'
export { workingLoadEffect, type WorkingLoad, type WorkingLoadEffect } from './working-load.ts'
