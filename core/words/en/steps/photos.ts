import { counted } from '../formats.ts'

export interface OfPhoto {
  /** Counted from 1; null for a photo of the finished build. */
  readonly step: number | null
  readonly caption: string
  readonly part: string | null
}

/** Photos and notes of a build: adding them, looking at them, and where the sheet has them. */
export const photos = {
  title: 'Photos and notes',
  /** The buttons at every step. */
  fromFile: 'Photo from a file …',
  fromCamera: 'Camera …',
  writeNote: 'Write a note …',
  file: 'The picture’s file',
  /** What a picture is called that has no file. */
  pasted: 'The pasted picture',
  preparing: 'The photo is being made smaller …',
  /** The form before it is added. */
  add: {
    title: 'Add this photo',
    caption: 'Caption',
    part: 'What it shows',
    noPart: 'no part of the list',
    size: ({
      widthPx,
      heightPx,
      kilobytes,
    }: {
      readonly widthPx: number
      readonly heightPx: number
      readonly kilobytes: number
    }) =>
      `${widthPx} × ${heightPx} px, ${kilobytes} kB. Only the picture is kept: no place, no time, no name of the camera.`,
    add: 'Add it',
  },
  camera: {
    title: 'Camera',
    starting: 'The camera is starting …',
    picture: 'What the camera sees',
    take: 'Take the photo',
  },
  note: {
    question: 'What is to be noted?',
    write: 'Note it',
  },
  /** The name of a photo: what a screen reader says of it, and what stands above it when it is large. */
  called: ({ step, caption, part }: OfPhoto) =>
    [
      step === null ? 'Photo of the finished build' : `Photo of step ${step}`,
      part,
      caption === '' ? null : caption,
    ]
      .filter((each) => each !== null)
      .join(', '),
  withdraw: 'Withdraw the photo …',
  whyWithdraw: 'Why is it withdrawn? It is then no longer shown, printed or exported.',
  withdrawIt: 'Withdraw it',
  isWithdrawn: ({ time, reason }: { readonly time: string; readonly reason: string }) =>
    `Photo of ${time} withdrawn: ${reason}`,
  loading: 'The photo is being read …',
  by: ({ time, person }: { readonly time: string; readonly person: string }) => `${time}, ${person}`,
  /** A step that asks for a photo. */
  skip: 'No photo …',
  whySkip: 'Why is there no photo?',
  skipIt: 'Continue without a photo',
  usualReasons: ['No camera here', 'It is covered already'],
  wanted: 'Press “Camera …” or “Photo from a file …”.',
  isThere: ({ photos: there }: { readonly photos: number }) =>
    `✓ ${counted(there, 'photo is', 'photos are')} here.`,
  isSkipped: ({ reason }: { readonly reason: string }) => `No photo: ${reason}`,
  sheet: {
    title: 'Photos',
    notes: 'Notes',
    step: ({ place, name }: { readonly place: number; readonly name: string }) => `Step ${place}, ${name}`,
    finished: 'The finished build',
    withdrawn: (facts: { readonly reason: string; readonly stamp: string; readonly hash: string }) =>
      `photo withdrawn: ${facts.reason} (${facts.stamp}; SHA-256 ${facts.hash} …)`,
    /** On the page of results. */
    count: ({ photos: there, skipped }: { readonly photos: number; readonly skipped: number }) =>
      `${counted(there, 'photo', 'photos')} in the appendix` +
      (skipped === 0
        ? '.'
        : `; ${counted(skipped, 'step', 'steps')} went without the photo that it asks for.`),
  },
}
