export {
  boxAround,
  boxBetween,
  cornersOf,
  distanceTo,
  gapBetween,
  grown,
  holds,
  middleOf,
  nearestIn,
  overlap,
  type Box,
} from './box.ts'
export { Perimeter } from './perimeter.ts'
export { spanOf, turned, type Point } from './point.ts'
export { crossesItself, insidePolygon, sidesOf } from './polygon.ts'
export {
  distanceToSegment,
  gapToBox,
  nearestOnSegment,
  segmentMeets,
  segmentsCross,
  segmentsMeet,
} from './segment.ts'
