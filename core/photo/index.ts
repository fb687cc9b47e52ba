export { jpegHead } from './jpeg.ts'
export type { JpegHead } from './jpeg.ts'
export { checkKept } from './kept.ts'
export type { KeptSize } from './kept.ts'
export {
  mostCaption,
  mostPhotoBytes,
  mostPhotoSidePx,
  mostPhotosOfBuild,
  mostPickedBytes,
  pictureHeadBytes,
} from './limits.ts'
export { checkPicked } from './picked.ts'
export type { PickedPicture } from './picked.ts'
