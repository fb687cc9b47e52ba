type None = Record<never, never>

export interface OfFile {
  /** Of the file, or what the picture is called that was pasted or taken. */
  readonly name: string
}
export interface OfPhoto {
  /** Counted from 1; null for one that belongs to no step. */
  readonly step: number | null
}

const anotherPicture = 'Choose a JPEG, PNG or WebP picture.'
const whose = ({ step }: OfPhoto) => (step === null ? 'The photo of the build' : `The photo of step ${step}`)

/** Sentences about photos: what a person brings, what is kept, and the camera. */
export const photoWords = {
  'photo-too-large': (facts: OfFile & { readonly megabytes: number; readonly most: number }) =>
    `${facts.name} has ${facts.megabytes} MB, and a photo may have ${facts.most}. Take a smaller one, or save it smaller first.`,
  'photo-empty': ({ name }: OfFile) => `${name} is an empty file. ${anotherPicture}`,
  'photo-no-picture': ({ name }: OfFile) => `${name} is no picture. ${anotherPicture}`,
  'photo-kind-unread': ({ name, kind }: OfFile & { readonly kind: string }) =>
    `${name} is a ${kind} file, which cannot be opened here. Save it as JPEG; a phone does so once its camera is set to the most ` +
    'compatible format.',
  'photo-too-many-pixels': (facts: OfFile & { readonly megapixels: number; readonly most: number }) =>
    `${facts.name} has ${facts.megapixels} million pixels, and ${facts.most} can be opened. Save it smaller first.`,
  'photo-damaged-file': ({ name }: OfFile) =>
    `${name} begins like a picture and cannot be opened: it is cut off or damaged. Copy it again, or choose another.`,
  'photo-not-prepared': (_: None) =>
    'This is no photo as the window of Bedplate prepares one: a whole JPEG, scaled, with nothing but the picture in it. Add it ' +
    'in the window.',
  'photo-several': (_: None) => 'That is more than one file. Add one photo after the other.',
  'photo-too-many': ({ most }: { readonly most: number }) =>
    `This build has ${most} photos, and no more are kept with one. Write a note instead.`,
  'photo-there-already': (_: None) => 'This very photo is here already. Add another one.',
  'photo-at-no-step': (_: None) =>
    'While the build is open, a photo belongs to one of its steps. Choose the step first.',
  'photo-withdrawn': (_: None) =>
    'This photo is withdrawn: it is not shown any more. Its entry and its hash stay in the record.',
  'photo-without-bytes': (_: None) => 'A photo comes with its picture. Add it in the window.',
  'photo-damaged': (facts: OfPhoto) =>
    `${whose(facts)} is damaged: its bytes are not those recorded. The build is not touched by it. Import an export that has the ` +
    'photo, or restore a backup.',
  'photo-missing': (facts: OfPhoto) =>
    `${whose(facts)} is missing: its bytes are not in the record. The build is not touched by it. Import an export that has the ` +
    'photo, or restore a backup.',
  'photo-unknown': (_: None) => 'This entry is no photo. Look at the build again.',
  'picture-points-near': (_: None) =>
    'The two points on the picture are too close together. Choose two that are far apart: the farther apart, the more exactly the picture is placed.',
  'picture-places-same': (_: None) =>
    'Both points of the picture would be at one place. Choose two different things of the drawing.',
  'picture-distance-none': (_: None) =>
    'The distance must be more than 0. Type it as the manual gives it: 120 mm.',
  'picture-missing': (_: None) =>
    'There is no picture under this face any more: another window took it away. Put one there again.',
  'picture-damaged': (_: None) =>
    'The picture under this face is damaged: its bytes are not those that were kept. The spec is not touched by it. Take the ' +
    'picture away and put it there again.',
  'camera-refused': (_: None) =>
    'The camera may not be used here. Allow it for this page in the browser or in the settings of the system, then press ' +
    'again; or take the photo with another device and add it as a file.',
  'camera-none': (_: None) =>
    'No camera was found. Connect one and press again, or take the photo with another device and add it as a file.',
  'camera-in-use': (_: None) =>
    'The camera does not start; another program may be using it. Close that and press again, or add the photo as a file.',
  'camera-stopped': (_: None) =>
    'The camera has stopped. Look at its cable and press again, or add the photo as a file.',
  'note-empty': (_: None) => 'There is nothing to note yet. Write it first.',
}
