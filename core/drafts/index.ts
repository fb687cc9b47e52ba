export * from './charts/index.ts'
export * from './checking/index.ts'
export * from './fits/index.ts'
export * from './forms/index.ts'
export * from './orders/index.ts'
export * from './picture/index.ts'
export * from './placing/index.ts'
export * from './steps/index.ts'
export { bareCase, bareParameters, type AllWords, type BareParameters } from './bare-case.ts'
export { copyOf, revisionOf, type DraftBeginning } from './begin.ts'
export { idFrom } from './id-from.ts'
export { changesBetween, isSame } from './changes.ts'
export { choiceTextAt } from './choice-text-at.ts'
export { drawnDifferences, type DrawnDifference } from './drawn-differences.ts'
export { differencesBetween, type Difference } from './differences.ts'
export { documentIn, documentText, patchesBy, type OpenDocument } from './document.ts'
export {
  beginDraft,
  decideDraft,
  documentOf,
  evolveDraft,
  mayFollow,
  redoable,
  replayDraft,
  typistsIn,
  undoable,
  type Draft,
} from './draft.ts'
export {
  draftAct,
  draftEntry,
  draftEvent,
  type DraftAct,
  type DraftEntry,
  type DraftEvent,
  type EditMessage,
} from './entry.ts'
export { messageOfPatches, redoText, undoText } from './edit-text.ts'
export { patched, type Json, type Patch } from './patch.ts'
export { mostSpecFileCharacters, readSpecFile, specFileEnding, specFileOf } from './spec-file.ts'
