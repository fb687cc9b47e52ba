import type { EngineSpec } from '../../engine/index.ts'
import { fault, type Finding } from '../finding.ts'

/** Cases of which no bearing in the case can have a left and a right half. */
const levelCases: readonly EngineSpec['case']['family'][] = ['split-horizontal', 'caps', 'bedplate']

/** How the halves of the bearings in the case are called, against how the case is split. Big ends are the rods' own. */
export function auditSplit({ case: { family }, fits }: EngineSpec): readonly Finding[] {
  if (!levelCases.includes(family)) return []
  return fits.flatMap(({ name, kind, split }, index) =>
    kind === 'big-end' || split === 'upper-lower'
      ? []
      : [fault('split-against-family', { fit: name, family }, `fits[${index}].split`)],
  )
}
