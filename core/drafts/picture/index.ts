export {
  lineRuns,
  lyingBy,
  pictureLook,
  pinnedByDistance,
  pinnedToPlaces,
  pixelAt,
  placeOf,
  shifted,
  turnedAbout,
} from './placing.ts'
export type { LineRuns, PicturePlacement, PictureLook, Pins } from './placing.ts'
