import type { Words } from '../../words.ts'
import { auditBearingWords } from './audit-bearing.ts'
import { auditTighteningWords } from './audit-tightening.ts'
import { auditWords } from './audit.ts'
import { bearingWords } from './bearing.ts'
import { buildWords } from './build.ts'
import { hostWords } from './host.ts'
import { jointWords } from './joint.ts'
import { libraryWords } from './library.ts'
import { pastedTableWords } from './pasted-table.ts'
import { photoWords } from './photo.ts'
import { placingWords } from './placing.ts'
import { quantityWords } from './quantity.ts'
import { recordWords } from './record.ts'
import { revisionWords } from './revision.ts'
import { auditRingWords, ringWords } from './rings.ts'
import { shopWords } from './shop.ts'
import { specWords } from './spec.ts'
import { tighteningWords } from './tightening.ts'
import { wrenchWords } from './wrench.ts'

export const problems: Words['problems'] = {
  ...quantityWords,
  ...specWords,
  ...auditWords,
  ...auditBearingWords,
  ...auditTighteningWords,
  ...auditRingWords,
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
