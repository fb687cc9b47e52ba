export {
  boxAround,
  boxBetween,
  cornersOf,
  distanceTo,
  grown,
  holds,
  middleOf,
  overlap,
  type Box,
} from './box.ts'
export { Perimeter } from './perimeter.ts'
export { spanOf, turned, type Point } from './point.ts'
export { crossesItself, insidePolygon, sidesOf } from './polygon.ts'
export { distanceToSegment, gapToBox, nearestOnSegment, segmentsMeet } from './segment.ts'
