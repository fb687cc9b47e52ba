export { calibrationStanding, isShare } from './instrument.ts'
export {
  baudRates,
  fieldsFor,
  instrument,
  instruments,
  mayFeed,
  parities,
  readingFields,
  usualSerial,
} from './instrument.ts'
export type { Instrument, ReadingFieldName, SerialSettings } from './instrument.ts'
export { byLine, readWith, type ReadWith } from './read-with.ts'
export { readWithText } from './read-with-text.ts'
export { LineWatch, type ReceivedLines } from './line-watch.ts'
export { typedAs } from './read-line.ts'
