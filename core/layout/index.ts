export type { Box, Layer, Role, Scene, SceneRow, Shape } from './scene.ts'
export type { CircleShape, LineShape, RingShape, SwatchShape, TextShape } from './scene.ts'
export type { BearingFact, DrawingFacts, FastenerFact, FastenerState, HalfFact, Sheet, View } from './facts.ts'
