import { fastenersOf, type EngineSpec } from '../engine/index.ts'
import { fault, type Finding } from './finding.ts'

/** A stretch is the difference of two lengths: the one before must have been measured, of each fastener. */
export function auditStretches({ procedures, fasteners }: EngineSpec): readonly Finding[] {
  const numbers = new Map(fasteners.map(({ id, number }) => [id, number]))
  return procedures.flatMap((procedure, i) => {
    const measured = new Set<string>()
    return procedure.passes.flatMap((pass, k) => {
      const ids = fastenersOf(procedure, pass)
      if (pass.kind === 'length') for (const id of ids) measured.add(id)
      const missing = pass.kind === 'stretch' ? ids.filter((id) => !measured.has(id)) : []
      if (missing.length === 0) return []
      const facts = {
        procedure: procedure.name,
        pass: k + 1,
        numbers: missing.map((id) => numbers.get(id) ?? id),
      }
      return [fault('stretch-without-length', facts, `procedures[${i}].passes[${k}]`)]
    })
  })
}
