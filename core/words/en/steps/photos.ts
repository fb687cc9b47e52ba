import { counted } from '../formats/counted.ts'

/** Photos and notes of a build: adding them, looking at them, and where the sheet has them. */
export const photos = {
  /** A step that asks for a photo. */
  skip: 'No photo …',
  whySkip: 'Why is there no photo?',
  skipIt: 'Continue without a photo',
  usualReasons: ['No camera here', 'It is covered already'],
  wanted: 'Take the photo or add it as a file.',
  isThere: ({ photos: there }: { readonly photos: number }) =>
    `✓ ${counted(there, 'photo is', 'photos are')} here.`,
  isSkipped: ({ reason }: { readonly reason: string }) => `No photo: ${reason}`,
}
