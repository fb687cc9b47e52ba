import type { EngineSpec } from '../engine/index.ts'
import { auditBands } from './bands.ts'
import { auditBeads } from './beads.ts'
import { auditChart } from './chart.ts'
import { auditClearance } from './clearance.ts'
import { auditDrawn } from './drawn.ts'
import type { Finding } from './finding.ts'
import { auditLimits } from './limits.ts'
import { auditMeasuring } from './measuring.ts'
import { auditOrders } from './orders.ts'
import { auditMeasures } from './measures.ts'
import { auditPlaced } from './placed.ts'
import { auditParts } from './parts.ts'
import { auditPasses } from './passes.ts'
import { auditPositions } from './positions.ts'
import { auditPrevailing } from './prevailing.ts'
import { auditScrews } from './screws.ts'
import { auditSource } from './source.ts'
import { auditSplit } from './split.ts'
import { auditSteps } from './steps.ts'
import { auditStretches } from './stretches.ts'
import { auditThrust } from './thrust.ts'
import { auditTorques } from './torques.ts'
import { auditTurns } from './turns.ts'
import { auditUndersizes } from './undersizes.ts'
import { auditValues } from './values.ts'

export type { Finding } from './finding.ts'

const subjects = [
  auditSource,
  auditPositions,
  auditSplit,
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
]

/** Everything that is wrong or doubtful in a spec that could be read; faults before doubts. Empty for a good one. */
export function audit(spec: EngineSpec): readonly Finding[] {
  const findings = subjects.flatMap((subject) => subject(spec))
  return [
    ...findings.filter(({ weight }) => weight === 'fault'),
    ...findings.filter(({ weight }) => weight === 'doubt'),
  ]
}
