import { clock, minutesAndSeconds } from '../../formats/index.ts'
/** How an area is filled, so that colour is never alone. */
export const patterns = {
  plain: 'plain',
  bars: 'bars',
  dots: 'dots',
  slant: 'slant',
  grid: 'grid',
  waves: 'waves',
  crosses: 'crosses',
  steps: 'steps',
  rings: 'rings',
}

export interface OpenTime {
  readonly bead: string
  readonly seconds: number
}

/** Small parts that stand on several pages. */
export const parts = {
  close: 'Close',
  cancel: 'Cancel',

  savedAs: ({ path }: { readonly path: string }) => `Saved as ${path}`,
  noPlaceChosen: 'Not saved: no place was chosen.',
  savedByBrowser: ({ fileName }: { readonly fileName: string }) =>
    `The browser saves ${fileName}. Its list of downloads says when and where.`,

  /** A day that is chosen by its parts. */
  day: {
    day: 'Day',
    month: 'Month',
    year: 'Year',
    incomplete: 'Choose day, month and year, or leave all three empty.',
  },
  enginesAndBuilds: 'Engines and builds',
  grade: ({ grade, pattern }: { readonly grade: string; readonly pattern: keyof typeof patterns }) =>
    `grade ${grade}, ${patterns[pattern]}`,
  openTimeLeft: ({ bead, seconds }: OpenTime) =>
    `Sealant, ${bead}: ${minutesAndSeconds(seconds)} of open time left`,
  /** How long it has been over. */
  openTimeOver: ({ bead, seconds }: OpenTime) =>
    `! Sealant, ${bead}: open time over for ${minutesAndSeconds(seconds)}. Take the joint apart, clean it and lay a new bead.`,
  /** In the title block; what is left, or how long it has been over. */
  openTimeInShort: ({ seconds }: Pick<OpenTime, 'seconds'>) =>
    seconds > 0 ? `Sealant ${clock(seconds)}` : `! Sealant over ${clock(-seconds)}`,
  qrCode: ({ text }: { readonly text: string }) => `QR code: ${text}`,
}
