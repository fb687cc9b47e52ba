export { angleDrill, handleAtStart, judgeTurn, regripped, swung } from './angle-drill.ts'
export type { AngleDrill, AngleTurn, HandlePlace } from './angle-drill.ts'
export { asLying, middleOnSheet } from './as-lying.ts'
export { faultKinds, faultKindsOf } from './build-fault.ts'
export type { BuildFault, FaultKind, FaultyBuild, MisplacedShell } from './build-fault.ts'
export { withCapArrows } from './cap-arrows.ts'
export { chartDrill, chartTally, judgeChart, printedChart } from './chart-drill.ts'
export type { ChartDrill, ChartQuestion, ChartVerdict, PrintedChart } from './chart-drill.ts'
export { dailyMinutes, dailySet, drillMinutes, missingPractice } from './daily-set.ts'
export type { DrillOf, MissingPractice } from './daily-set.ts'
export { dryRunTally } from './dry-run-tally.ts'
export { drillsOf, seedOf } from './drills.ts'
export { finishedBuild } from './finished-build.ts'
export { faceOf } from './face-of.ts'
export { countsText } from './gauge-unit.ts'
export { micrometers, rangeText } from './micrometer.ts'
export type { GaugeUnit } from './gauge-unit.ts'
export {
  instrumentScene,
  judgeReading,
  measureDrill,
  onSheetOf,
  readingOf,
  typedCounts,
} from './measure-drill.ts'
export type { MeasureDrill, MeasureQuestion, Misread } from './measure-drill.ts'
export { strips } from './plastic-strip.ts'
export { candidatesOf, judgeMirror, mirrorDrill, printedView } from './mirror-drill.ts'
export type { MirrorDrill, MirrorQuestion, MirrorSlip } from './mirror-drill.ts'
export {
  faceOfFault,
  facesWorkedOn,
  faultDrill,
  faultTally,
  finishedFacts,
  partsAtFault,
  pulledInPass,
} from './fault-drill.ts'
export type { FaultDrill } from './fault-drill.ts'
export { answerOrder, beginOrder } from './order-attempt.ts'
export type { OrderAnswer, OrderAttempt, OrderMistake, OrderReason } from './order-attempt.ts'
export { orderConsequence } from './order-consequence.ts'
export type { OrderConsequence } from './order-consequence.ts'
export { orderDrill } from './order-drill.ts'
export type { AfterPass, OrderDrill } from './order-drill.ts'
export { progressOf } from './progress.ts'
export type { DrillProgress } from './progress.ts'
export { readyPeople } from './ready-people.ts'
export type { ReadyPerson } from './ready-people.ts'
export { drillKinds, errorsIn, gradeOf, roundKinds } from './round.ts'
export type { DrillKind, Grade, Round, RoundKind, Tally } from './round.ts'
export { scheduleOf } from './schedule.ts'
export { trainingRack } from './training-rack.ts'
export { unnumbered } from './unnumbered.ts'
export {
  fastenersToTry,
  inTriedOrder,
  patternToTry,
  proceduresToTry,
  triedPatterns,
  whatIf,
} from './what-if.ts'
export type { TriedPattern, WhatIf } from './what-if.ts'
export { torqueGiven, valuesDrill } from './values-drill.ts'
export type { AskedPull, ScaleValue, ValuesDrill, ValuesQuestion } from './values-drill.ts'
