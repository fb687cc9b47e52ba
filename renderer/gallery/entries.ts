import { drawingEntries } from './drawing-entries.ts'
import { editorEntries } from './editor-entries.ts'
import type { Entry } from './entry.ts'
import { partEntries } from './part-entries.ts'
import { practiceEntries } from './practice-entries.ts'
import { recordEntries } from './record-entries.ts'
import { screenEntries } from './screen-entries.ts'
import { stepEntries } from './step-entries.ts'

/** All that the gallery shows. */
export const entries: readonly Entry[] = [
  ...screenEntries,
  ...partEntries,
  ...stepEntries,
  ...recordEntries,
  ...practiceEntries,
  ...editorEntries,
  ...drawingEntries,
]
