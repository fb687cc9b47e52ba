import { writtenAt, type EngineSpec, type Procedure } from '../../engine/index.ts'
import { fault, type Finding } from '../finding.ts'

/** Procedures that go cap by cap: over caps, whole ones, and with nothing in them that goes over all caps at once. */
export function auditCapByCap(spec: EngineSpec): readonly Finding[] {
  const numbers = new Map(spec.fasteners.map(({ id, number }) => [id, number]))
  return spec.procedures.flatMap((procedure, index) =>
    procedure.capByCap === true ? auditProcedure(spec, procedure, numbers, `procedures[${index}]`) : [],
  )
}

function auditProcedure(
  spec: EngineSpec,
  { name, face, caps = [], passes }: Procedure,
  numbers: ReadonlyMap<string, string>,
  path: string,
): readonly Finding[] {
  if (caps.length === 0) {
    const onFace = spec.case.faces.find(({ id }) => id === face)?.name ?? face
    return [fault('cap-by-cap-without-caps', { procedure: name, face: onFace }, `${path}.capByCap`)]
  }
  const single = caps.filter(({ fasteners }) => fasteners.length < 2)
  return [
    ...single.map(({ id, fasteners: [fastener = ''] }) =>
      fault(
        'cap-with-one-fastener',
        { procedure: name, cap: id, number: numbers.get(fastener) ?? fastener },
        `${path}.orders`,
      ),
    ),
    ...passes.flatMap((pass, index) =>
      pass.kind === 'recheck' && pass.repeat !== undefined
        ? [
            fault(
              'cap-by-cap-repeats',
              { procedure: name, pass: index + 1 },
              `${path}.passes[${writtenAt(passes, index)}].repeat`,
            ),
          ]
        : [],
    ),
  ]
}
