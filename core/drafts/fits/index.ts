export { gradeThinner, withGrades, withMarks, withoutGrade, withoutMark } from './marks.ts'
export type { MarkedSide } from './marks.ts'
export { freePositions, withFit, withoutFit } from './new-fit.ts'
export type { FitStepNames, TypedFit } from './new-fit.ts'
