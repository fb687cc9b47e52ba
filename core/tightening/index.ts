export { answerText, liftedAnswer, liftedReason, reasonOf } from './run/answers.ts'
export type { FlagAnswer, Reason } from './run/answers.ts'
export { runCommand, runCommands } from './run/commands.ts'
export type { RunCommand } from './run/commands.ts'
export { runEvent, runEvents } from './run/events.ts'
export { reading } from './run/events.ts'
export type { Reading, RunEvent } from './run/events.ts'
export {
  isLengthUnit,
  isTorqueUnit,
  suspectedUnit,
  takeReading,
  torqueAtFastener,
} from './reading/reading.ts'
export type { Flag, Pull, Run } from './run/run.ts'
export {
  counts,
  lastLivePull,
  livePulls,
  nextPull,
  openPulls,
  plannedIn,
  plannedPulls,
  pullKey,
} from './run/plan.ts'
export type { PlannedPull } from './run/plan.ts'
export { fastenerStates, isRunDone, openFlags, runProgress } from './run/progress.ts'
export type { PassProgress } from './run/progress.ts'
export { isInAnotherUnit, printedText, printedTorque, printedTorques } from './reading/printed-torque.ts'
export { lengthSpan, limitsSpan, shownAmount, showWindow, verdictOf, windowOf } from './reading/window.ts'
export type { PullWindow, AcceptanceWindow } from './reading/window.ts'
export { numberOf } from './order/fastener-number.ts'
export { flagInShort, flagProblem, scaleText } from './run/flag.ts'
export {
  prevailingIn,
  prevailingOfGroup,
  readRunning,
  runningBefore,
  runningTorque,
  torqueWindowIn,
  withRunning,
} from './reading/prevailing.ts'
export { isReadingAsked } from './reading/reading-asked.ts'
export { isPastProof } from './reading/past-proof.ts'
export { readReason } from './run/reason.ts'
export { isUsedUp, restartPoints } from './run/begin-again.ts'
export { isShort, turnedIn } from './reading/short-turn.ts'
export { shortPull, windowNow } from './reading/turned.ts'
export { remedyOf } from './run/flag-remedy.ts'
export { waitOf } from './run/wait.ts'
export { decideRun } from './run/decide-run.ts'
export { evolveRun } from './run/evolve-run.ts'
export * from './wrench/index.ts'
export { grips, inFlats, swings } from './swings.ts'
export type { Grip, Swing } from './swings.ts'
export { protractor, turnedOn } from './swing-direction.ts'
export type { Protractor, Sense } from './swing-direction.ts'
export { orderBy } from './order/pattern.ts'
export type { PatternName } from './order/pattern.ts'
export type { Place } from './order/pattern-ranks.ts'
export { orderRemarks, placesOf } from './order/order-remarks.ts'
export { asRun, isOther, namedIn, numbersOf, readOrder, reordered } from './order/own-order.ts'
export { measureOrder } from './order/order-measure.ts'
export { pullsOf } from './clamp/flange-pulls.ts'
export {
  clampAfter,
  clampRun,
  clampRunInParts,
  greatestDifference,
  inOrder,
  loadsAfter,
  mappedOrders,
  passDifferences,
} from './clamp/clamp-run.ts'
export type { ClampDifference, ClampRun, MappedOrder } from './clamp/clamp-run.ts'
export { explainPull } from './explain-pull.ts'
export { atTorqueText, passText, targetAndLimits, targetText, threadText, unitOf } from './pass-words.ts'
export type { Units } from './pass-words.ts'
export { readTurning, verdictOfTurning } from './reading/turning.ts'
export { turningAmount, turningText } from './reading/turning-amount.ts'
export { lastTurning, riseOf } from './run/turned-before.ts'
export { capOfPull } from './run/plan.ts'
