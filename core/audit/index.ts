import type { EngineSpec } from '../engine/index.ts'
import { withAcceptances, type AcceptedFinding } from './accepted.ts'
import { auditBands } from './bearings/bands.ts'
import { auditChart } from './bearings/chart.ts'
import { auditClearance } from './bearings/clearance.ts'
import { auditDrawn } from './bearings/drawn-class.ts'
import { auditLimits } from './bearings/limits.ts'
import { auditMeasuring } from './bearings/measuring.ts'
import { auditThrust } from './bearings/thrust.ts'
import { auditUndersizes } from './bearings/undersizes.ts'
import { auditBeads } from './case/beads.ts'
import { auditCrank } from './case/crank.ts'
import { auditFaceParts } from './case/face-parts.ts'
import { auditPositions } from './case/positions.ts'
import { auditSplit } from './case/split.ts'
import type { Finding } from './finding.ts'
import { auditMissing } from './missing.ts'
import { rememberedBy } from './remembered-by.ts'
import { auditSource } from './source.ts'
import { auditMeasures } from './steps/measures.ts'
import { auditParts } from './steps/parts.ts'
import { auditRings } from './steps/ring-sets.ts'
import { auditPlaced } from './steps/step-places.ts'
import { auditSteps } from './steps/steps.ts'
import { auditCapByCap } from './tightening/cap-by-cap.ts'
import { auditOrders } from './tightening/orders.ts'
import { auditPasses } from './tightening/passes.ts'
import { auditPrevailing } from './tightening/prevailing.ts'
import { auditScrews } from './tightening/screws.ts'
import { auditStretches } from './tightening/stretches.ts'
import { auditTorques } from './tightening/torques.ts'
import { auditTurnings } from './tightening/turnings.ts'
import { auditTurns } from './tightening/turns.ts'
import { auditValues } from './tightening/values.ts'

export { numbersOf, type AcceptedFinding } from './accepted.ts'
export type { Finding } from './finding.ts'

const subjects = [
  auditSource,
  auditMissing,
  auditPositions,
  auditSplit,
  auditCrank,
  auditFaceParts,
  auditBands,
  auditDrawn,
  auditUndersizes,
  auditMeasuring,
  auditChart,
  auditClearance,
  auditLimits,
  auditThrust,
  auditOrders,
  auditPasses,
  auditCapByCap,
  auditTurnings,
  auditScrews,
  auditPrevailing,
  auditTorques,
  auditTurns,
  auditStretches,
  auditValues,
  auditBeads,
  auditSteps,
  auditParts,
  auditMeasures,
  auditPlaced,
  auditRings,
]

/**
 * Everything that is wrong or doubtful in a spec that could be read; faults before doubts, accepted ones among these. Empty for
 * a good one.
 */
export function audit(spec: EngineSpec): readonly Finding[] {
  return inOrder(
    spec,
    subjects.flatMap((subject) => subject(spec)),
  )
}

/**
 * The same of one spec after another, as they come while one is written: a subject is gone through again only where a part of the
 * spec that it looked at is another one.
 */
export function rememberingAudit(): (spec: EngineSpec) => readonly Finding[] {
  const remembering = subjects.map(rememberedBy)
  let last: { readonly spec: EngineSpec; readonly findings: readonly Finding[] } | null = null
  return (spec) => {
    if (last?.spec !== spec) {
      const found = remembering.flatMap((subject) => subject(spec))
      last = { spec, findings: inOrder(spec, found) }
    }
    return last.findings
  }
}

function inOrder(spec: EngineSpec, found: readonly Finding[]): readonly Finding[] {
  const findings = withAcceptances(spec, found)
  return [
    ...findings.filter(({ weight }) => weight === 'fault'),
    ...findings.filter(({ weight }) => weight === 'doubt'),
  ]
}

/** The doubts that the audit has and somebody accepted; what was accepted and is no doubt any more is not among them. */
export function acceptedDoubts(spec: EngineSpec): readonly AcceptedFinding[] {
  if (spec.accepted === undefined || spec.accepted.length === 0) return []
  return audit(spec).flatMap(({ accepted, problem }) =>
    accepted === undefined ? [] : [{ ...accepted, doubt: problem }],
  )
}
