export { bearingFace, hexBearingFace, type BearingFace } from './bearing-face.ts'
export {
  boltResilience,
  elasticModuliMpa,
  seriesResilience,
  type Bolt,
  type Section,
} from './bolt-resilience.ts'
export { clampedResilience, type Layer } from './clamped-resilience.ts'
export { proofLoad, propertyClasses, strengthOf } from './property-class.ts'
export { preloadFromTorque, torqueSplit, type Friction, type Screw } from './screw.ts'
export { assemblyPreload, tighteningStress } from './stress.ts'
export { formatThread, threadOf, type Thread } from './thread.ts'
export { torqueAgainstProof, type TorqueAgainstProof } from './torque-against-proof.ts'
export { preloadAfterTurn, preloadGain, turnForPreload } from './turn.ts'
export {
  fastenedJoint,
  frictionOf,
  plausibleFriction,
  softestBoltMmPerN,
  type FastenedJoint,
} from './fastened.ts'
export { clampingTorque, runsFree } from './clamping-torque.ts'
export { torqueEffect, usualScrew, yieldLoadAt, type Spread, type TorqueEffect } from './torque-effect.ts'
export { turnEffect, type TurnEffect, type TurnWindow } from './turn-effect.ts'
export { turnPlot, type TurnPlot } from './turn-plot.ts'
export { torqueInputs, turnInputs, type Input } from './pull-inputs.ts'
export * from './cross-talk/index.ts'
export { workingLoadEffect, type WorkingLoadEffect } from './working-load.ts'
