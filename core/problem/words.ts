import { quantityWords } from './quantity-words.ts'
import { specWords } from './spec-words.ts'
import { auditWords } from './audit-words.ts'
import { bearingWords } from './bearing-words.ts'
import { jointWords } from './joint-words.ts'
import { tighteningWords } from './tightening-words.ts'
import { wrenchWords } from './wrench-words.ts'
import { buildWords } from './build-words.ts'
import { hostWords } from './host-words.ts'

/**
 * Every sentence that tells a person of an expected fault, by code. Each says what happened, to which part, and what to
 * do next. The type of a problem is made from this table, so that a code without words cannot be written.
 */
export const words = {
  ...quantityWords,
  ...specWords,
  ...auditWords,
  ...bearingWords,
  ...jointWords,
  ...tighteningWords,
  ...wrenchWords,
  ...buildWords,
  ...hostWords,
}
