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
export type { LineRuns, Lying, PictureLook, Pins } from './placing.ts'
