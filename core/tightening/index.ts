export { answerText, liftedAnswer, liftedReason, reasonOf } from './answers.ts'
export type { FlagAnswer, Reason } from './answers.ts'
export { runCommand, runCommands } from './commands.ts'
export type { RunCommand } from './commands.ts'
export { runEvent, runEvents } from './events.ts'
export type { OwnOrder, Reading, RunEvent } from './events.ts'
export { isLengthUnit, isTorqueUnit, suspectedUnit, takeReading, torqueAtFastener } from './reading.ts'
export type { Flag, Pull, Run } from './run.ts'
export {
  counts,
  lastLivePull,
  livePulls,
  nextPull,
  openPulls,
  plannedIn,
  plannedPulls,
  pullKey,
} from './plan.ts'
export type { PlannedPull } from './plan.ts'
export { fastenerStates, isRunDone, openFlags, runProgress } from './progress.ts'
export type { FastenerProgress, PassProgress } from './progress.ts'
export { lengthSpan, limitsSpan, showWindow, verdictOf, windowOf } from './window.ts'
export type { LengthWindow, PullWindow, ShownWindow, AcceptanceWindow } from './window.ts'
export { numberOf } from './fastener-number.ts'
export { flagInShort, flagProblem, scaleText } from './flag.ts'
export { lengthDoubt } from './length-doubt.ts'
export { isReadingAsked } from './reading-asked.ts'
export { isPastProof } from './past-proof.ts'
export { readReason } from './reason.ts'
export { isUsedUp, restartPoints } from './begin-again.ts'
export { isShort, turnedIn } from './short-turn.ts'
export { shortPull, windowNow } from './turned.ts'
export { barringFlag, wayOut } from './way-out.ts'
export type { WayOut } from './way-out.ts'
export { waitOf } from './wait.ts'
export { decideRun } from './decide-run.ts'
export { evolveRun } from './evolve-run.ts'
export * from './wrench/index.ts'
export { grips, inFlats, swings } from './swings.ts'
export type { Grip, Swing } from './swings.ts'
export { protractor, turnedOn } from './swing-direction.ts'
export type { Protractor, Sense } from './swing-direction.ts'
export { orderBy } from './pattern.ts'
export type { PatternName } from './pattern.ts'
export type { Place } from './pattern-ranks.ts'
export { orderRemarks, placesOf } from './order-remarks.ts'
export { asRun, isOther, namedIn, numbersOf, readOrder, reordered } from './own-order.ts'
export { measureOrder } from './order-measure.ts'
export type { OrderMeasure } from './order-measure.ts'
export { pullsOf } from './flange-pulls.ts'
export {
  clampAfter,
  clampRun,
  greatestDifference,
  inOrder,
  loadsAfter,
  mappedOrders,
  passDifferences,
} from './clamp-run.ts'
export type { ClampDifference, ClampRun, MappedOrder } from './clamp-run.ts'
export { explainPull } from './explain-pull.ts'
export type { PullExplanation } from './explain-pull.ts'
export { atTorqueText, passText, targetAndLimits, targetText, threadText, unitOf } from './pass-words.ts'
export type { Units } from './pass-words.ts'
