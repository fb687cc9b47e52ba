import { quantityWords } from './quantity.ts'
import { specWords } from './spec.ts'
import { auditWords } from './audit.ts'
import { auditBearingWords } from './audit-bearing.ts'
import { auditTighteningWords } from './audit-tightening.ts'
import { bearingWords } from './bearing.ts'
import { jointWords } from './joint.ts'
import { tighteningWords } from './tightening.ts'
import { wrenchWords } from './wrench.ts'
import { buildWords } from './build.ts'
import { auditRingWords, ringWords } from './rings.ts'
import { hostWords } from './host.ts'
import { libraryWords } from './library.ts'
import { pastedTableWords } from './pasted-table.ts'
import { photoWords } from './photo.ts'
import { placingWords } from './placing.ts'
import { recordWords } from './record.ts'
import { shopWords } from './shop.ts'
import { revisionWords } from './revision.ts'

/** What the audit says of a spec, by code. */
export const auditProblems = {
  ...auditWords,
  ...auditBearingWords,
  ...auditTighteningWords,
  ...auditRingWords,
}

/**
 * Every sentence that tells a person of an expected fault, by code. Each says what happened, to which part, and what to
 * do next. The type of a problem is made from this table, so that a code without words cannot be written.
 */
export const problems = {
  ...quantityWords,
  ...specWords,
  ...auditProblems,
  ...bearingWords,
  ...jointWords,
  ...tighteningWords,
  ...wrenchWords,
  ...buildWords,
  ...ringWords,
  ...hostWords,
  ...libraryWords,
  ...pastedTableWords,
  ...photoWords,
  ...placingWords,
  ...recordWords,
  ...shopWords,
  ...revisionWords,
}
