import { nameKey } from '../person/index.ts'
import { keysOfPath, placeInSpec, type EngineSpec } from '../engine/index.ts'
import { doubt, type Finding } from './finding.ts'

/** That manual and person come before the program, in the languages that a spec may be read in. */
const saysItStands = [
  [/manual/i, /overrule/i],
  [/handbuch/i, /geh(t|en)\b.*\bvor\b|vorrang/i],
  [/manual/i, /prevalece|por encima/i],
] as const

/** Who stands behind the numbers, and whether the standing caution is there. */
export function auditSource(spec: EngineSpec): readonly Finding[] {
  const { source, cautions, checks = [] } = spec
  const standing = cautions.some(
    ({ text, steps }) =>
      steps === undefined && saysItStands.some((each) => each.every((word) => word.test(text))),
  )
  const findings = standing ? [] : [doubt('standing-caution-missing', {}, 'cautions')]
  if (source.kind === 'demo') return findings
  for (const check of checks)
    if (check.how === 'other') {
      const place = placeInSpec(spec, keysOfPath(check.path))
      findings.push(doubt('value-reads-otherwise', { place, by: check.by, found: check.found }, check.path))
    }
  const { enteredBy, checkedBy, copiedFromDemo } = source
  if (copiedFromDemo !== undefined)
    findings.push(doubt('source-copied-from-demo', { demo: copiedFromDemo }, 'source.copiedFromDemo'))
  if (checkedBy === undefined)
    return [...findings, doubt('source-unchecked', { enteredBy }, 'source.checkedBy')]
  return nameKey(checkedBy) === nameKey(enteredBy)
    ? [...findings, doubt('source-checked-by-same', { enteredBy }, 'source.checkedBy')]
    : findings
}
