export { angleDrill, handleAtStart, judgeTurn, regripped, swung } from './angle-drill.ts'
export type { AngleDrill, AngleTurn } from './angle-drill.ts'
export { asLying, middleOnSheet } from './mirror/as-lying.ts'
export { faultKinds, faultKindsOf } from './fault/build-fault.ts'
export type { BuildFault, FaultKind, FaultyBuild, MisplacedShell } from './fault/build-fault.ts'
export { withCapArrows } from './fault/cap-arrows.ts'
export { chartDrill, chartTally, judgeChart, printedChart } from './chart-drill.ts'
export type { ChartDrill, ChartVerdict } from './chart-drill.ts'
export { dailySet, drillMinutes, missingPractice } from './progress/daily-set.ts'
export type { DrillOf } from './progress/daily-set.ts'
export { dryRunErrors } from './dry-run-errors.ts'
export { drillsOf, seedOf } from './drills.ts'
export { finishedSample } from './finished/finished-sample.ts'
export { halfWaySample } from './finished/half-way-sample.ts'
export { faceOf } from './face-of.ts'
export { countsText } from './measure/gauge-unit.ts'
export { micrometers, rangeText } from './measure/micrometer.ts'
export type { GaugeUnit } from './measure/gauge-unit.ts'
export {
  instrumentScene,
  judgeReading,
  measureDrill,
  onSheetOf,
  readingOf,
  typedCounts,
} from './measure/measure-drill.ts'
export type { MeasureDrill, MeasureQuestion, Misread } from './measure/measure-drill.ts'
export { strips } from './measure/plastic-strip.ts'
export { candidatesOf, judgeMirror, mirrorDrill, printedView } from './mirror/mirror-drill.ts'
export type { MirrorDrill, MirrorQuestion, MirrorSlip } from './mirror/mirror-drill.ts'
export {
  faceOfFault,
  facesWorkedOn,
  faultDrill,
  faultTally,
  finishedFacts,
  partsAtFault,
  pulledInPass,
} from './fault/fault-drill.ts'
export type { FaultDrill } from './fault/fault-drill.ts'
export { answerOrder, beginOrder } from './order/order-attempt.ts'
export type { OrderAnswer, OrderMistake } from './order/order-attempt.ts'
export { orderConsequence } from './order/order-consequence.ts'
export type { OrderConsequence } from './order/order-consequence.ts'
export { orderDrill } from './order/order-drill.ts'
export type { AfterPass, OrderDrill } from './order/order-drill.ts'
export { progressOf } from './progress/progress.ts'
export type { DrillProgress } from './progress/progress.ts'
export { readyPeople } from './progress/ready-people.ts'
export { drillKinds, errorsIn, gradeOf, roundKinds } from './round.ts'
export type { DrillKind, Grade, Round, RoundKind, Tally } from './round.ts'
export { scheduleOf } from './progress/schedule.ts'
export { trainingRack } from './training-rack.ts'
export { unnumbered } from './order/unnumbered.ts'
export {
  fastenersToTry,
  inTriedOrder,
  patternToTry,
  proceduresToTry,
  triedPatterns,
  whatIf,
} from './order/what-if.ts'
export type { WhatIf } from './order/what-if.ts'
export { torqueGiven, valuesDrill } from './values-drill.ts'
export type { ScaleValue, ValuesDrill, ValuesQuestion } from './values-drill.ts'
