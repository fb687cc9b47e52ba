export type { Box, Layer, Role, Scene, SceneRow, Shape } from './scene/scene.ts'
export type { CircleShape, LineShape, SwatchShape, TextShape } from './scene/scene.ts'
export type {
  BeadState,
  BearingFact,
  DrawingFacts,
  FastenerFact,
  FastenerState,
  HalfFact,
  NoteFact,
  Sheet,
  View,
} from './facts.ts'
export { aboutAt, boxAbout, boxesAbout, boxesOfNext, textBox } from './scene/about-at.ts'
export type { DrawingSubject } from './content.ts'
export { bareFacts } from './facts.ts'
export { footnotesOf, hasFootnotes } from './footnotes.ts'
export { orientationInWords, orientationsFor, viewOriented, viewWithNose } from './bench-orientation.ts'
export type { BenchOrientation } from './bench-orientation.ts'
export { keepUnchanged } from './scene/keep-unchanged.ts'
export {
  clampColours,
  clampOpenColour,
  clampScene,
  faceOutline,
  kilonewtons,
  mostPressure,
} from './clamp-picture.ts'
export type { ClampPicture } from './clamp-picture.ts'
export { directionTo, knobPlace, protractorPlace, withProtractor } from './protractor.ts'
export type { HandleDirections } from './protractor.ts'
export {
  heightSeenAt,
  numberCapital,
  pxPerMmBounds,
  readingDistances,
  readingFontSize,
  usualPxPerMm,
} from './reading-size.ts'
export type { Reader, ReadingDistance } from './reading-size.ts'
export { drawingAfter } from './drawing-after.ts'
export type { Drawing } from './drawing.ts'
export { sceneOf, sceneOn, shapesOn } from './scene-of.ts'
export { capitalShare, textWidth } from './labels/text-width.ts'
export { fieldPicture, fieldPictures } from './field-pictures/index.ts'
export { measurePicture } from './measure-picture.ts'
export { placedPicture } from './placed-picture.ts'
export { ringClock } from './ring-clock.ts'
export type { RingClock } from './ring-clock.ts'
export type { PictureLine, SmallPicture } from './small-picture.ts'
export { acrossAnEnd, noseSide, viewInWords } from './view.ts'
export type { SheetSide } from './view.ts'
