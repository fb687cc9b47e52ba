import type { PatternName } from '../../../core/tightening/index.ts'

/** The patterns by which an order can be grown. */
export const patternNames = [
  'centre-out',
  'spiral',
  'crosswise',
  'end-to-end',
] as const satisfies readonly PatternName[]
