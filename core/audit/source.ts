import type { EngineSpec } from '../engine/index.ts'
import { doubt, type Finding } from './finding.ts'

/** Who stands behind the numbers, and whether the standing caution is there. */
export function auditSource({ source, cautions }: EngineSpec): readonly Finding[] {
  const standing = cautions.some(
    ({ text, steps }) => steps === undefined && /manual/i.test(text) && /overrule/i.test(text),
  )
  const findings = standing ? [] : [doubt('standing-caution-missing', {}, 'cautions')]
  if (source.kind === 'demo') return findings
  const { enteredBy, checkedBy, copiedFromDemo } = source
  if (copiedFromDemo !== undefined)
    findings.push(doubt('source-copied-from-demo', { demo: copiedFromDemo }, 'source.copiedFromDemo'))
  if (checkedBy === undefined)
    return [...findings, doubt('source-unchecked', { enteredBy }, 'source.checkedBy')]
  return checkedBy.toLowerCase() === enteredBy.toLowerCase()
    ? [...findings, doubt('source-checked-by-same', { enteredBy }, 'source.checkedBy')]
    : findings
}
