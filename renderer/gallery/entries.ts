import { drawingEntries } from './drawing-entries.ts'
import { editorEntries } from './editor-entries.ts'
import type { Entry } from './entry.ts'
import { instrumentEntries } from './instrument-entries.ts'
import { partEntries } from './part-entries.ts'
import { photoEntries } from './photo-entries.ts'
import { planEntries } from './plan-entries.ts'
import { practiceEntries } from './practice-entries.ts'
import { recordEntries } from './record-entries.ts'
import { shopEntries } from './shop-entries.ts'
import { revisionEntries } from './revision-entries.ts'
import { screenEntries } from './screen-entries.ts'
import { stepEntries } from './step-entries.ts'

/** All that the gallery shows. */
export const entries: readonly Entry[] = [
  ...screenEntries,
  ...partEntries,
  ...stepEntries,
  ...planEntries,
  ...revisionEntries,
  ...photoEntries,
  ...instrumentEntries,
  ...recordEntries,
  ...shopEntries,
  ...practiceEntries,
  ...editorEntries,
  ...drawingEntries,
]
