import { fixedAmount, inMillimetres, lengthAmount } from '../../quantity/index.ts'
import { fastenersOf, writtenAt, type EngineSpec, type Pass, type Procedure } from '../../engine/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'
import { auditStretchByTorque } from './stretch-by-torque.ts'

/**
 * Share of its clamped length by which no fastener is stretched on purpose. The hardest steel begins to yield at half a per
 * cent (1100 MPa of 207 000), and one that is tightened past yield is stretched a few tenths further. Common practice, no
 * source.
 */
const mostShare = 0.01

/**
 * A stretch is the difference of two lengths: the one before must have been measured, of each fastener, while nothing had
 * stretched it yet. And it is small beside the length that is stretched.
 */
export function auditStretches(spec: EngineSpec): readonly Finding[] {
  return spec.procedures.flatMap((procedure, index) =>
    auditProcedure(spec, procedure, `procedures[${index}]`),
  )
}

function auditProcedure(spec: EngineSpec, procedure: Procedure, path: string): readonly Finding[] {
  const numbers = new Map(spec.fasteners.map(({ id, number }) => [id, number]))
  const measured = new Set<string>()
  const pulled = new Set<string>()
  return procedure.passes.flatMap((pass, k) => {
    const ids = fastenersOf(procedure, pass)
    const place = { procedure: procedure.name, pass: k + 1 }
    const at = `${path}.passes[${writtenAt(procedure.passes, k)}]`
    const numbered = (which: readonly string[]) => which.map((id) => numbers.get(id) ?? id)
    switch (pass.kind) {
      case 'length': {
        const late = ids.filter((id) => pulled.has(id))
        for (const id of ids) measured.add(id)
        return late.length === 0
          ? []
          : [doubt('length-after-pull', { ...place, numbers: numbered(late) }, at)]
      }
      case 'tighten-to-stretch':
      case 'stretch': {
        if (pass.kind === 'tighten-to-stretch') for (const id of ids) pulled.add(id)
        const missing = ids.filter((id) => !measured.has(id))
        return [
          ...(missing.length === 0
            ? []
            : [fault('stretch-without-length', { ...place, numbers: numbered(missing) }, at)]),
          ...tooLong(spec, pass, ids, place, at),
          ...(pass.kind === 'stretch' ? [] : auditStretchByTorque(spec, pass, ids, place, at)),
        ]
      }
      case 'torque':
      case 'angle':
        for (const id of ids) pulled.add(id)
        return []
      case 'loosen':
        for (const id of ids) pulled.delete(id)
        return []
      case 'seat':
      case 'recheck':
      case 'action':
        return []
      default:
        return pass satisfies never
    }
  })
}

/** Group by group: a short bolt is stretched by a larger share than a long one. */
function tooLong(
  { fasteners, fastenerGroups }: EngineSpec,
  { most }: Extract<Pass, { kind: 'stretch' | 'tighten-to-stretch' }>,
  ids: readonly string[],
  place: { readonly procedure: string; readonly pass: number },
  path: string,
): readonly Finding[] {
  const groups = new Set(fasteners.filter(({ id }) => ids.includes(id)).map(({ group }) => group))
  return fastenerGroups
    .filter(({ id, grip }) => groups.has(id) && most > mostShare * grip)
    .map(({ name, grip }) => {
      const percent = fixedAmount((100 * inMillimetres(most)) / inMillimetres(grip), '%', 1)
      const facts = {
        ...place,
        group: name,
        most: lengthAmount(most, 'mm'),
        grip: lengthAmount(grip, 'mm', 0),
      }
      return doubt('stretch-large', { ...facts, percent }, `${path}.most`)
    })
}
