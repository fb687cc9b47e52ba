export { checkKept } from './kept.ts'
export {
  mostCaption,
  mostPhotoBytes,
  mostPhotoSidePx,
  mostPhotosOfBuild,
  mostPickedBytes,
  pictureHeadBytes,
} from './limits.ts'
export { checkPicked } from './picked.ts'
