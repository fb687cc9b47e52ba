import { lengthAmount } from '../../quantity/index.ts'
import type { EngineSpec, Face } from '../../engine/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'

/** Seals by their sizes; gaskets, which are new each time and ticked where they are laid. */
export function auditFaceParts(spec: EngineSpec): readonly Finding[] {
  return [
    ...spec.case.faceParts.flatMap((part, index) => {
      if (!('shaft' in part) || part.shaft < part.diameter) return []
      const [shaft, diameter] = [part.shaft, part.diameter].map((length) => lengthAmount(length, 'mm', 1))
      const facts = { seal: part.name, shaft: shaft!, diameter: diameter! }
      return [fault('seal-too-small', facts, `case.faceParts[${index}].shaft`)]
    }),
    ...spec.case.faces.flatMap((face, index) => auditGasket(spec, face, `case.faces[${index}].gasket`)),
  ]
}

function auditGasket(
  { parts, steps }: EngineSpec,
  { id, name, gasket }: Face,
  path: string,
): readonly Finding[] {
  if (gasket === undefined) return []
  const part = parts.find((each) => each.id === gasket.part)
  // Where a spec lists its parts, a gasket that is not among them is forgotten.
  if (part === undefined) return parts.length === 0 ? [] : [doubt('gasket-not-listed', { face: name }, path)]
  const laid = part.usedIn.some(({ step }) => {
    const found = steps.find((each) => each.id === step)
    return found !== undefined && 'face' in found && found.face === id
  })
  const facts = { face: name, part: part.name }
  return [
    ...(part.reuse === 'new-each-time' ? [] : [doubt('gasket-used-again', facts, path)]),
    ...(laid ? [] : [doubt('gasket-laid-elsewhere', facts, path)]),
  ]
}
