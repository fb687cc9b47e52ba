/** The longest side of a photo as it is kept, in px: a mark can still be read, and sixty of them fit an export. */
export const mostPhotoSidePx = 1600

/** The most that a kept photo takes, in bytes. The window lowers the quality until it does. */
export const mostPhotoBytes = 768 * 1024

/** More than anybody looks through. Together with `mostPhotoBytes` it bounds an export. */
export const mostPhotosOfBuild = 80

/** The longest caption, in characters. */
export const mostCaption = 300

/** The largest picture that is taken from a file, in bytes. A larger one is refused before a byte of it is read. */
export const mostPickedBytes = 60 * 1000 * 1000

/** The largest picture that is opened, in pixels: four bytes each while it is scaled. */
export const mostPickedPixels = 64 * 1000 * 1000

/** As much of a file's beginning as is looked at to tell what it is, in bytes. */
export const pictureHeadBytes = 1024 * 1024
